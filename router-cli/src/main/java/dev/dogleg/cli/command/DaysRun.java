package dev.dogleg.cli.command;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.cli.export.LeftOut;
import dev.dogleg.cli.export.PlannedDay;
import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.cli.prepare.Calendar;
import dev.dogleg.cli.prepare.Preparation;
import dev.dogleg.cli.prepare.PreparedDay;
import dev.dogleg.fault.Faults;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Business;
import dev.dogleg.model.Groomer;
import dev.dogleg.plan.DayPlanner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Plans a day of one groomer. A booking that may wait is served where there is room; days and
 * groomers that are to be chosen among are the matter of {@link WeekRun}.
 */
final class DaysRun {
  private final Preparation preparation;
  private final Calendar calendar;
  private final Business business;
  private final long seed;
  private final long effort;
  private final Faults faults;

  private final Set<String> placed = new HashSet<>();
  private final List<PlannedDay> days = new ArrayList<>();
  private final List<Finding> findings = new ArrayList<>();

  DaysRun(
      Preparation preparation,
      Calendar calendar,
      Business business,
      long seed,
      long effort,
      Faults faults) {
    this.preparation = preparation;
    this.calendar = calendar;
    this.business = business;
    this.seed = seed;
    this.effort = effort;
    this.faults = faults;
  }

  /** Plans the days in their order. */
  void plan(List<LocalDate> dates, List<Booking> bookings) {
    for (int d = 0; d < dates.size(); d++) {
      LocalDate date = dates.get(d);
      List<LocalDate> later = dates.subList(d + 1, dates.size());
      List<Booking> open =
          new ArrayList<>(
              bookings.stream()
                  .filter(booking -> !placed.contains(booking.id()))
                  .filter(booking -> calendar.possible(booking, date))
                  .toList());
      List<Groomer> groomers = business.workingOn(date);
      for (int g = 0; g < groomers.size() && !open.isEmpty(); g++) {
        boolean last = g == groomers.size() - 1;
        PreparedDay day = preparation.day(groomers.get(g), date, open, seed, effort, faults);
        DayPlan plan = DayPlanner.plan(day.request());
        findings.addAll(DayAudit.check(day.request(), plan));
        served(plan, day).forEach(booking -> placed.add(booking.id()));
        open.removeIf(booking -> placed.contains(booking.id()));
        days.add(shown(day, plan, last ? leftOut(day, plan, date, later) : List.of()));
      }
    }
  }

  private static List<Booking> served(DayPlan plan, PreparedDay day) {
    return plan.stops().stream()
        .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
        .flatMap(stop -> day.bookings().get(stop.visitId()).stream())
        .toList();
  }

  private List<LeftOut> leftOut(
      PreparedDay day, DayPlan plan, LocalDate date, List<LocalDate> later) {
    List<LeftOut> left = new ArrayList<>();
    for (NoRoom noRoom : plan.noRoom()) {
      List<Booking> bookings = day.bookings().get(noRoom.visitId());
      boolean again =
          later.stream()
              .anyMatch(
                  next -> bookings.stream().anyMatch(booking -> calendar.possible(booking, next)));
      if (!again) {
        StopLabel label = day.stops().get(noRoom.visitId());
        Optional<LocalDate> until =
            bookings.stream()
                .flatMap(booking -> calendar.laterThan(booking, date).stream())
                .min(LocalDate::compareTo);
        left.add(new LeftOut(noRoom, label, until));
      }
    }
    return left;
  }

  private PlannedDay shown(PreparedDay day, DayPlan plan, List<LeftOut> leftOut) {
    return new PlannedDay(
        plan, day.groomer().name(), day.van(), day.places(), day.stops(), leftOut, seed);
  }

  /** {@return the planned days, in order} */
  List<PlannedDay> days() {
    return List.copyOf(days);
  }

  /** {@return what the audit found in them; anything at all is the program's own fault} */
  List<Finding> findings() {
    return List.copyOf(findings);
  }

  /** {@return whether an agreed visit is left out} */
  boolean bookedLeftOut() {
    return days.stream()
        .flatMap(day -> day.leftOut().stream())
        .anyMatch(left -> left.label().booked());
  }

  /** {@return bookings that the run placed, by id} */
  Set<String> placed() {
    return Set.copyOf(placed);
  }
}
