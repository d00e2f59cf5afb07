package dev.dogleg.cli.command;

import dev.dogleg.cli.command.PlanFile.Group;
import dev.dogleg.cli.export.ReTimedText;
import dev.dogleg.cli.export.Wrap;
import dev.dogleg.cli.prepare.Calendar;
import dev.dogleg.cli.prepare.FollowedWeek;
import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.PlanFollower;
import dev.dogleg.cli.prepare.Preparation;
import dev.dogleg.cli.prepare.PreparedDay;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.fault.Faults;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.Errand;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Checks a plan file against the book, also one edited by hand: the times as written are judged,
 * and where they do not hold the order is timed anew. Never refuses what it can follow.
 */
final class PlanCheck {
  private static final int COLUMNS = 80;

  private final BookInput input;
  private final Calendar calendar;
  private final Faults faults;
  private final List<String> lines = new ArrayList<>();
  private int breaches;

  PlanCheck(BookInput input, Calendar calendar, Faults faults) {
    this.input = input;
    this.calendar = calendar;
    this.faults = faults;
  }

  /** Follows every day of a plan. */
  void follow(List<Group> groups, Preparation preparation, MapInUse map, LookUps lookUps) {
    if (groups.isEmpty()) {
      return;
    }
    PlanDays days = PlanDays.of(groups, input, preparation, map, lookUps, faults);
    Set<String> seen = new HashSet<>();
    for (Group group : groups) {
      follow(group, days, preparation, seen);
    }
    missing(groups, seen);
  }

  private void follow(Group group, PlanDays days, Preparation preparation, Set<String> seen) {
    String title = group.date() + ", " + group.groomer().name();
    Optional<VanDay> vanDay = days.day(group);
    if (vanDay.isEmpty()) {
      breach(title + ": this day is not worked. [day-off]");
      return;
    }
    Set<String> ids = PlanFile.ids(group);
    List<Booking> bookings =
        input.book().bookings().stream()
            .filter(b -> ids.contains(b.id()) && preparation.placed(b.clientId()))
            .toList();
    otherDay(days.days(), vanDay.get().number(), bookings, seen, title);
    PreparedDay day = days.week().day(vanDay.get().number());
    days.week().forbidden(vanDay.get().number()).forEach(text -> breach(title + ": " + text));
    PlanFollower.Followed followed = new PlanFollower(day).follow(days.rows(group, day));
    tell(title, day, followed);
  }

  private void otherDay(
      List<VanDay> days, int number, List<Booking> bookings, Set<String> seen, String title) {
    for (Booking booking : bookings) {
      if (!seen.add(booking.id())) {
        breach(title + ": booking " + booking.id() + " stands in two days. [booking-twice]");
      }
      if (!FollowedWeek.mayBeOn(input.book(), days, booking, number)) {
        breach(
            title
                + ": booking "
                + booking.id()
                + " is for "
                + calendar.span(booking)
                + " and its own times, not for this day. [other-day]");
      }
      if (!booking.status().open()) {
        breach(
            title
                + ": booking "
                + booking.id()
                + " is "
                + booking.status().name().toLowerCase(java.util.Locale.ROOT)
                + ". [not-open]");
      }
    }
  }

  private void tell(String title, PreparedDay day, PlanFollower.Followed followed) {
    if (followed.timesReadable() && followed.written().isEmpty()) {
      lines.add(title + ": every limit is kept, to the second.");
      return;
    }
    if (followed.timesReadable()) {
      lines.add(title + ": the times as written do not hold:");
      findings(day, followed.written());
    } else {
      lines.add(title + ": not every time can be read.");
    }
    lines.add("The same order timed anew:");
    lines.addAll(ReTimedText.of(followed.retimed().stops(), day.stops(), day.request().shift()));
    if (followed.retimed().breaches().isEmpty()) {
      lines.add("  In this order every limit can be kept.");
    } else {
      lines.add("In this order:");
      findings(day, followed.retimed().breaches());
    }
  }

  private void findings(PreparedDay day, List<Finding> findings) {
    for (Finding finding : findings) {
      String who =
          day.stops().containsKey(finding.visitId())
              ? day.stops().get(finding.visitId()).client() + ": "
              : "";
      breach(who + finding.text() + " [" + finding.code() + "]");
    }
  }

  private void missing(List<Group> groups, Set<String> seen) {
    for (LocalDate date : groups.stream().map(Group::date).distinct().toList()) {
      for (Booking booking : input.book().bookings()) {
        boolean fixed =
            booking.status() == BookingStatus.BOOKED
                && calendar.span(booking).single()
                && calendar.possible(booking, date);
        if (fixed && !seen.contains(booking.id())) {
          boolean named =
              groups.stream()
                  .anyMatch(
                      g -> g.rows().stream().anyMatch(r -> PlanFile.ids(r).contains(booking.id())));
          if (!named) {
            breach(date + ": booking " + booking.id() + " is in no row. [left-out]");
          }
        }
      }
      for (Errand errand : input.book().week().errands()) {
        boolean today = errand.dates().single() && errand.dates().holds(date);
        boolean named =
            groups.stream()
                .anyMatch(
                    g -> g.rows().stream().anyMatch(r -> PlanFile.ids(r).contains(errand.id())));
        if (today && !named) {
          breach(date + ": errand " + errand.name() + " is in no row. [left-out]");
        }
      }
    }
  }

  private void breach(String text) {
    breaches++;
    List<String> wrapped = Wrap.lines(text, COLUMNS - 6);
    lines.add("  - " + wrapped.get(0));
    wrapped.stream().skip(1).forEach(line -> lines.add("    " + line));
  }

  /** {@return what to print} */
  List<String> lines() {
    return List.copyOf(lines);
  }

  /** {@return how many breaches were told} */
  int breaches() {
    return breaches;
  }
}
