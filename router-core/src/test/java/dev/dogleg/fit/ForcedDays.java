package dev.dogleg.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.WeekOracle;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Questions about newcomers as requests of their own, everybody booked, and what they must find.
 */
public final class ForcedDays {
  private ForcedDays() {}

  /**
   * A van-day with what it has and one more.
   *
   * @param week the week
   * @param placed van-days of the planned bookings
   * @param number number of the van-day
   * @param more what else must be served; may be empty
   * @return the request
   */
  public static DayRequest day(
      WeekRequest week, Map<String, Integer> placed, int number, List<Visit> more) {
    List<Visit> visits = new ArrayList<>();
    for (WeekBooking booking : week.bookings()) {
      if (placed.getOrDefault(booking.id(), -1) == number) {
        for (DayChoice choice : booking.choices()) {
          if (choice.day() == number) {
            visits.add(booked(choice.visit()));
          }
        }
      }
    }
    more.forEach(visit -> visits.add(booked(visit)));
    WeekDay day = week.days().get(number);
    return new DayRequest(
        day.shift(), visits, day.travel(), week.prices(), day.terms(), 1, DayRequest.USUAL_EFFORT);
  }

  /**
   * The week with its planned bookings and one more, all to be served.
   *
   * @param week the week
   * @param placed van-days of the planned bookings
   * @param fixed bookings that keep their van-day
   * @param newcomer the one more
   * @param effort limit in solver steps
   * @return the request
   */
  public static WeekRequest week(
      WeekRequest week,
      Map<String, Integer> placed,
      Set<String> fixed,
      WeekBooking newcomer,
      long effort) {
    List<WeekBooking> bookings = new ArrayList<>();
    for (WeekBooking booking : week.bookings()) {
      if (placed.containsKey(booking.id())) {
        int day = placed.get(booking.id());
        List<DayChoice> choices = new ArrayList<>();
        for (DayChoice choice : booking.choices()) {
          if (!fixed.contains(booking.id()) || choice.day() == day) {
            choices.add(choice);
          }
        }
        bookings.add(counted(booking.id(), choices));
      }
    }
    bookings.add(counted(newcomer.id(), newcomer.choices()));
    return new WeekRequest(week.days(), bookings, week.prices(), week.seed(), effort);
  }

  /** {@return the van-day on which a plan serves each booking that it serves, by id} */
  public static Map<String, Integer> placed(WeekPlan plan) {
    Map<String, Integer> placed = new TreeMap<>();
    for (int day = 0; day < plan.days().size(); day++) {
      int number = day;
      plan.days().get(day).stops().stream()
          .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
          .forEach(stop -> placed.put(stop.visitId(), number));
    }
    return placed;
  }

  /**
   * That an answer of tier B is what an oracle finds that tries every week.
   *
   * @param name what is looked at
   * @param offer the answer
   * @param forced the week with everybody to be served
   * @return whether the newcomer fits
   */
  public static boolean asTheOracle(String name, WeekOffer offer, WeekRequest forced) {
    WeekOracle.Best best = WeekOracle.best(forced);
    boolean fits = best.leftOutCounted() == 0;
    assertTrue(offer.proven(), name);
    assertEquals(
        fits ? FitAnswer.Verdict.FITS : FitAnswer.Verdict.NEVER_FITS, offer.verdict(), name);
    if (fits) {
      assertEquals(best.costSixtieths(), offer.plan().costSixtieths(), name);
    }
    return fits;
  }

  private static WeekBooking counted(String id, List<DayChoice> choices) {
    List<DayChoice> all = new ArrayList<>();
    for (DayChoice choice : choices) {
      all.add(new DayChoice(choice.day(), booked(choice.visit()), choice.extraSixtieths()));
    }
    return new WeekBooking(id, true, 0, all);
  }

  private static Visit booked(Visit visit) {
    Visit plain =
        Visit.booked(visit.id(), visit.place(), visit.serviceSeconds())
            .arriving(visit.arriveWithin())
            .doneBy(visit.doneBySeconds())
            .vanOnlyWithin(visit.vanWithin());
    return plain.first(visit.first());
  }
}
