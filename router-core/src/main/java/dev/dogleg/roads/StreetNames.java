package dev.dogleg.roads;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Folds street names so that two spellings of one street compare equal: case, accents, punctuation,
 * ordinals and the common abbreviations of street types and directions.
 */
final class StreetNames {
  private static final Pattern MARKS = Pattern.compile("\\p{M}+");
  private static final Pattern DROPPED = Pattern.compile("['’.]");
  private static final Pattern NO_WORD = Pattern.compile("[^\\p{L}\\p{N}]+");
  private static final Pattern ORDINAL = Pattern.compile("^(\\d+)(st|nd|rd|th)$");
  private static final Pattern STRASSE = Pattern.compile("(stra(ss|s)e|str)$");
  private static final Pattern BETWEEN_NAMES = Pattern.compile("[,;]");
  private static final Map<String, String> WORDS =
      Map.ofEntries(
          Map.entry("street", "st"),
          Map.entry("saint", "st"),
          Map.entry("avenue", "ave"),
          Map.entry("av", "ave"),
          Map.entry("road", "rd"),
          Map.entry("drive", "dr"),
          Map.entry("lane", "ln"),
          Map.entry("court", "ct"),
          Map.entry("place", "pl"),
          Map.entry("boulevard", "blvd"),
          Map.entry("parkway", "pkwy"),
          Map.entry("highway", "hwy"),
          Map.entry("terrace", "ter"),
          Map.entry("circle", "cir"),
          Map.entry("square", "sq"),
          Map.entry("trail", "trl"),
          Map.entry("crescent", "cres"),
          Map.entry("close", "cl"),
          Map.entry("mount", "mt"),
          Map.entry("north", "n"),
          Map.entry("south", "s"),
          Map.entry("east", "e"),
          Map.entry("west", "w"),
          Map.entry("northeast", "ne"),
          Map.entry("northwest", "nw"),
          Map.entry("southeast", "se"),
          Map.entry("southwest", "sw"),
          Map.entry("first", "1"),
          Map.entry("second", "2"),
          Map.entry("third", "3"),
          Map.entry("fourth", "4"),
          Map.entry("fifth", "5"),
          Map.entry("sixth", "6"),
          Map.entry("seventh", "7"),
          Map.entry("eighth", "8"),
          Map.entry("ninth", "9"),
          Map.entry("tenth", "10"));

  private StreetNames() {}

  /**
   * Folds a name.
   *
   * @param name as it stands in map or address
   * @return words in a common form, joined by blanks; empty where nothing remains
   */
  static String fold(String name) {
    String plain =
        Normalizer.normalize(name.replace("ß", "ss").replace("ẞ", "ss"), Normalizer.Form.NFKD);
    plain = MARKS.matcher(plain).replaceAll("").toLowerCase(Locale.ROOT);
    plain = DROPPED.matcher(plain).replaceAll("");
    plain = NO_WORD.matcher(plain).replaceAll(" ").strip();
    List<String> words = new ArrayList<>();
    for (String word : plain.split(" ")) {
      String whole = ORDINAL.matcher(word).replaceAll("$1");
      whole = STRASSE.matcher(whole).replaceAll("str");
      words.add(WORDS.getOrDefault(whole, whole));
    }
    return String.join(" ", words).strip();
  }

  /**
   * Whether a road bears the name of a street.
   *
   * @param folded the street, folded
   * @param roadName name of the road; several names are separated by {@code ,} or {@code ;}
   * @return true where one of them agrees
   */
  static boolean agrees(String folded, String roadName) {
    if (folded.isEmpty()) {
      return false;
    }
    String[] names = BETWEEN_NAMES.split(roadName);
    for (String name : names) {
      if (fold(name).equals(folded)) {
        return true;
      }
    }
    return names.length > 1 && fold(roadName).equals(folded);
  }
}
