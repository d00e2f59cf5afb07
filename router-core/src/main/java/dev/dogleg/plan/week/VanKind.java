package dev.dogleg.plan.week;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.plan.PromiseDays;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Van-days that are alike: the same hours, places, travel times, terms, and the same choices. They
 * are priced once.
 *
 * <p>The bookings that may be served there have <i>local</i> numbers 0..m-1 in id order, which are
 * the numbers of the day model's visits too.
 */
final class VanKind {
  private final int number;
  private final WeekDay day;
  private final List<Integer> vanDays;
  private final int[] booking;
  private final int[] local;
  private final List<Visit> visits;
  private final long[] extra;
  private final WeekModel week;
  private DayModel dayModel;
  private RelaxedDay relaxed;
  private PromiseDays promises;

  /** What makes two van-days alike. */
  record Likeness(
      int startPlace,
      int endPlace,
      TimeWindow hours,
      int overtimeSeconds,
      Optional<BreakRule> breakRule,
      TravelTimes travel,
      DayTerms terms,
      List<Integer> bookings,
      List<Visit> visits,
      List<Long> extras) {}

  static Likeness likeness(WeekDay day, int number, List<WeekBooking> bookings) {
    List<Integer> which = new ArrayList<>();
    List<Visit> visits = new ArrayList<>();
    List<Long> extras = new ArrayList<>();
    for (int b = 0; b < bookings.size(); b++) {
      for (DayChoice choice : bookings.get(b).choices()) {
        if (choice.day() == number) {
          which.add(b);
          // What leaving it out is worth is the week's matter.
          visits.add(choice.visit().mustServe());
          extras.add(choice.extraSixtieths());
        }
      }
    }
    return new Likeness(
        day.shift().startPlace(),
        day.shift().endPlace(),
        day.shift().hours(),
        day.shift().overtimeSeconds(),
        day.shift().breakRule(),
        day.travel(),
        day.terms(),
        which,
        visits,
        extras);
  }

  VanKind(int number, WeekDay day, List<Integer> vanDays, Likeness likeness, WeekModel week) {
    this.number = number;
    this.day = day;
    this.vanDays = List.copyOf(vanDays);
    this.visits = likeness.visits();
    this.extra = likeness.extras().stream().mapToLong(Long::longValue).toArray();
    this.booking = likeness.bookings().stream().mapToInt(Integer::intValue).toArray();
    this.local = new int[week.size()];
    Arrays.fill(local, -1);
    for (int k = 0; k < booking.length; k++) {
      local[booking[k]] = k;
    }
    this.week = week;
  }

  /** {@return its number among the kinds} */
  int number() {
    return number;
  }

  /** {@return the van-days of this kind, rising} */
  List<Integer> vanDays() {
    return vanDays;
  }

  /** {@return shift, travel times and terms, of the first of them} */
  WeekDay day() {
    return day;
  }

  /** {@return the week that it belongs to} */
  WeekModel week() {
    return week;
  }

  /** {@return how many bookings may be served there} */
  int size() {
    return booking.length;
  }

  /** {@return week number of a local booking} */
  int booking(int localNumber) {
    return booking[localNumber];
  }

  /** {@return local number of a booking, or -1} */
  int local(int bookingNumber) {
    return local[bookingNumber];
  }

  Visit visit(int localNumber) {
    return visits.get(localNumber);
  }

  long extraSixtieths(int localNumber) {
    return extra[localNumber];
  }

  /** {@return sum of the extra prices of some local bookings} */
  long extraSixtieths(int[] locals) {
    return Arrays.stream(locals).mapToLong(local -> extra[local]).sum();
  }

  /** {@return the day with all visits that may be asked for, numbered by local numbers} */
  DayModel model() {
    if (dayModel == null) {
      dayModel = DayModel.of(week.request(day, visits, 1));
    }
    return dayModel;
  }

  /** {@return whether promises have a price there} */
  boolean pricesPromises() {
    return day.terms().pricesPromises();
  }

  /** {@return best days where promises have a price; made when first asked for} */
  PromiseDays promises() {
    if (promises == null) {
      promises = new PromiseDays(week.request(day, visits, 1), model());
    }
    return promises;
  }

  /** {@return the relaxed day; made when first asked for} */
  RelaxedDay relaxed() {
    if (relaxed == null) {
      relaxed = new RelaxedDay(this, week.request().prices());
    }
    return relaxed;
  }

  /** {@return the day that is asked to serve some bookings, given by local numbers} */
  DayRequest request(int[] locals, long effort) {
    List<Visit> asked = new ArrayList<>();
    for (int k : locals) {
      asked.add(visits.get(k));
    }
    return week.request(day, asked, effort);
  }
}
