package dev.dogleg.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class WeekOracleTest {
  /** A week of one day is that day: its waiting list is the bookings that cost. */
  @Test
  void aWeekOfOneDayIsTheDay() {
    for (int seed = 1; seed <= 40; seed++) {
      WeekRequest week = RandomWeeks.week(seed, 1 + seed % 5, 1, true);
      List<Visit> visits = new ArrayList<>();
      long extra = 0;
      int noChoice = 0;
      long noChoicePrice = 0;
      for (WeekBooking booking : week.bookings()) {
        for (DayChoice choice : booking.choices()) {
          extra += choice.extraSixtieths();
          boolean counted = booking.counted();
          long price = booking.leftOutSixtieths();
          visits.add(counted ? choice.visit() : choice.visit().waiting(price));
        }
        if (booking.choices().isEmpty()) {
          noChoice += booking.counted() ? 1 : 0;
          noChoicePrice += booking.leftOutSixtieths();
        }
      }
      if (extra > 0) {
        continue;
      }
      DayRequest asked = week.asking(0);
      DayOracle.Best day =
          DayOracle.best(
              new DayRequest(
                  asked.shift(), visits, asked.travel(), asked.prices(), asked.terms(), 1, 1));
      WeekOracle.Best best = WeekOracle.best(week);
      assertEquals(day.leftOutBooked() + noChoice, best.leftOutCounted(), "seed " + seed);
      assertEquals(day.costSixtieths() + noChoicePrice, best.costSixtieths(), "seed " + seed);
    }
  }

  @Test
  void aSecondDayNeverHarms() {
    int helps = 0;
    for (int seed = 1; seed <= 20; seed++) {
      WeekRequest two = RandomWeeks.week(seed, 4, 2, true);
      List<WeekBooking> onlyFirst = new ArrayList<>();
      for (WeekBooking booking : two.bookings()) {
        onlyFirst.add(
            new WeekBooking(
                booking.id(),
                booking.counted(),
                booking.leftOutSixtieths(),
                booking.choices().stream().filter(choice -> choice.day() == 0).toList()));
      }
      WeekOracle.Best one =
          WeekOracle.best(new WeekRequest(two.days(), onlyFirst, two.prices(), 1, 1));
      WeekOracle.Best both = WeekOracle.best(two);
      assertTrue(both.leftOutCounted() <= one.leftOutCounted(), "seed " + seed);
      helps += both.leftOutCounted() < one.leftOutCounted() ? 1 : 0;
    }
    int weeks = helps;
    assertTrue(helps >= 10, () -> "a second day helped in " + weeks + " weeks");
  }
}
