package dev.dogleg.address;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A house number in its canonical form, with its place in the sequence of its street.
 *
 * @param key canonical form: small letters, no spaces but before a fraction, hyphens as {@code -}
 * @param block part before the hyphen of a compound number ({@code 101} of {@code 101-23}), else -1
 * @param number the counting part, -1 where there is none
 * @param letters what follows the counting part, often empty
 */
record HouseNumber(String key, int block, int number, String letters) {
  private static final Pattern PLAIN = Pattern.compile("(\\d{1,6})(\\D.*)?");
  private static final Pattern COMPOUND = Pattern.compile("(\\d{1,5})-(\\d{1,4})(\\D.*)?");
  private static final Pattern LETTER_RANGE = Pattern.compile("(\\d+)([a-z])[-/](\\d*)([a-z])");
  private static final Pattern SIMPLE = Pattern.compile("\\d+|\\d+-\\d+");
  private static final Pattern DASHES = Pattern.compile("[\u2010-\u2015\u2212]");
  private static final Pattern SPACED_JOINT = Pattern.compile("\\s*([-/])\\s*");
  private static final Pattern FRACTION = Pattern.compile("(\\d)\\s+(\\d/\\d)");
  private static final Pattern IDLE = Pattern.compile("[\\s.']+");
  private static final Pattern JOINED_LETTER = Pattern.compile("(\\d)[-/]([a-z])$");
  private static final Pattern LIST = Pattern.compile("[;,]");
  private static final int WIDEST_RANGE = 40;

  /** Reads one canonical number. */
  static HouseNumber of(String key) {
    Matcher compound = COMPOUND.matcher(key);
    boolean range = compound.matches() && isRange(compound.group(1), compound.group(2));
    return range ? plain(key) : ofCompound(key);
  }

  /** Reads one canonical number where a hyphen always parts block and number. */
  static HouseNumber ofCompound(String key) {
    Matcher compound = COMPOUND.matcher(key);
    if (compound.matches()) {
      return new HouseNumber(
          key,
          Integer.parseInt(compound.group(1)),
          Integer.parseInt(compound.group(2)),
          letters(compound.group(3)));
    }
    return plain(key);
  }

  private static HouseNumber plain(String key) {
    Matcher plain = PLAIN.matcher(key);
    if (plain.matches()) {
      return new HouseNumber(key, -1, Integer.parseInt(plain.group(1)), letters(plain.group(2)));
    }
    return new HouseNumber(key, -1, -1, key);
  }

  private static String letters(String found) {
    return found == null ? "" : found;
  }

  /** A hyphen means "to" only where the second number is the larger and as long as the first. */
  private static boolean isRange(String low, String high) {
    int from = Integer.parseInt(low);
    int to = Integer.parseInt(high);
    return to > from
        && to - from <= WIDEST_RANGE
        && !high.startsWith("0")
        && high.length() >= low.length();
  }

  /** Small letters, spaces away, hyphens alike, {@code 12-a} and {@code 12/a} as {@code 12a}. */
  static String canonical(String element) {
    if (SIMPLE.matcher(element).matches()) {
      return element;
    }
    String text = Letters.plain(element.replace("½", " 1/2")).strip();
    text = DASHES.matcher(text).replaceAll("-");
    text = SPACED_JOINT.matcher(text).replaceAll("$1");
    text = FRACTION.matcher(text).replaceAll("$1+$2");
    text = IDLE.matcher(text).replaceAll("");
    return JOINED_LETTER.matcher(text).replaceAll("$1$2");
  }

  /** Keys under which a number on the map is found: the whole, and each part of a list. */
  static Set<String> keysOf(String raw) {
    Set<String> keys = new LinkedHashSet<>();
    for (String part : LIST.split(raw)) {
      add(keys, canonical(part));
    }
    add(keys, canonical(raw.replace(", ", ",")));
    return keys;
  }

  private static void add(Set<String> keys, String key) {
    if (!key.isEmpty() && key.length() <= 30) {
      keys.add(key);
    }
  }

  /** Numbers that a range or a divided number on the map may also go by. */
  static Set<String> membersOf(String raw) {
    Set<String> members = new LinkedHashSet<>();
    for (String key : keysOf(raw)) {
      members.addAll(members(key));
    }
    return members;
  }

  private static List<String> members(String key) {
    List<String> members = new ArrayList<>();
    Matcher compound = COMPOUND.matcher(key);
    if (compound.matches()) {
      if (isRange(compound.group(1), compound.group(2))) {
        int from = Integer.parseInt(compound.group(1));
        int to = Integer.parseInt(compound.group(2));
        int step = (to - from) % 2 == 0 ? 2 : 1;
        for (int n = from; n <= to; n += step) {
          members.add(Integer.toString(n));
        }
      } else {
        members.add(key.replace("-", ""));
      }
    }
    Matcher range = LETTER_RANGE.matcher(key);
    if (range.matches() && (range.group(3).isEmpty() || range.group(3).equals(range.group(1)))) {
      for (char c = range.group(2).charAt(0); c <= range.group(4).charAt(0); c++) {
        members.add(range.group(1) + c);
      }
    }
    int slash = key.indexOf('/');
    if (slash > 0 && key.indexOf('+') < 0) {
      members.add(key.substring(0, slash));
    }
    return members;
  }

  /** Whether this is a plain count, without letters or block, that can stand between others. */
  boolean counts() {
    return number >= 0;
  }

  /** Whether two numbers belong to one sequence: the same block, the same side. */
  boolean sharesSideWith(HouseNumber other) {
    return counts() && other.counts() && block == other.block && (number - other.number) % 2 == 0;
  }
}
