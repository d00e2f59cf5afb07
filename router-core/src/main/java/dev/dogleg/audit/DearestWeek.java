package dev.dogleg.audit;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** A cost that no week of a request exceeds, however badly it is planned. */
final class DearestWeek {
  private DearestWeek() {}

  /**
   * The cost.
   *
   * @throws ArithmeticException where it is no long
   */
  static long of(WeekRequest request) {
    long sum = 0;
    for (WeekBooking booking : request.bookings()) {
      sum = Math.addExact(sum, booking.leftOutSixtieths());
    }
    for (int day = 0; day < request.days().size(); day++) {
      sum = Math.addExact(sum, day(request, day));
    }
    return sum;
  }

  private static long day(WeekRequest request, int number) {
    WeekDay day = request.days().get(number);
    List<Visit> visits = new ArrayList<>();
    long sum = 0;
    for (WeekBooking booking : request.bookings()) {
      for (DayChoice choice : booking.choices()) {
        if (choice.day() == number) {
          visits.add(choice.visit());
          sum = Math.addExact(sum, choice.extraSixtieths());
        }
      }
    }
    Prices prices = request.prices();
    DayShift shift = day.shift();
    long seconds = Math.max(0, shift.latestEndSeconds() - shift.hours().fromSeconds());
    // A second is driven, waited or served.
    sum += seconds * Math.max(Prices.SIXTIETHS_PER_DRIVE_SECOND, prices.waitingMinuteSeconds());
    sum += seconds * prices.endMinuteSeconds();
    long over = Math.max(0, shift.latestEndSeconds() - shift.hours().toSeconds());
    sum += over * prices.overtimeMinuteSeconds();
    int stops = visits.size() + day.terms().water().map(water -> water.most()).orElse(0);
    sum = Math.addExact(sum, (stops + 1) * longestLeg(day, visits, prices));
    for (DayRule rule : day.terms().rules()) {
      long price = rule.ratherSixtieths().orElse(0);
      sum = Math.addExact(sum, Math.multiplyExact(price, breaches(rule, visits.size())));
    }
    if (day.terms().balance().isPresent()) {
      BalanceTerms balance = day.terms().balance().get();
      sum += seconds * balance.groomSixtieths();
      sum += Math.max(0L, shift.latestEndSeconds() - balance.endSeconds()) * balance.endSixtieths();
    }
    return sum;
  }

  private static long breaches(DayRule rule, int visits) {
    if (rule instanceof DayRule.AtMost most) {
      return most.points().values().stream().mapToLong(Integer::longValue).sum();
    }
    return Math.max(1, visits);
  }

  private static long longestLeg(WeekDay day, List<Visit> visits, Prices prices) {
    Set<Integer> places = new HashSet<>();
    places.add(day.shift().startPlace());
    places.add(day.shift().endPlace());
    visits.forEach(visit -> places.add(visit.place()));
    day.terms()
        .water()
        .ifPresent(water -> water.places().stream().map(WaterPlace::place).forEach(places::add));
    long longest = 0;
    for (int a : places) {
      for (int b : places) {
        if (day.travel().reaches(a, b)) {
          longest = Math.max(longest, day.travel().lengthMetres(a, b));
        }
      }
    }
    return Math.floorDiv(longest * 60L * prices.kilometreSeconds() + 500, 1000);
  }
}
