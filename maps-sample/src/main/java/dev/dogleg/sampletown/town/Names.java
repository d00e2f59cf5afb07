package dev.dogleg.sampletown.town;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;

/** Street names; none is given twice, but for one pair that is meant to be ambiguous. */
final class Names {
  private static final String[] TREES = {
    "Alder",
    "Birch",
    "Cedar",
    "Dogwood",
    "Elm",
    "Fir",
    "Ginkgo",
    "Hazel",
    "Ironwood",
    "Juniper",
    "Katsura",
    "Larch",
    "Maple",
    "Nutmeg",
    "Oak",
    "Poplar",
    "Quince",
    "Rowan",
    "Sycamore",
    "Tamarack"
  };

  private static final String[] WORDS = {
    "Lark",
    "Plover",
    "Heron",
    "Wren",
    "Teal",
    "Snipe",
    "Curlew",
    "Dunnock",
    "Siskin",
    "Linnet",
    "Finch",
    "Merlin",
    "Osprey",
    "Petrel",
    "Pipit",
    "Redstart",
    "Whimbrel",
    "Avocet",
    "Bittern",
    "Godwit",
    "Saddler",
    "Weaver",
    "Thatcher",
    "Chandler",
    "Fuller",
    "Glover",
    "Hatter",
    "Joiner",
    "Mercer",
    "Potter",
    "Roper",
    "Sawyer",
    "Shearer",
    "Turner",
    "Wheelwright",
    "Bramble",
    "Clover",
    "Comfrey",
    "Fennel",
    "Foxglove",
    "Harebell",
    "Lavender",
    "Mallow",
    "Nettle",
    "Orchard",
    "Primrose",
    "Rosehip",
    "Sorrel",
    "Tansy",
    "Teasel",
    "Thistle",
    "Violet",
    "Yarrow",
    "Amber",
    "Basalt",
    "Chalk",
    "Copper",
    "Flint",
    "Garnet",
    "Granite",
    "Jasper",
    "Marble",
    "Opal",
    "Slate"
  };

  private static final String[] KINDS = {
    "Close", "Drive", "Crescent", "Way", "Rise", "Gardens", "Grove", "Path", "View", "Court"
  };

  private static final String[] GERMAN = {
    "Lindenstraße",
    "Gänsemarkt",
    "Müllerweg",
    "Bürgermeister-Köhler-Straße",
    "Schäferhundgasse",
    "Großer Bleichweg"
  };

  private static final String[] FRENCH = {
    "Rue de l'Église", "Rue du Général-Crépin", "Chemin du Pré-Salé", "Rue aux Bœufs",
    "Place des Épagneuls", "Sentier de l'Île", "Boulevard Ténèbres", "Quai aux Huîtres",
    "Rue Aÿmar", "Ruelle Saint-Médor", "Passage Béarnoux"
  };

  private static final String[] FRENCH_KINDS = {"Rue", "Allée", "Chemin", "Impasse"};

  private static final String[] FRENCH_WORDS = {
    "des Chênes", "du Père-Noyer", "de la Forêt", "des Frênes", "du Hêtre", "des Mûriers",
    "du Château", "de la Châtaigne", "des Érables", "du Verger", "des Alouettes", "des Bleuets",
    "de la Fontaine", "du Moulin", "des Genêts", "du Lièvre"
  };

  private static final String[] SPANISH = {
    "Calle de la Peña",
    "Avenida del Río",
    "Calle Ñandú",
    "Paseo José Núñez",
    "Calle del Mastín",
    "Camino Agüero"
  };

  private Names() {}

  static String avenue(int number) {
    int index = number + 5;
    return index >= 0 && index < TREES.length ? TREES[index] + " Avenue" : null;
  }

  static String ordinal(int number) {
    int tens = number % 100;
    String ending =
        tens >= 11 && tens <= 13
            ? "th"
            : switch (number % 10) {
              case 1 -> "st";
              case 2 -> "nd";
              case 3 -> "rd";
              default -> "th";
            };
    return number + ending;
  }

  static String german(int number) {
    return number >= 0 && number < GERMAN.length ? GERMAN[number] : null;
  }

  static String spanish(int number) {
    return number >= 0 && number < SPANISH.length ? SPANISH[number] : null;
  }

  static Iterator<String> french() {
    List<String> names = new ArrayList<>(List.of(FRENCH));
    for (int round = 0; round < FRENCH_KINDS.length; round++) {
      for (int word = 0; word < FRENCH_WORDS.length; word++) {
        names.add(FRENCH_KINDS[(word + round) % FRENCH_KINDS.length] + " " + FRENCH_WORDS[word]);
      }
    }
    return names.iterator();
  }

  /**
   * Gives names for one quarter.
   *
   * @param first number of the first name; quarters take different numbers, 0 to 639
   * @param count how many
   * @return names such as Lark Close
   */
  static Iterator<String> suburb(int first, int count) {
    List<String> names = new ArrayList<>();
    for (int i = first; i < first + count; i++) {
      int word = i % WORDS.length;
      int kind = (word * 3 + i / WORDS.length) % KINDS.length;
      names.add(WORDS[word] + " " + KINDS[kind]);
    }
    return names.iterator();
  }
}
