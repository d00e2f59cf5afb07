package dev.dogleg.cli.command;

import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.export.PlanRow;
import dev.dogleg.cli.prepare.PlanFollower;
import dev.dogleg.cli.prepare.PlanFollower.FollowedRow;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.time.WorkDay;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Understands the cells of a plan's rows, also of one that went through a spreadsheet. */
final class PlanRowReader {
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{2})(?::(\\d{2}))?");
  private static final int LAST_HOUR = 47;

  private final Faults faults;

  PlanRowReader(Faults faults) {
    this.faults = faults;
  }

  /** The date of a row, or empty with a fault. */
  Optional<LocalDate> date(PlacedRow placed) {
    try {
      return Optional.of(LocalDate.parse(placed.row().date()));
    } catch (DateTimeException bad) {
      look(
          "bad-date",
          placed.where().at("date"),
          placed.row().date(),
          "a date like 2027-03-01 was expected; the row is passed over",
          "spreadsheets rewrite dates: format the column as text");
      return Optional.empty();
    }
  }

  /** A row as the follower takes it. */
  FollowedRow row(PlacedRow placed, WorkDay day) {
    PlanRow row = placed.row();
    Optional<PlannedStop.Kind> kind = PlanFollower.kind(row.kind());
    if (kind.isEmpty()) {
      look(
          "unknown-kind",
          placed.where().at("kind"),
          row.kind(),
          "leave, visit, errand, break, water or home was expected; the row is passed over",
          "");
    }
    List<String> bookings =
        Arrays.stream(row.booking().split(";"))
            .map(String::strip)
            .filter(b -> !b.isEmpty())
            .toList();
    Optional<Integer> arrive = time(placed, "arrive", row.arrive(), day);
    Optional<Integer> start = time(placed, "start", row.start(), day);
    Optional<Integer> leave = time(placed, "leave", row.leave(), day);
    boolean all = arrive.isPresent() && start.isPresent() && leave.isPresent();
    return new FollowedRow(
        kind,
        bookings,
        all ? Optional.of(new int[] {arrive.get(), start.get(), leave.get()}) : Optional.empty(),
        point(row));
  }

  private static Optional<GeoPoint> point(PlanRow row) {
    try {
      return Optional.of(
          new GeoPoint(Double.parseDouble(row.lat()), Double.parseDouble(row.lon())));
    } catch (IllegalArgumentException unreadable) {
      return Optional.empty();
    }
  }

  private Optional<Integer> time(PlacedRow placed, String column, String cell, WorkDay day) {
    Matcher clock = CLOCK.matcher(cell);
    if (clock.matches()) {
      int hours = Integer.parseInt(clock.group(1));
      int minutes = Integer.parseInt(clock.group(2));
      int seconds = clock.group(3) == null ? 0 : Integer.parseInt(clock.group(3));
      if (hours <= LAST_HOUR && minutes < 60 && seconds < 60) {
        return Optional.of(elapsed(day, hours, LocalTime.of(hours % 24, minutes, seconds)));
      }
    }
    if (!cell.isBlank()) {
      look(
          "bad-time",
          placed.where().at(column),
          cell,
          "a time like 08:15:00 was expected; the day is timed anew without it",
          "");
    }
    return Optional.empty();
  }

  /** Hours from 24 on belong to the following day, as the plan writes them. */
  private static int elapsed(WorkDay day, int hours, LocalTime time) {
    if (hours < 24) {
      return day.elapsedAt(time);
    }
    WorkDay next = new WorkDay(day.date().plusDays(1), day.zone());
    long midnight = java.time.Duration.between(day.wallAt(0), next.wallAt(0)).toSeconds();
    return Math.toIntExact(midnight + next.elapsedAt(time));
  }

  private void look(String code, Where where, String seen, String expected, String hint) {
    faults.add(new Fault(code, Severity.LOOK, where, seen, expected, hint));
  }
}
