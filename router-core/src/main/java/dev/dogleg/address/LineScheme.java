package dev.dogleg.address;

/**
 * Which numbers stand on a stretch of an interpolation way. Source: OpenStreetMap wiki,
 * Key:addr:interpolation (from memory): {@code odd}, {@code even}, {@code all}, {@code alphabetic},
 * or a step as a number.
 */
final class LineScheme {
  private LineScheme() {}

  /** Share of the way from the first to the second number, 0..1; -1 where it is not on it. */
  static double share(String scheme, HouseNumber from, HouseNumber to, HouseNumber wanted) {
    if (!from.counts() || !to.counts() || from.block() != wanted.block()) {
      return -1;
    }
    if (scheme.equals("alphabetic")) {
      return letters(from, to, wanted);
    }
    int step =
        switch (scheme) {
          case "odd", "even" -> 2;
          case "all" -> 1;
          default -> scheme.matches("[1-9]\\d?") ? Integer.parseInt(scheme) : 0;
        };
    int low = Math.min(from.number(), to.number());
    int high = Math.max(from.number(), to.number());
    int number = wanted.number();
    boolean parity =
        !(scheme.equals("odd") && number % 2 == 0) && !(scheme.equals("even") && number % 2 != 0);
    boolean onIt =
        step > 0
            && wanted.letters().isEmpty()
            && parity
            && number >= low
            && number <= high
            && (step <= 2 || (number - from.number()) % step == 0)
            && high > low;
    return onIt ? (double) (number - from.number()) / (to.number() - from.number()) : -1;
  }

  private static double letters(HouseNumber from, HouseNumber to, HouseNumber wanted) {
    if (from.number() != to.number() || from.number() != wanted.number()) {
      return -1;
    }
    int a = letter(from.letters());
    int b = letter(to.letters());
    int c = letter(wanted.letters());
    if (a < 0 || b < 0 || c < 0 || a == b || c < Math.min(a, b) || c > Math.max(a, b)) {
      return -1;
    }
    return (double) (c - a) / (b - a);
  }

  /** 0 for none, 1 for a, ... ; -1 for anything else. */
  private static int letter(String letters) {
    if (letters.isEmpty()) {
      return 0;
    }
    return letters.matches("[a-z]") ? letters.charAt(0) - 'a' + 1 : -1;
  }
}
