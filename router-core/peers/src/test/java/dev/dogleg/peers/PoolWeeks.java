package dev.dogleg.peers;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.CustomaryWeeks;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Seeded weeks of 20 to 30 bookings for the comparison with a second solver: with and without
 * break, with and without traffic, some bookings on the waiting list, some choices dearer.
 */
final class PoolWeeks {
  private static final BreakRule REST =
      new BreakRule(1800, new TimeWindow(11 * 3600 + 1800, 13 * 3600 + 1800));

  private PoolWeeks() {}

  /** What seed makes of a week. */
  record Kind(int bookings, boolean traffic, boolean rest, boolean waitingList) {
    static Kind of(long seed) {
      boolean traffic = seed % 8 == 3;
      int bookings = 20 + (int) (seed % (traffic ? 5 : 11));
      return new Kind(bookings, traffic, traffic || seed % 2 == 0, seed % 3 == 0);
    }
  }

  static WeekRequest week(long seed) {
    Kind kind = Kind.of(seed);
    double fill = seed % 5 == 0 && kind.bookings < 26 ? 1.0 : 1.15;
    WeekRequest week =
        CustomaryWeeks.week(
            seed,
            new CustomaryWeeks.Shape(kind.bookings, 1, fill, kind.traffic, Long.MAX_VALUE / 4));
    SplittableRandom random = new SplittableRandom(seed);
    List<WeekDay> days = new ArrayList<>();
    for (WeekDay day : week.days()) {
      days.add(
          kind.rest
              ? new WeekDay(day.shift().resting(Optional.of(REST)), day.travel(), day.terms())
              : day);
    }
    List<WeekBooking> bookings = new ArrayList<>();
    for (WeekBooking booking : week.bookings()) {
      bookings.add(kind.waitingList ? priced(random, booking) : booking);
    }
    return new WeekRequest(days, bookings, week.prices(), week.seed(), week.effort());
  }

  private static WeekBooking priced(SplittableRandom random, WeekBooking booking) {
    boolean counted = random.nextInt(5) > 0;
    List<DayChoice> choices = new ArrayList<>();
    for (DayChoice choice : booking.choices()) {
      Visit visit = counted ? choice.visit() : choice.visit().waiting(0);
      long extra = random.nextInt(3) == 0 ? 60L * random.nextInt(1200) : 0;
      choices.add(new DayChoice(choice.day(), visit, extra));
    }
    long leftOut = counted ? 0 : 60L * (600 + random.nextInt(3600));
    return new WeekBooking(booking.id(), counted, leftOut, choices);
  }
}
