package dev.dogleg.plan.week;

import java.util.List;

/**
 * A week put together.
 *
 * @param sets what van-days serve; days at home are left away
 * @param leftOutCounted number of counted bookings in none of them
 * @param costSixtieths exact cost of the sets, with the prices of what is left out
 */
record WeekChoice(List<ChosenSet> sets, int leftOutCounted, long costSixtieths) {
  /** One van-day's bookings, by their local numbers, rising. */
  record ChosenSet(VanKind kind, List<Integer> locals) {
    int[] asArray() {
      return locals.stream().mapToInt(Integer::intValue).toArray();
    }
  }

  /** Whether this week is better: fewer counted left out, then cheaper. */
  boolean beats(WeekChoice other) {
    return leftOutCounted != other.leftOutCounted
        ? leftOutCounted < other.leftOutCounted
        : costSixtieths < other.costSixtieths;
  }

  /** Puts sets together and adds up what they are worth. */
  static WeekChoice of(WeekModel model, SetCosts costs, List<ChosenSet> sets) {
    boolean[] served = new boolean[model.size()];
    long total = 0;
    for (ChosenSet set : sets) {
      total += costs.of(set.kind(), set.asArray());
      for (int local : set.locals()) {
        served[set.kind().booking(local)] = true;
      }
    }
    int left = 0;
    for (int i = 0; i < served.length; i++) {
      if (!served[i]) {
        left += model.counted(i) ? 1 : 0;
        total += model.leftOutSixtieths(i);
      }
    }
    return new WeekChoice(List.copyOf(sets), left, total);
  }
}
