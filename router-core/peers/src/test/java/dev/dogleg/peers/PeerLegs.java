package dev.dogleg.peers;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.List;

/**
 * A week as the peers can read it: bookings are nodes 0..n-1, node n is the place where all days
 * start and end; drives, prices of legs and windows are those of every day. Any other week is
 * refused.
 */
final class PeerLegs {
  final int size;
  final int[][] drive;
  final long[][] cost;
  final TimeWindow hours;
  final long waitPrice;
  private final Visit[] visits;
  private final boolean[][] allowed;

  PeerLegs(WeekRequest week) {
    size = week.bookings().size();
    DayShift shift = week.days().get(0).shift();
    hours = shift.hours();
    waitPrice = week.prices().waitingMinuteSeconds();
    if (week.prices().endMinuteSeconds() != 0
        || week.days().stream()
            .anyMatch(
                day ->
                    !day.terms().equals(DayTerms.NONE)
                        || !day.shift().hours().equals(hours)
                        || day.shift().breakRule().isPresent()
                        || day.shift().overtimeSeconds() != 0
                        || day.shift().startPlace() != shift.startPlace()
                        || day.shift().endPlace() != shift.startPlace())) {
      throw new IllegalArgumentException("the peers read weeks of like, plain days only");
    }
    visits = new Visit[size];
    allowed = new boolean[size][week.days().size()];
    for (int b = 0; b < size; b++) {
      WeekBooking booking = week.bookings().get(b);
      visits[b] = booking.choices().get(0).visit();
      for (DayChoice choice : booking.choices()) {
        allowed[b][choice.day()] = true;
        if (!choice.visit().equals(visits[b])
            || choice.extraSixtieths() != 0
            || visits[b].arriveWithin().size() != 1
            || !booking.counted()) {
          throw new IllegalArgumentException("the peers do not read booking " + booking.id());
        }
      }
    }
    drive = new int[size + 1][size + 1];
    cost = new long[size + 1][size + 1];
    TravelTimes travel = week.days().get(0).travel();
    for (int i = 0; i <= size; i++) {
      for (int j = 0; j <= size; j++) {
        int from = i == size ? shift.startPlace() : visits[i].place();
        int to = j == size ? shift.startPlace() : visits[j].place();
        drive[i][j] = travel.driveSeconds(from, to, 0);
        long metrePrice = 60L * week.prices().kilometreSeconds() * travel.lengthMetres(from, to);
        cost[i][j] =
            (long) Prices.SIXTIETHS_PER_DRIVE_SECOND * drive[i][j]
                + Math.floorDiv(metrePrice + 500, 1000);
      }
    }
  }

  boolean allows(int booking, int day) {
    return allowed[booking][day];
  }

  TimeWindow window(int booking) {
    return visits[booking].arriveWithin().get(0);
  }

  int service(int node) {
    return node == size ? 0 : visits[node].serviceSeconds();
  }

  /** Cost of a day in a given order, the van leaving as late as it can without waiting more. */
  long costOf(List<Integer> order) {
    int ready = hours.fromSeconds();
    int slack = hours.toSeconds();
    long sum = 0;
    int at = size;
    for (int next : order) {
      sum += cost[at][next];
      ready = Math.max(ready + drive[at][next], window(next).fromSeconds());
      slack = Math.min(slack + drive[at][next], window(next).toSeconds());
      sum += waitPrice * Math.max(0, ready - slack);
      slack = Math.max(slack, ready) + service(next);
      ready += service(next);
      at = next;
    }
    return sum + cost[at][size];
  }
}
