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
    "Rue de l'Église",
    "Allée des Chênes",
    "Rue du Général-Crépin",
    "Chemin du Pré-Salé",
    "Rue aux Bœufs",
    "Impasse Châtaigne",
    "Place des Épagneuls",
    "Sentier de l'Île",
    "Boulevard Ténèbres",
    "Rue du Père-Noyer",
    "Quai aux Huîtres",
    "Rue de la Forêt",
    "Allée Garçonne",
    "Rue Aÿmar",
    "Chemin du Château",
    "Rue des Frênes",
    "Ruelle Saint-Médor",
    "Rue du Hêtre",
    "Passage Béarnoux",
    "Rue des Mûriers"
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
    return List.of(FRENCH).iterator();
  }

  /**
   * Gives names for one quarter.
   *
   * @param first which word of the list begins, 0 and up; quarters that share words must differ in
   *     the kind
   * @param kind which kind begins
   * @param count how many
   * @return names such as Lark Close
   */
  static Iterator<String> suburb(int first, int kind, int count) {
    List<String> names = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      int word = (first + i) % WORDS.length;
      int round = (first + i) / WORDS.length;
      names.add(WORDS[word] + " " + KINDS[(kind + word + round) % KINDS.length]);
    }
    return names.iterator();
  }
}
