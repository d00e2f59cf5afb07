package dev.dogleg.plan.week;

import dev.dogleg.schedule.StepTerms;
import java.util.Arrays;

/**
 * Tanks as floors of the rest of a day see them: what is left of the tank that runs out first, in
 * few levels, and the shortest ways by water.
 *
 * <p>Maintainers: only one of the two tanks counts, the one that all visits together use more of;
 * uses and what is left are rounded down to levels, so whoever has water enough has levels enough.
 * How often the tanks are filled does not count.
 */
final class RestTanks {
  private static final int LEVELS = 8;

  /** Where no road leads by water. */
  static final int NO_WAY = RestLegs.NO_WAY;

  /** Levels from empty (0) to full; 1 where there are no tanks. */
  final int levels;

  /** For each visit the levels it uses. */
  final int[] use;

  /** Whether what is left counts and tanks may be filled on the way. */
  final boolean stops;

  /** Whether tanks may be filled on the way, though what is left may not count. */
  final boolean ways;

  private final boolean byFresh;
  private final int tank;
  private final int n;
  private final int[] seconds;
  private final long[] price;

  /** Tabulates the tanks of a kind of van-day, or leaves them away. */
  RestTanks(RelaxedDay day, RunStep step, boolean wanted) {
    n = day.n;
    StepTerms terms = step.terms();
    use = new int[n];
    long fresh = 0;
    long grey = 0;
    for (int j = 0; j < n; j++) {
      fresh += terms.fresh(j);
      grey += terms.grey(j);
    }
    byFresh = (double) fresh * terms.greyTank() >= (double) grey * terms.freshTank();
    tank = byFresh ? terms.freshTank() : terms.greyTank();
    boolean counts = wanted && terms.water() && tank > 0 && (fresh > 0 || grey > 0);
    levels = counts ? LEVELS + 1 : 1;
    ways = terms.water() && terms.mostStops() > 0;
    stops = counts && ways;
    if (counts) {
      Arrays.setAll(use, j -> level(byFresh ? terms.fresh(j) : terms.grey(j)));
    }
    seconds = new int[ways ? n * n : 0];
    price = new long[seconds.length];
    for (int i = 0; i < n && ways; i++) {
      for (int j = 0; j < n; j++) {
        seconds[i * n + j] = i == j ? NO_WAY : step.leastByWater(i, j);
        price[i * n + j] = i == j ? 0 : step.leastPriceByWater(i, j);
      }
    }
  }

  private int level(long millilitres) {
    return (int) Math.min(LEVELS, millilitres * LEVELS / tank);
  }

  /** {@return the level of full tanks} */
  int full() {
    return levels - 1;
  }

  /**
   * What is left of the tanks.
   *
   * @param freshUsed fresh water used since they were last full and empty, in millilitres
   * @param greyMade grey water made since then
   * @return level
   */
  int left(int freshUsed, int greyMade) {
    return levels == 1 ? 0 : level(Math.max(0, tank - (byFresh ? freshUsed : greyMade)));
  }

  /**
   * {@return least seconds from visit to visit with a water stop; {@link #NO_WAY} without a way}
   */
  int seconds(int i, int j) {
    return seconds[i * n + j];
  }

  /** {@return least price of the drives on that way} */
  long price(int i, int j) {
    return price[i * n + j];
  }
}
