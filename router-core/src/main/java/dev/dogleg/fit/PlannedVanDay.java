package dev.dogleg.fit;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A van-day of a planned week without any newcomer.
 *
 * @param number number of the van-day
 * @param visits what it serves, all booked, in the order of the week's bookings
 * @param plan the best day of these visits
 * @param sumSixtieths cost of that day and price of its odds
 * @param kept odds of each visit, thousandths, by id
 */
public record PlannedVanDay(
    int number, List<Visit> visits, DayPlan plan, long sumSixtieths, Map<String, Integer> kept) {
  /** Copies the collections. */
  public PlannedVanDay {
    Objects.requireNonNull(plan, "plan");
    visits = List.copyOf(visits);
    kept = Map.copyOf(kept);
  }

  static PlannedVanDay of(WeekRequest week, int number, List<Visit> visits) {
    WeekDay day = week.days().get(number);
    DayRequest request = request(week, day, visits);
    SolvedDay solved = SolvedDay.planned(request);
    if (solved.plan().leftOutBooked() > 0) {
      throw new IllegalArgumentException(
          "van-day " + number + " cannot serve all it has: " + solved.plan().noRoom());
    }
    return new PlannedVanDay(
        number, visits, solved.plan(), solved.sumSixtieths(), DayOdds.kept(request, solved.plan()));
  }

  static DayRequest request(WeekRequest week, WeekDay day, List<Visit> visits) {
    return new DayRequest(
        day.shift(),
        visits,
        day.travel(),
        week.prices(),
        day.terms(),
        week.seed(),
        DayRequest.USUAL_EFFORT);
  }
}
