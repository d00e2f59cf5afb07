package dev.dogleg.plan.week;

import java.util.List;
import java.util.Optional;

/**
 * How few counted bookings a week may leave out, by prices of the number left out: bounds of it,
 * and lists of every set that a week may hold that leaves out so few.
 *
 * <p>Maintainers: the LP's value is often just below a whole number that no week reaches (1.95
 * where all weeks leave out 3), and cuts do not take it above. But then little lies between the
 * two, and so few sets that a tree knows in seconds whether a week is made of them, and which is
 * the cheapest (Baldacci, Christofides, Mingozzi 2008, Mathematical Programming 115:351-385).
 */
final class FewestLeftOut {
  /** Partial sets of a van-day looked at for a list. */
  private static final int MOST_LISTED = 200_000;

  /** Nothing is listed where the bound lies further below, in parts of a booking. */
  private static final long MOST_ROOM = RowPrices.COUNT_SCALE / 2;

  private final MasterProblem seen;
  private final List<DayPricer> pricers;

  /** Once it was asked for: the LP, with a bound near its value. */
  private ColumnGeneration sharp;

  /**
   * Every set of a week that leaves out so few.
   *
   * @param bound bound of the number left out by which the sets were chosen
   * @param cuts cuts of its prices
   * @param listed the week with these sets alone
   */
  record Room(WeekBound bound, List<RowCut> cuts, MasterProblem listed) {}

  /**
   * Sets up.
   *
   * @param seen the week and the sets seen so far; grows
   * @param pricers by kind of van-day
   */
  FewestLeftOut(MasterProblem seen, List<DayPricer> pricers) {
    this.seen = seen;
    this.pricers = pricers;
  }

  /**
   * The LP of the number left out, not yet solved.
   *
   * @param cuts cuts in force
   * @param start columns to begin with
   * @param enough a bound of this or more ends the work
   */
  ColumnGeneration lp(List<RowCut> cuts, int[] start, long enough) {
    int counted = seen.model().countedBookings();
    return new ColumnGeneration(
        seen, pricers, true, counted, cuts, start, 4L * (counted + 1), enough);
  }

  /**
   * Every set of a week that leaves out so few.
   *
   * @param limit most counted bookings left out
   * @param start columns to begin with
   * @return empty where there are too many to be listed
   */
  Optional<Room> room(int limit, int[] start) {
    if (sharp == null) {
      sharp = lp(List.of(), start, seen.model().countedBookings());
      sharp.solveSharply();
    }
    WeekBound bound = sharp.bound();
    if (bound == null || limit * RowPrices.COUNT_SCALE - bound.scaled() > MOST_ROOM) {
      return Optional.empty();
    }
    return Optional.ofNullable(new RoomSweep(seen, bound, limit, MOST_LISTED).run(pricers))
        .map(
            pool ->
                new Room(
                    bound,
                    sharp.cuts(),
                    new MasterProblem(seen.model(), pool, seen.costs(), seen.work())));
  }
}
