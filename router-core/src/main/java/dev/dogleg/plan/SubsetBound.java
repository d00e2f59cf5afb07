package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;

/**
 * Exact least value of the rest of a day where time is no matter: for days of few visits.
 *
 * <p>Maintainers: Held and Karp 1962 backwards over all sets, {@code 2^n * n^2} steps, {@code 2^n *
 * n} longs. Legs are the least over the day.
 */
final class SubsetBound implements CompletionBound {
  /** Most visits for which the table is built. */
  static final int MOST = 16;

  private final int n;
  private final long[] rest;
  private final long day;

  SubsetBound(DayModel model, DayValue value, LeastLegs legs) {
    n = model.size();
    int sets = 1 << n;
    rest = new long[sets * Math.max(1, n)];
    long[] leftOut = new long[sets];
    leftOut[sets - 1] = 0;
    for (int set = sets - 2; set >= 0; set--) {
      int lowest = Integer.numberOfTrailingZeros(~set);
      leftOut[set] = leftOut[set | 1 << lowest] + value.leftOut(lowest);
    }
    for (int set = sets - 1; set > 0; set--) {
      for (int i = 0; i < n; i++) {
        if ((set >>> i & 1) == 0) {
          continue;
        }
        long least = legs.of(i, model.end()) + leftOut[set];
        for (int open = sets - 1 & ~set; open != 0; open &= open - 1) {
          int j = Integer.numberOfTrailingZeros(open);
          least = Math.min(least, legs.of(i, j) + rest[(set | 1 << j) * n + j]);
        }
        rest[set * n + i] = Math.min(least, DayValue.NONE);
      }
    }
    long least = leftOut[0];
    for (int j = 0; j < n; j++) {
      least = Math.min(least, legs.of(model.start(), j) + rest[(1 << j) * n + j]);
    }
    day = least;
  }

  @Override
  public long after(VisitSets sets, int set, int last, int earliest) {
    return rest[(int) sets.bits(set) * n + last];
  }

  @Override
  public long ofDay() {
    return day;
  }
}
