package dev.dogleg.plan.week;

/**
 * A subset-row cut: of three bookings, the columns chosen serve two or more at most once (Jepsen,
 * Petersen, Spoorendonk, Pisinger 2008, Operations Research 56:497-511).
 *
 * @param first lowest booking
 * @param second next booking
 * @param third highest booking
 */
record RowCut(int first, int second, int third) {
  /** {@return the three as bits, where there are at most 64 bookings} */
  long mask() {
    return 1L << first | 1L << second | 1L << third;
  }
}
