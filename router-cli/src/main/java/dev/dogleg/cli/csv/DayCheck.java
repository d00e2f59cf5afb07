package dev.dogleg.cli.csv;

import dev.dogleg.fault.Severity;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Business;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.DayEntry;
import dev.dogleg.model.DayLimits;
import dev.dogleg.model.Moves;
import dev.dogleg.model.Shifts;
import dev.dogleg.model.WallSpan;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Checks an open booking's limits against the days it may be made on: does anybody work, does
 * {@code when} speak of such a day, can its limits meet the shift.
 */
final class DayCheck {
  /** A week of any year: stands for "some week" where a booking has no date. */
  private static final DateSpan ANY_WEEK =
      new DateSpan(LocalDate.of(2024, 1, 8), LocalDate.of(2024, 1, 14));

  private final Business business;
  private final Shifts shifts;

  DayCheck(Business business, List<DayEntry> days) {
    this.business = business;
    this.shifts = new Shifts(business.groomers(), days);
  }

  void check(Booking booking, Cells cells) {
    DateSpan span = booking.dates().orElse(ANY_WEEK);
    boolean works = false;
    boolean speaks = false;
    boolean fits = false;
    for (LocalDate day = span.from(); !day.isAfter(span.to()) && !fits; day = day.plusDays(1)) {
      WorkDay workDay = new WorkDay(day, business.zone());
      List<WallSpan> shifts = shifts(day, booking.dates().isPresent());
      if (shifts.isEmpty()) {
        continue;
      }
      works = true;
      Optional<DayLimits> limits =
          booking.told().isPresent()
              ? Optional.of(
                  booking
                      .when()
                      .on(workDay)
                      .orElse(DayLimits.NONE)
                      .arriving(booking.told().get().arriveWithin().on(workDay)))
              : booking.when().on(workDay);
      if (limits.isPresent()) {
        speaks = true;
        fits = shifts.stream().anyMatch(shift -> meets(limits.get(), shift.on(workDay)));
      }
    }
    say(booking, cells, works, speaks, fits);
  }

  private List<WallSpan> shifts(LocalDate day, boolean dated) {
    return business.groomers().stream()
        .map(
            groomer ->
                dated
                    ? shifts.hours(groomer, day).orElse(null)
                    : groomer.hours().get(day.getDayOfWeek()))
        .filter(Objects::nonNull)
        .toList();
  }

  /** Whether some second of the shift and its overtime is allowed for arrival and for the van. */
  private boolean meets(DayLimits limits, TimeWindow shift) {
    int end = Math.min(TimeWindow.DAY_END, shift.toSeconds() + business.overtimeSeconds());
    for (TimeWindow arrive : limits.arriveWithin()) {
      for (TimeWindow van : limits.vanWithin()) {
        // An early van waits, so only the start of a window binds from below.
        int from = Math.max(shift.fromSeconds(), van.fromSeconds());
        int to = Math.min(Math.min(end, van.toSeconds()), limits.doneBySeconds());
        if (from <= arrive.toSeconds() && Math.max(from, arrive.fromSeconds()) < to) {
          return true;
        }
      }
    }
    return false;
  }

  private void say(Booking booking, Cells cells, boolean works, boolean speaks, boolean fits) {
    boolean told = booking.told().isPresent();
    boolean movable = booking.terms().moves() != Moves.NEVER;
    if (!works && movable) {
      return; // the week planner looks for another day
    }
    if (!works) {
      add(
          cells,
          told,
          "day-off",
          Column.DATE,
          "nobody works "
              + (booking.dates().map(DateSpan::single).orElse(true)
                  ? "then"
                  : "on" + " any of these days"),
          next(booking));
    } else if (!speaks) {
      String days = booking.dates().map(this::weekdays).orElse("a working day");
      add(
          cells,
          told,
          "when-not-on-date",
          Column.WHEN,
          "limits that speak of " + days + " were expected",
          "change the date or the weekdays");
    } else if (!fits) {
      add(
          cells,
          told,
          "outside-hours",
          told ? Column.TOLD : Column.WHEN,
          "times inside the shift were expected",
          "shift: " + hours(booking));
    } else if (told) {
      againstWhen(booking, cells);
    }
  }

  private static void add(
      Cells cells, boolean told, String code, Column column, String expected, String hint) {
    cells.add(
        told ? "told-" + code : code,
        told ? Severity.STOP : Severity.ASIDE,
        column,
        expected,
        hint);
  }

  private void againstWhen(Booking booking, Cells cells) {
    WorkDay day = new WorkDay(booking.dates().orElse(ANY_WEEK).from(), business.zone());
    TimeWindow told = booking.told().orElseThrow().arriveWithin().on(day);
    boolean agrees =
        booking
            .when()
            .on(day)
            .filter(
                limits ->
                    limits.arriveWithin().stream()
                        .anyMatch(
                            window ->
                                window.fromSeconds() <= told.toSeconds()
                                    && told.fromSeconds() <= window.toSeconds()))
            .isPresent();
    if (!agrees) {
      cells.add(
          "told-against-when",
          Severity.LOOK,
          Column.TOLD,
          "the column when says other times; the told time binds",
          "was the right time told?");
    }
  }

  private String weekdays(DateSpan span) {
    return span.single() ? span.from() + " (" + span.from().getDayOfWeek() + ")" : span.toString();
  }

  private String next(Booking booking) {
    LocalDate day = booking.dates().orElse(ANY_WEEK).to();
    for (int ahead = 1; ahead <= 60; ahead++) {
      if (shifts.anybodyOn(day.plusDays(ahead))) {
        return "next working day: " + day.plusDays(ahead);
      }
    }
    return "hours and days off stand in the card";
  }

  private String hours(Booking booking) {
    LocalDate day = booking.dates().orElse(ANY_WEEK).from();
    return business.groomers().stream()
        .map(groomer -> groomer.hours().get(day.getDayOfWeek()))
        .filter(Objects::nonNull)
        .map(WallSpan::toString)
        .findFirst()
        .orElse("see the card");
  }
}
