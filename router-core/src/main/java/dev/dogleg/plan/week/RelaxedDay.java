package dev.dogleg.plan.week;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.Arrays;
import java.util.List;

/**
 * A kind of van-day made easier, so that partial days are few numbers: what it says is never dearer
 * and never less possible than {@code docs/TIMING.md} and {@code docs/WEEK.md}.
 *
 * <p>Made easier: durations are rounded down ({@link RelaxedLegs}); several windows are one from
 * the first to the last; of the rules only the shortest services count; water is left away, but for
 * the ways by it where they are shorter; waiting never costs more than driving (so that lingering
 * at a door pays only where the drive gets shorter). {@link RunStep} is the same day with all its
 * rules, windows and tanks.
 */
final class RelaxedDay {
  /** Cost of a day that cannot be. */
  static final long NEVER = Long.MAX_VALUE / 4;

  final int n;
  final int from;
  final int latestEnd;
  final boolean hasBreak;
  final RelaxedLegs legs;
  final int[] service;
  final int[] open;
  final int[] close;
  final int[] doneBy;
  final int[] leaveBy;
  final boolean[] first;
  final int[] home;
  private final int breakLength;
  private final int breakFrom;
  private final int breakTo;
  private final int shiftEnd;
  private final long driven;
  private final long waitPrice;
  private final int kilometre;
  private final int[] place;
  private final long overtime;
  private final long endPrice;

  RelaxedDay(VanKind kind, Prices prices) {
    n = kind.size();
    DayShift shift = kind.day().shift();
    from = shift.hours().fromSeconds();
    shiftEnd = shift.hours().toSeconds();
    latestEnd = shift.latestEndSeconds();
    hasBreak = shift.breakRule().isPresent();
    breakLength = shift.breakRule().map(BreakRule::lengthSeconds).orElse(0);
    breakFrom = shift.breakRule().map(rule -> rule.startWithin().fromSeconds()).orElse(0);
    breakTo = shift.breakRule().map(rule -> rule.startWithin().toSeconds()).orElse(0);
    driven = Prices.SIXTIETHS_PER_DRIVE_SECOND;
    boolean water =
        kind.day().terms().water().isPresent() && kind.day().terms().water().get().most() > 0;
    overtime = prices.overtimeMinuteSeconds();
    endPrice = prices.endMinuteSeconds();
    kilometre = prices.kilometreSeconds();
    waitPrice = prices.waitingMinuteSeconds();
    place = new int[n + 2];
    place[n] = shift.startPlace();
    place[n + 1] = shift.endPlace();
    service = new int[n];
    open = new int[n];
    close = new int[n];
    doneBy = new int[n];
    leaveBy = new int[n];
    first = new boolean[n];
    for (int j = 0; j < n; j++) {
      Visit visit = kind.visit(j);
      place[j] = visit.place();
      service[j] = leastService(visit, kind);
      first[j] = visit.first();
      TimeWindow lastVan = visit.vanWithin().get(visit.vanWithin().size() - 1);
      open[j] =
          Math.max(
              visit.arriveWithin().get(0).fromSeconds(), visit.vanWithin().get(0).fromSeconds());
      doneBy[j] = Math.min(visit.doneBySeconds(), lastVan.toSeconds());
      leaveBy[j] = Math.min(latestEnd, lastVan.toSeconds());
      close[j] = Math.min(visit.latestArrivalSeconds(), doneBy[j] - service[j]);
    }
    int[] wells =
        water
            ? kind.day().terms().water().get().places().stream()
                .mapToInt(WaterPlace::place)
                .toArray()
            : new int[0];
    legs = new RelaxedLegs(kind.day().travel(), place, n, wells, from, latestEnd, kilometre);
    home = homeSeconds();
  }

  /**
   * Least seconds from each door home, by way of other visits where that is shorter or the only
   * way.
   */
  private int[] homeSeconds() {
    int[] seconds = new int[n];
    for (int j = 0; j < n; j++) {
      seconds[j] = legs.spanEnds(j, n + 1) == null ? Integer.MAX_VALUE / 4 : legs.least(j, n + 1);
    }
    boolean shorter = true;
    while (shorter) {
      shorter = false;
      for (int j = 0; j < n; j++) {
        for (int k = 0; k < n; k++) {
          if (legs.spanEnds(j, k) != null
              && legs.least(j, k) + service[k] + seconds[k] < seconds[j]) {
            seconds[j] = legs.least(j, k) + service[k] + seconds[k];
            shorter = true;
          }
        }
      }
    }
    return seconds;
  }

  private static int leastService(Visit visit, VanKind kind) {
    int least = visit.serviceSeconds();
    for (DayRule rule : kind.day().terms().rules()) {
      if (rule instanceof DayRule.PlaceMinutes minutes && minutes.visits().contains(visit.id())) {
        int changed = (int) (((long) least * minutes.timesThousandths() + 500) / 1000);
        least = Math.max(0, Math.min(least, changed + minutes.plusSeconds()));
      }
    }
    return least;
  }

  /** The direct legs of a day with water places as further nodes. */
  RelaxedLegs legsBy(TravelTimes travel, List<WaterPlace> wells) {
    int[] nodes = Arrays.copyOf(place, n + 2 + wells.size());
    for (int w = 0; w < wells.size(); w++) {
      nodes[n + 2 + w] = wells.get(w).place();
    }
    return new RelaxedLegs(travel, nodes, n, new int[0], from, latestEnd, kilometre);
  }

  /** {@return price of a second of driving} */
  long driven() {
    return driven;
  }

  /** {@return price of a second of waiting, not above that of driving} */
  long waited() {
    return Math.min(driven, waitPrice);
  }

  /** {@return earliest start of the break} */
  int breakFrom() {
    return breakFrom;
  }

  /** {@return latest start of the break} */
  int breakTo() {
    return breakTo;
  }

  /** {@return price of driving so many seconds} */
  long driveCost(int seconds) {
    return driven * seconds;
  }

  /** {@return length of the break} */
  int breakLength() {
    return breakLength;
  }

  /** {@return number of the start place among the nodes} */
  int start() {
    return n;
  }

  /** {@return number of the end place among the nodes} */
  int end() {
    return n + 1;
  }

  /** Whether a glance shows that a door cannot be served after leaving another at {@code a}. */
  boolean tooLate(int i, int a, int j) {
    if (legs.spanEnds(i, j) == null) {
      return true;
    }
    int arrive = a + legs.least(i, j);
    return arrive > close[j] || Math.max(arrive, open[j]) + service[j] + home[j] > latestEnd;
  }

  /** Price of ending the day at a time. */
  long endCost(int end) {
    return overtime * Math.max(0, end - shiftEnd) + endPrice * (end - from);
  }
}
