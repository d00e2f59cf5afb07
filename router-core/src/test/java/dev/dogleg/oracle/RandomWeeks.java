package dev.dogleg.oracle;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.SeededDays;
import dev.dogleg.time.WorkDay;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Small weeks by seed, in seconds, with every term there is. */
public final class RandomWeeks {
  private RandomWeeks() {}

  /**
   * A week whose days each may be asked for most of its bookings.
   *
   * @param seed seed
   * @param bookings number of bookings
   * @param days number of van-days
   * @param withTerms whether days have rules, water and balance
   * @return the week
   */
  public static WeekRequest week(long seed, int bookings, int days, boolean withTerms) {
    SplittableRandom random = new SplittableRandom(seed * 31_337 + bookings * 10L + days);
    List<DayRequest> asked = new ArrayList<>();
    for (int d = 0; d < days; d++) {
      DayRequest day = SeededDays.day(seed * 50 + d, bookings, 1, random.nextBoolean());
      asked.add(withTerms ? RandomTerms.on(seed * 50 + d, day) : day);
    }
    return of(random, asked);
  }

  /**
   * A week of given days.
   *
   * @param random draws choices and prices
   * @param asked days with as many visits each, the k-th of all days being one booking, of one id,
   *     and with as many places
   * @return the week
   */
  public static WeekRequest of(SplittableRandom random, List<DayRequest> asked) {
    List<WeekDay> vanDays = new ArrayList<>();
    for (int d = 0; d < asked.size(); d++) {
      DayRequest day = asked.get(d);
      vanDays.add(new WeekDay(dated(day.shift(), d), day.travel(), day.terms()));
    }
    List<WeekBooking> stops = new ArrayList<>();
    for (int b = 0; b < asked.get(0).visits().size(); b++) {
      stops.add(booking(random, asked, b));
    }
    return new WeekRequest(vanDays, stops, asked.get(0).prices(), 1, DayRequest.USUAL_EFFORT);
  }

  private static WeekBooking booking(SplittableRandom random, List<DayRequest> asked, int b) {
    boolean counted = random.nextInt(4) > 0;
    long price = counted ? 0 : random.nextInt(2400);
    List<DayChoice> choices = new ArrayList<>();
    for (int d = 0; d < asked.size(); d++) {
      if (random.nextInt(5) > 0) {
        Visit visit = asked.get(d).visits().get(b);
        long extra = random.nextInt(3) == 0 ? random.nextInt(900) : 0;
        choices.add(new DayChoice(d, as(visit, counted), extra));
      }
    }
    return new WeekBooking(asked.get(0).visits().get(b).id(), counted, price, choices);
  }

  /** The visit, booked just where the booking is counted; its own price is the week's matter. */
  private static Visit as(Visit visit, boolean counted) {
    return new Visit(
        visit.id(),
        visit.place(),
        visit.serviceSeconds(),
        counted,
        0,
        visit.arriveWithin(),
        visit.doneBySeconds(),
        visit.vanWithin(),
        visit.first());
  }

  private static DayShift dated(DayShift shift, int d) {
    WorkDay day = new WorkDay(shift.day().date().plusDays(d), shift.day().zone());
    return new DayShift(
        shift.groomerId(),
        shift.vanId(),
        day,
        shift.startPlace(),
        shift.endPlace(),
        shift.hours(),
        shift.overtimeSeconds(),
        shift.breakRule());
  }
}
