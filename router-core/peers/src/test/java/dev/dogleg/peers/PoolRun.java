package dev.dogleg.peers;

import com.google.ortools.Loader;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.WeekPlanner;
import java.util.Locale;

/** Compares the week planner with {@link WholePool} on many seeded weeks; run by hand. */
public final class PoolRun {
  private PoolRun() {}

  /**
   * Runs, one line a week and a summary.
   *
   * @param args first seed, last seed
   */
  public static void main(String[] args) {
    Loader.loadNativeLibraries();
    int weeks = 0;
    int equal = 0;
    int countAbove = 0;
    for (long seed = Long.parseLong(args[0]); seed <= Long.parseLong(args[1]); seed++) {
      PoolWeeks.Kind kind = PoolWeeks.Kind.of(seed);
      WeekRequest week = PoolWeeks.week(seed);
      long start = System.nanoTime();
      SetMaster.Best best = WholePool.solve(week, kind.traffic());
      long between = System.nanoTime();
      WeekPlan plan = WeekPlanner.plan(week);
      boolean same = same(plan, best);
      boolean above = best.leftOutCounted() > Math.ceil(best.countBound() - 1e-6);
      weeks++;
      equal += same ? 1 : 0;
      countAbove += above ? 1 : 0;
      System.out.printf(
          Locale.ROOT,
          "%s seed %d %s: left out %d (linear program %.3f%s) cost %d, %d sets, %.1f s; planner %d"
              + " %d %s, %.1f s%n",
          same ? "equal" : "DIFFERENT",
          seed,
          kind,
          best.leftOutCounted(),
          best.countBound(),
          above ? ", rounds up to fewer" : "",
          best.costSixtieths(),
          best.columns(),
          (between - start) / 1e9,
          plan.leftOutCounted(),
          plan.costSixtieths(),
          plan.proof().kind(),
          (System.nanoTime() - between) / 1e9);
    }
    System.out.printf(
        "%d of %d weeks equal; in %d the count's linear program rounds up to fewer than the truth%n",
        equal, weeks, countAbove);
    if (equal < weeks) {
      throw new IllegalStateException("the two solvers disagree");
    }
  }

  private static boolean same(WeekPlan plan, SetMaster.Best best) {
    return plan.leftOutCounted() == best.leftOutCounted()
        && plan.costSixtieths() == best.costSixtieths()
        && plan.proof().kind() == Proof.Kind.PROVEN_BEST;
  }
}
