package dev.dogleg.cli.command;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.cli.export.LeftOut;
import dev.dogleg.cli.export.PlannedDay;
import dev.dogleg.cli.prepare.Calendar;
import dev.dogleg.cli.prepare.Preparation;
import dev.dogleg.cli.prepare.PreparedDay;
import dev.dogleg.fault.Faults;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Groomer;
import dev.dogleg.plan.DayPlanner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plans one day of one groomer. A booking that may wait is served where there is room; days and
 * groomers that are to be chosen among are the matter of {@link WeekRun}.
 *
 * @param day the day as it is shown
 * @param findings what the audit found in it; anything at all is the program's own fault
 */
record DayRun(PlannedDay day, List<Finding> findings) {
  DayRun {
    findings = List.copyOf(findings);
  }

  /**
   * Plans.
   *
   * @param preparation where the doors are
   * @param calendar which booking belongs to which day
   * @param groomer who works that day
   * @param date the day
   * @param bookings bookings possible on it, at least one
   * @param order seed and effort
   * @param faults takes bookings that contradict each other
   * @return the planned day
   */
  static DayRun plan(
      Preparation preparation,
      Calendar calendar,
      Groomer groomer,
      LocalDate date,
      List<Booking> bookings,
      PlanRun.Order order,
      Faults faults) {
    PreparedDay day =
        preparation.day(groomer, date, bookings, order.seed(), order.dayEffort(), faults);
    DayPlan plan = DayPlanner.plan(day.request());
    PlannedDay shown =
        new PlannedDay(
            plan,
            day.groomer().name(),
            day.van(),
            day.places(),
            day.stops(),
            leftOut(day, plan, date, calendar),
            order.seed());
    return new DayRun(shown, DayAudit.check(day.request(), plan));
  }

  private static List<LeftOut> leftOut(
      PreparedDay day, DayPlan plan, LocalDate date, Calendar calendar) {
    List<LeftOut> left = new ArrayList<>();
    for (NoRoom noRoom : plan.noRoom()) {
      Optional<LocalDate> until =
          day.bookings().get(noRoom.visitId()).stream()
              .flatMap(booking -> calendar.laterThan(booking, date).stream())
              .min(LocalDate::compareTo);
      left.add(new LeftOut(noRoom, day.stops().get(noRoom.visitId()), until));
    }
    return left;
  }

  /** {@return whether an agreed visit is left out} */
  boolean bookedLeftOut() {
    return day.leftOut().stream().anyMatch(left -> left.label().booked());
  }
}
