package dev.dogleg.plan.week;

import java.util.List;
import java.util.Optional;

/**
 * A good week of plain van-days from the prices in force: chooses the columns that the LP uses
 * most, one after the other, and prices anew what is left each time.
 *
 * <p>Maintainers: a dive with columns made on the way (Sadykov, Vanderbeck, Pessoa, Tahiri, Uchoa
 * 2019, INFORMS Journal on Computing 31:251-267); only quick pricing, so it proves nothing. The
 * columns that it makes stay in the pool.
 */
final class PlainDive {
  private static final double SURE = 0.9;

  private final MasterProblem problem;
  private final List<DayPricer> pricers;
  private final ColumnGeneration rest;

  /**
   * Sets up.
   *
   * @param problem the week and the sets known; grows
   * @param pricers by kind of van-day, all of them plain
   * @param rest columns and cuts to begin with; used up
   */
  PlainDive(MasterProblem problem, List<DayPricer> pricers, ColumnGeneration rest) {
    this.problem = problem;
    this.pricers = pricers;
    this.rest = rest;
  }

  /**
   * Dives.
   *
   * @param ceiling a week of this cost or more is of no interest
   * @return the week; empty where the dive leads nowhere
   */
  Optional<WeekChoice> run(long ceiling) {
    Optional<WeekChoice> found = Optional.empty();
    while (rest.solveQuickly() && rest.answer().value() < ceiling && found.isEmpty()) {
      if (rest.answer().isWhole()) {
        found = Optional.of(problem.week(rest.asked(), rest.answer().use()));
      } else {
        choose();
      }
    }
    pricers.forEach(pricer -> pricer.leaveOut(new boolean[problem.model().size()]));
    return found;
  }

  /** Chooses what is as good as sure; where nothing is, the column most in use. */
  private void choose() {
    double[] use = rest.answer().use();
    int[] columns = rest.asked();
    int top = -1;
    boolean sure = false;
    for (int j = 0; j < use.length; j++) {
      if (!rest.isChosen(columns[j])) {
        top = top < 0 || use[j] > use[top] ? j : top;
        if (use[j] >= SURE) {
          sure = true;
          rest.choose(columns[j]);
        }
      }
    }
    if (!sure) {
      rest.choose(columns[top]);
    }
  }
}
