package dev.dogleg.itinerary;

import dev.dogleg.travel.TravelTimes;
import java.util.List;
import java.util.Objects;

/**
 * One van-day of a week: one groomer's working day with one van.
 *
 * @param shift who works when
 * @param travel travel times of all the week's places, numbered alike for all van-days
 * @param terms rules, water, balance; ids are those of the bookings
 */
public record WeekDay(DayShift shift, TravelTimes travel, DayTerms terms) {
  /** Checks that nothing is null and water places are known. */
  public WeekDay {
    Objects.requireNonNull(shift, "shift");
    Objects.requireNonNull(travel, "travel");
    Objects.requireNonNull(terms, "terms");
    for (WaterPlace stop : terms.water().map(WaterTerms::places).orElse(List.of())) {
      if (stop.place() >= travel.size()) {
        throw new IllegalArgumentException("water at an unknown place: " + stop.place());
      }
    }
  }
}
