package dev.dogleg.peers;

import dev.dogleg.audit.WeekAudit;
import dev.dogleg.audit.WeekFinding;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.schedule.DayTiming;
import dev.dogleg.schedule.TimedOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A peer's orders, timed as well as they can be and judged by the audit: nothing is believed of a
 * peer but who is served on which day in which order.
 *
 * @param leftOut counted bookings left out
 * @param costSixtieths cost of the week
 * @param breaches what the audit finds, but for reasons of what is left out, which a peer gives
 *     none
 */
record JudgedWeek(int leftOut, long costSixtieths, List<String> breaches) {
  private static final Proof NOTHING_PROVEN = new Proof(Proof.Kind.CLOCK_LIMIT, 0, 0, 0);

  static JudgedWeek of(WeekRequest week, List<List<Integer>> orders) {
    List<DayPlan> days = new ArrayList<>();
    List<String> breaches = new ArrayList<>();
    int served = 0;
    long cost = 0;
    for (int day = 0; day < orders.size(); day++) {
      TimedOrder timed = timed(week, day, orders.get(day));
      timed.miss().ifPresent(miss -> breaches.add(miss.toString()));
      served += orders.get(day).size();
      cost += timed.costSixtieths();
      days.add(
          new DayPlan(
              week.days().get(day).shift(),
              timed.stops(),
              List.of(),
              0,
              timed.costSixtieths(),
              NOTHING_PROVEN));
    }
    int leftOut = week.bookings().size() - served;
    WeekPlan plan = new WeekPlan(days, List.of(), leftOut, cost, NOTHING_PROVEN);
    for (WeekFinding found : WeekAudit.check(week, plan)) {
      if (!found.finding().code().equals("no-room-missing")) {
        breaches.add(found.toString());
      }
    }
    return new JudgedWeek(leftOut, cost, breaches);
  }

  private static TimedOrder timed(WeekRequest week, int day, List<Integer> order) {
    List<Visit> visits = new ArrayList<>();
    for (int booking : order) {
      week.bookings().get(booking).choices().stream()
          .filter(choice -> choice.day() == day)
          .map(DayChoice::visit)
          .forEach(visits::add);
    }
    WeekDay on = week.days().get(day);
    DayRequest request =
        new DayRequest(on.shift(), visits, on.travel(), week.prices(), on.terms(), 1, 1);
    return DayTiming.time(request, IntStream.range(0, visits.size()).boxed().toList());
  }
}
