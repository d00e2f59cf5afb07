package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekCertificate;
import java.util.ArrayList;
import java.util.List;

/** How far a proof has come: the best week so far, the bounds, and what shows them. */
final class ProofStanding {
  /** Is told how it goes on. */
  @FunctionalInterface
  interface Watch {
    /** Best week so far, least number left out, and least cost of weeks that leave out so few. */
    void tell(WeekChoice best, int leftOutBound, long costBound);
  }

  private final WeekModel model;
  private final Watch watch;
  private final List<WeekCertificate.Search> searches = new ArrayList<>();
  private WeekChoice best;
  private int leftOutBound;
  private long costBound;
  private boolean proven;

  /** Nothing is shown of a week that is the best so far. */
  ProofStanding(WeekModel model, WeekChoice best, Watch watch) {
    this.model = model;
    this.best = best;
    this.watch = watch;
  }

  /** Tells the watch. */
  void tell() {
    better(best);
  }

  /** Tells the watch of a week, which may be within a limit above the bound. */
  void better(WeekChoice week) {
    watch.tell(week, leftOutBound, costBound);
  }

  /** Takes a week within a limit if it is better. */
  void take(int limit, WeekChoice week) {
    if (week.leftOutCounted() <= limit && week.beats(best)) {
      best = week;
      tell();
    }
  }

  /** No week leaves out fewer, which needs no showing or is not shown. */
  void leavesOut(int noFewer) {
    leftOutBound = noFewer;
  }

  /** No week within a limit costs less. */
  void costs(int limit, long noLess) {
    if (limit == leftOutBound) {
      costBound = Math.max(costBound, noLess);
      tell();
    }
  }

  /** A search shows that every week leaves out more. */
  void excluded(int limit, WeekCertificate.Search shows) {
    leftOutBound = limit + 1;
    costBound = 0;
    searches.add(shows);
  }

  /** The best week is found in what a tree looked at; of equal ones the first is taken. */
  void close(int limit, MasterProblem listed, BranchTree tree) {
    if (limit == leftOutBound) {
      searches.add(tree.search());
      costBound = best.costSixtieths();
      proven = true;
    }
    best = new EqualWeeks(listed, best, tree.whole()).least();
  }

  /** {@return whether the best week leaves out no more} */
  boolean within(int limit) {
    return best.leftOutCounted() <= limit;
  }

  /** {@return the best week, where it is within a limit; else null} */
  WeekChoice known(int limit) {
    return within(limit) ? best : null;
  }

  /** {@return weeks within a limit that cost so much or more are of no interest} */
  long ceiling(int limit) {
    return within(limit) ? best.costSixtieths() : CostCeiling.of(model);
  }

  WeekChoice best() {
    return best;
  }

  int leftOutBound() {
    return leftOutBound;
  }

  /** {@return no week that leaves out so few costs less; 0 where nothing is known} */
  long costBound() {
    return costBound;
  }

  boolean proven() {
    return proven;
  }

  /** {@return what shows the bounds} */
  List<WeekCertificate.Search> searches() {
    return searches;
  }
}
