package dev.dogleg.address;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;

/**
 * A house number as it may be read from some of the typed words.
 *
 * @param from first word
 * @param to word after the last
 * @param key canonical number
 * @param parts numbers it may also mean where the map does not bear the whole: of {@code 12/4} both
 *     numbers, of {@code 12-14} the first
 */
record NumberSpan(int from, int to, String key, Set<String> parts) {
  private static final int MOST_PIECES = 4;
  private static final Pattern START = Pattern.compile("\\d{1,6}[a-z]{0,6}|[a-z]\\d{1,3}");
  private static final Pattern DIGITS_FIRST = Pattern.compile("^\\d+");
  private static final Pattern BLOCK = Pattern.compile("\\d{2,3}");
  private static final Pattern BEHIND_BLOCK = Pattern.compile("\\d{2}[a-z]?");

  /** All readings, in the order of the text, longer ones first where they start alike. */
  static List<NumberSpan> find(List<Token> words, FoldingTable table) {
    List<NumberSpan> spans = new ArrayList<>();
    for (int from = 0; from < words.size(); from++) {
      if (isKilometre(words, from)) {
        String key = HouseNumber.canonical("km" + words.get(from + 1).plain());
        spans.add(new NumberSpan(from, from + 2, key, Set.of()));
      } else if (canStart(words.get(from), table)) {
        List<NumberSpan> here = startingAt(words, from, table);
        for (int i = here.size() - 1; i >= 0; i--) {
          spans.add(here.get(i));
        }
      }
    }
    return spans;
  }

  private static boolean isKilometre(List<Token> words, int at) {
    return words.get(at).plain().equals("km")
        && at + 1 < words.size()
        && words.get(at + 1).plain().matches("\\d{1,3}");
  }

  private static boolean canStart(Token word, FoldingTable table) {
    String plain = word.plain();
    if (!START.matcher(plain).matches()) {
      return false;
    }
    String ending = DIGITS_FIRST.matcher(plain).replaceFirst("");
    return ending.length() < 2
        || !word.startsWithDigit()
        || table.lists("repeat", ending)
        || !table.lists("ending", ending);
  }

  private static List<NumberSpan> startingAt(List<Token> words, int from, FoldingTable table) {
    List<NumberSpan> found = new ArrayList<>();
    StringBuilder key = new StringBuilder(words.get(from).plain());
    Set<String> parts = new LinkedHashSet<>();
    add(found, words, from, from + 1, key.toString(), parts, table);
    int to = from + 1;
    while (to < words.size() && to - from < MOST_PIECES && continues(words.get(to))) {
      Token word = words.get(to);
      if (word.joint() == '/') {
        parts.add(HouseNumber.canonical(key.toString()));
        parts.add(HouseNumber.canonical(word.plain()));
      } else {
        parts.add(HouseNumber.canonical(words.get(from).plain()));
      }
      key.append(word.joint()).append(word.plain());
      to++;
      add(found, words, from, to, key.toString(), parts, table);
    }
    // "101 23" for 101-23: only digits on both sides, nothing but a space between.
    if (from + 1 < words.size()
        && words.get(from + 1).joint() == ' '
        && BLOCK.matcher(words.get(from).plain()).matches()
        && BEHIND_BLOCK.matcher(words.get(from + 1).plain()).matches()) {
      String both = words.get(from).plain() + "-" + words.get(from + 1).plain();
      if (HouseNumber.of(both).block() >= 0) {
        found.add(new NumberSpan(from, from + 2, both, Set.of()));
      }
    }
    return found;
  }

  private static boolean continues(Token word) {
    return (word.joint() == '-' || word.joint() == '/')
        && word.plain().matches("\\d{1,5}[a-z]{0,2}|[a-z]\\d{0,3}");
  }

  private static void add(
      List<NumberSpan> found,
      List<Token> words,
      int from,
      int to,
      String key,
      Set<String> parts,
      FoldingTable table) {
    found.add(new NumberSpan(from, to, HouseNumber.canonical(key), Set.copyOf(parts)));
    if (to >= words.size() || words.get(to).chunk() != words.get(to - 1).chunk()) {
      return;
    }
    Token next = words.get(to);
    boolean suffix = isOne(next, 'a', 'z') || table.lists("repeat", next.plain()) || isRear(next);
    if (suffix && (next.joint() == ' ' || next.joint() == '.')) {
      found.add(new NumberSpan(from, to + 1, HouseNumber.canonical(key + next.plain()), Set.of()));
    }
    if (isOne(next, '0', '9')
        && to + 1 < words.size()
        && words.get(to + 1).joint() == '/'
        && isOne(words.get(to + 1), '0', '9')) {
      String fraction = key + " " + next.plain() + "/" + words.get(to + 1).plain();
      found.add(new NumberSpan(from, to + 2, HouseNumber.canonical(fraction), Set.of()));
    }
  }

  private static boolean isOne(Token word, char least, char most) {
    String plain = word.plain();
    return plain.length() == 1 && plain.charAt(0) >= least && plain.charAt(0) <= most;
  }

  private static boolean isRear(Token word) {
    return word.plain().equals("rear");
  }

  boolean overlaps(int otherFrom, int otherTo) {
    return from < otherTo && otherFrom < to;
  }
}
