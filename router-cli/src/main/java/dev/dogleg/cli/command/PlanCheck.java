package dev.dogleg.cli.command;

import dev.dogleg.cli.export.PlanReader;
import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.export.ReTimedText;
import dev.dogleg.cli.export.Wrap;
import dev.dogleg.cli.file.TextFile;
import dev.dogleg.cli.prepare.Calendar;
import dev.dogleg.cli.prepare.FollowedWeek;
import dev.dogleg.cli.prepare.FollowedWeek.FollowedStop;
import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.PlanFollower;
import dev.dogleg.cli.prepare.PlanFollower.FollowedRow;
import dev.dogleg.cli.prepare.Preparation;
import dev.dogleg.cli.prepare.PreparedDay;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.VanDays;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.Errand;
import dev.dogleg.model.Groomer;
import dev.dogleg.time.WorkDay;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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

  /** Rows of a plan by day and groomer. */
  record Group(LocalDate date, Groomer groomer, List<PlacedRow> rows) {}

  /** Reads a plan; empty where a fault stops. */
  List<Group> read(Path file) {
    Optional<TextFile> text = TextFile.read(file, file.toString(), faults);
    if (text.isEmpty()) {
      return List.of();
    }
    PlanRowReader cells = new PlanRowReader(faults);
    Map<String, Group> groups = new LinkedHashMap<>();
    for (PlacedRow row : PlanReader.read(text.get().text(), file.toString(), faults)) {
      Optional<LocalDate> date = cells.date(row);
      Optional<Groomer> groomer = groomer(row);
      if (date.isPresent() && groomer.isPresent()) {
        groups
            .computeIfAbsent(
                date.get() + " " + groomer.get().id(),
                key -> new Group(date.get(), groomer.get(), new ArrayList<>()))
            .rows()
            .add(row);
      }
    }
    return List.copyOf(groups.values());
  }

  private Optional<Groomer> groomer(PlacedRow row) {
    Optional<Groomer> known =
        input.book().business().groomers().stream()
            .filter(groomer -> groomer.id().equals(row.row().groomer()))
            .findFirst();
    if (known.isEmpty()) {
      look(row, "groomer", row.row().groomer(), "no groomer of the card; the row is passed over");
    }
    return known;
  }

  private void look(PlacedRow row, String column, String seen, String expected) {
    faults.add(
        new Fault("unknown-" + column, Severity.LOOK, row.where().at(column), seen, expected, ""));
  }

  /** Bookings that the rows name, in the book's order. */
  List<Booking> named(List<Group> groups) {
    Set<String> ids = new HashSet<>();
    groups.forEach(group -> group.rows().forEach(row -> ids.addAll(ids(row))));
    return input.book().bookings().stream().filter(b -> ids.contains(b.id())).toList();
  }

  private static List<String> ids(PlacedRow row) {
    return List.of(row.row().booking().split("\\s*;\\s*"));
  }

  /** Follows every day of a plan. */
  void follow(List<Group> groups, Preparation preparation, MapInUse map, LookUps lookUps) {
    if (groups.isEmpty()) {
      return;
    }
    List<LocalDate> dates = groups.stream().map(Group::date).distinct().sorted().toList();
    List<VanDay> days = VanDays.of(input.book().business(), input.book().week().days(), dates);
    List<FollowedStop> rows = new ArrayList<>();
    for (Group group : groups) {
      day(group, days)
          .ifPresent(
              day ->
                  group.rows().stream()
                      .filter(row -> isStop(row))
                      .forEach(
                          row ->
                              rows.add(new FollowedStop(day.number(), placed(row, preparation)))));
    }
    FollowedWeek week =
        FollowedWeek.of(input.book(), days, rows, input.tables(), map, lookUps, input.rows());
    Set<String> seen = new HashSet<>();
    for (Group group : groups) {
      follow(group, days, week, preparation, seen);
    }
    missing(groups, seen);
  }

  private static boolean isStop(PlacedRow row) {
    return PlanFollower.kind(row.row().kind())
        .filter(kind -> kind == PlannedStop.Kind.VISIT)
        .isPresent();
  }

  /** Ids of a row whose doors were found. */
  private List<String> placed(PlacedRow row, Preparation preparation) {
    return ids(row).stream()
        .filter(
            id ->
                input.book().bookings().stream()
                    .filter(booking -> booking.id().equals(id))
                    .allMatch(booking -> preparation.placed(booking.clientId())))
        .toList();
  }

  private static Optional<VanDay> day(Group group, List<VanDay> days) {
    return days.stream()
        .filter(
            day ->
                day.day().date().equals(group.date())
                    && day.groomer().id().equals(group.groomer().id()))
        .findFirst();
  }

  private void follow(
      Group group,
      List<VanDay> days,
      FollowedWeek week,
      Preparation preparation,
      Set<String> seen) {
    String title = group.date() + ", " + group.groomer().name();
    Optional<VanDay> vanDay = day(group, days);
    if (vanDay.isEmpty()) {
      breach(title + ": this day is not worked. [day-off]");
      return;
    }
    Set<String> ids = new HashSet<>();
    group.rows().forEach(row -> ids.addAll(ids(row)));
    List<Booking> bookings =
        input.book().bookings().stream()
            .filter(b -> ids.contains(b.id()) && preparation.placed(b.clientId()))
            .toList();
    otherDay(days, vanDay.get().number(), bookings, seen, title);
    PreparedDay day = week.day(vanDay.get().number());
    week.forbidden(vanDay.get().number()).forEach(text -> breach(title + ": " + text));
    PlanRowReader cells = new PlanRowReader(faults);
    WorkDay workDay = day.request().shift().day();
    List<FollowedRow> rows =
        group.rows().stream()
            .map(row -> cells.row(row, workDay))
            .filter(row -> row.kind().isPresent())
            .toList();
    PlanFollower.Followed followed = new PlanFollower(day).follow(rows);
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
                  .anyMatch(g -> g.rows().stream().anyMatch(r -> ids(r).contains(booking.id())));
          if (!named) {
            breach(date + ": booking " + booking.id() + " is in no row. [left-out]");
          }
        }
      }
      for (Errand errand : input.book().week().errands()) {
        boolean today = errand.dates().single() && errand.dates().holds(date);
        boolean named =
            groups.stream()
                .anyMatch(g -> g.rows().stream().anyMatch(r -> ids(r).contains(errand.id())));
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
