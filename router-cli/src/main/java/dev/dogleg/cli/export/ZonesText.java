package dev.dogleg.cli.export;

import dev.dogleg.cli.export.ZonesSheet.About;
import dev.dogleg.cli.export.ZonesSheet.Cell;
import dev.dogleg.cli.export.ZonesSheet.Day;
import dev.dogleg.cli.export.ZonesSheet.Line;
import dev.dogleg.cli.export.ZonesSheet.Proposal;
import dev.dogleg.cli.export.ZonesSheet.Shared;
import dev.dogleg.cli.export.ZonesSheet.SharedArea;
import dev.dogleg.cli.export.ZonesSheet.Who;
import dev.dogleg.cli.export.ZonesSheet.WrongDay;
import java.time.DayOfWeek;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** The zones report, read on 80 columns. */
public final class ZonesText {
  private static final int COLUMNS = 80;
  private static final int NAME = 40;
  private static final String ROW = " %-40s %7s %6s %6s %6s  %s";
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final double SQUARE_METRES_PER_KM2 = 1_000_000;

  private final ZonesSheet sheet;
  private final List<String> lines = new ArrayList<>();

  private ZonesText(ZonesSheet sheet) {
    this.sheet = sheet;
  }

  /**
   * The report.
   *
   * @param sheet what there is to say
   * @return lines of at most 80 columns
   */
  public static List<String> lines(ZonesSheet sheet) {
    return new ZonesText(sheet).write();
  }

  private List<String> write() {
    table();
    lines.add("");
    gaps();
    overlaps();
    lines.add("");
    wrongDays();
    lines.add("");
    if (sheet.proposal().isPresent()) {
      proposal(sheet.proposal().get());
    } else {
      say("", "Days for zones: nothing to choose; no zone has weekdays that could be others.");
    }
    return lines;
  }

  private void table() {
    lines.add(row("zone and day", "clients", "visits", "groom", "drive", ""));
    Cell all = Cell.NONE;
    for (Line line : sheet.lines()) {
      Cell sum = line.sum();
      all = all.plus(sum);
      if (line.about() != About.ZONE && sum.equals(Cell.NONE) && line.clients() == 0) {
        continue;
      }
      boolean living = line.about() == About.ZONE || line.about() == About.NO_ZONE;
      lines.add(row(title(line), living ? "" + line.clients() : "", sum));
      if (line.about() == About.HOME) {
        continue;
      }
      for (int d = 0; d < sheet.days().size(); d++) {
        Cell cell = line.cells().get(d);
        if (!cell.equals(Cell.NONE)) {
          lines.add(row("  " + day(d), "", cell));
        }
      }
    }
    lines.add(row("together", "", all));
    say(
        " ",
        "Groom in hours and minutes, stop minutes included; drive in minutes: a leg counts where"
            + " it leads to.");
    if (sheet.otherTimes()) {
      say(" ", "The plan on file has other times: drives are those of the best order of each day.");
    }
    if (sheet.unknown() > 0) {
      say(
          " ",
          sheet.unknown()
              + " of the plan's bookings are not in the book, or not open any more: not counted.");
    }
  }

  private static String title(Line line) {
    return switch (line.about()) {
      case ZONE -> line.name() + " (" + line.days() + ")";
      case NO_ZONE -> "in no zone";
      case OTHER -> "errands and water";
      case HOME -> "home";
    };
  }

  private static String row(String name, String clients, Cell cell) {
    return row(
        name,
        clients,
        cell.visits() == 0 ? "" : "" + cell.visits(),
        cell.groomSeconds() == 0 ? "" : clock(cell.groomSeconds()),
        cell.equals(Cell.NONE) ? "" : "" + Amounts.roughMinutes(cell.driveSeconds()),
        cell.wrongDay() == 0 ? "" : "! " + cell.wrongDay());
  }

  private static String row(
      String name, String clients, String visits, String groom, String drive, String mark) {
    String cut = name.length() <= NAME ? name : name.substring(0, NAME - 1) + ".";
    return ROW.formatted(cut, clients, visits, groom, drive, mark).stripTrailing();
  }

  private static String clock(long seconds) {
    long minutes = Amounts.roughMinutes(seconds);
    return "%d:%02d".formatted(minutes / 60, minutes % 60);
  }

  private String day(int number) {
    Day day = sheet.days().get(number);
    return DATE.format(day.date()) + (sheet.severalGroomers() ? ", " + day.groomer() : "");
  }

  private void gaps() {
    if (sheet.gaps().isEmpty()) {
      say("", "Gaps: none, every client lies in a zone.");
    } else {
      say("", "Gaps: in no zone: " + names(sheet.gaps()) + ".");
    }
    List<String> empty =
        sheet.lines().stream()
            .filter(line -> line.about() == About.ZONE && line.clients() == 0)
            .map(Line::name)
            .toList();
    if (!empty.isEmpty()) {
      say("", "Without a client: " + String.join(", ", empty) + ".");
    }
  }

  private void overlaps() {
    if (sheet.shared().isEmpty() && sheet.sharedAreas().isEmpty()) {
      say("", "Overlaps: none.");
    }
    for (Shared shared : sheet.shared()) {
      say(
          "",
          "Overlaps: in "
              + String.join(" and ", shared.zones())
              + ": "
              + names(shared.clients())
              + ".");
    }
    for (SharedArea area : sheet.sharedAreas()) {
      say(
          "",
          "Overlaps: the areas of "
              + area.one()
              + " and "
              + area.other()
              + " share "
              + squareKilometres(area.squareMetres())
              + ".");
    }
  }

  static String squareKilometres(double squareMetres) {
    double km2 = squareMetres / SQUARE_METRES_PER_KM2;
    return km2 < 0.01 ? "less than 0.01 km2" : "%.2f km2".formatted(km2);
  }

  private static String names(List<Who> clients) {
    return clients.stream().map(Who::name).collect(Collectors.joining(", "));
  }

  private void wrongDays() {
    if (sheet.wrongDays().isEmpty()) {
      say("", "Wrong zone-day: nobody.");
      return;
    }
    say("", "On a day that is none of their zones' (!):");
    for (WrongDay one : sheet.wrongDays()) {
      say(
          "  ",
          one.who().name()
              + ", "
              + day(one.day())
              + " ("
              + String.join(", ", one.zones())
              + "): "
              + cost(one));
    }
  }

  private String cost(WrongDay one) {
    String there =
        one.extraDriveSeconds().isPresent()
            ? more(one.extraDriveSeconds().getAsInt()) + " of driving there"
            : "what it costs there was not found within the limit";
    if (one.told()) {
      return there + "; its time was told, so it stays.";
    }
    if (one.zoneDay().isPresent()) {
      return there
          + ", "
          + more(one.zoneDayDriveSeconds().getAsInt())
          + " on "
          + day(one.zoneDay().getAsInt())
          + ".";
    }
    return there
        + (one.keepsDay()
            ? "; it keeps its day."
            : "; no room on its zones' days while all others stay.");
  }

  /** A day may be driven in another order without the visit: then it may cost nothing. */
  private static String more(int driveSeconds) {
    return Math.max(0, Amounts.roughMinutes(driveSeconds)) + " min";
  }

  private void proposal(Proposal proposal) {
    var answer = proposal.answer();
    if (proposal.worthwhile()) {
      say(
          "",
          "Better days for zones, "
              + gain(proposal)
              + " in "
              + weeks(proposal)
              + ", checked by planning both:");
      for (int zone = 0; zone < proposal.zones().size(); zone++) {
        String now = days(answer.now().days().get(zone));
        String then = days(answer.best().days().get(zone));
        say(
            "  ",
            proposal.zones().get(zone) + ": " + (now.equals(then) ? now : then + ", now " + now));
      }
    } else {
      say("", "Days for zones: no better ones were found.");
    }
    List<String> drives = new ArrayList<>();
    drives.add(minutes(proposal.plannedDriveSeconds()) + " as planned on file");
    drives.add(
        minutes(answer.now().driveSeconds())
            + " with the days as they are, were every visit planned on them that can be");
    if (proposal.worthwhile()) {
      drives.add(
          minutes(answer.best().driveSeconds())
              + " with those proposed ("
              + proposal.changed()
              + " of "
              + proposal.visits()
              + " visits on another day than on file)");
    }
    if (answer.free().driveSeconds() < answer.best().driveSeconds()) {
      drives.add(minutes(answer.free().driveSeconds()) + " if every zone were open every day");
    }
    say("  ", "Driving: " + String.join("; ", drives) + ".");
    leftOut(proposal);
    say(
        "  ",
        "It rests on "
            + weeks(proposal)
            + ": "
            + proposal.visits()
            + " visits, "
            + proposal.free()
            + " of which may change their day inside their week.");
    say(
        "  ",
        answer.proven()
            ? "By the planner's price (driving before all) no other choice of as many days for"
                + " each zone is better: proven, "
                + answer.weeks()
                + " weeks planned."
            : "Not proven: "
                + answer.weeks()
                + " weeks were planned, then the limit was reached (--weeks, --effort).");
  }

  private void leftOut(Proposal proposal) {
    int now = proposal.answer().now().plan().leftOutCounted();
    int best = proposal.answer().best().plan().leftOutCounted();
    if (now > 0 || best > 0) {
      say(
          "  ",
          "Without room: "
              + now
              + " with the days as they are"
              + (proposal.worthwhile() ? ", " + best + " with those proposed" : "")
              + ".");
    }
  }

  /** What the proposed days are good for. */
  static String gain(Proposal proposal) {
    return proposal.moreRoom() > 0
        ? "room for " + proposal.moreRoom() + " more"
        : Amounts.spoken(proposal.savedSeconds()) + " less driving";
  }

  private static String weeks(Proposal proposal) {
    return proposal.weeks() == 1 ? "the one planned week" : proposal.weeks() + " planned weeks";
  }

  private static String minutes(long seconds) {
    return Amounts.spoken(seconds);
  }

  /** Weekdays as a book writes them. */
  static String days(Collection<DayOfWeek> days) {
    return days.isEmpty()
        ? "no day of these weeks"
        : new TreeSet<>(days)
            .stream()
                .map(day -> day.name().substring(0, 3).toLowerCase(Locale.ROOT))
                .collect(Collectors.joining("; "));
  }

  private void say(String indent, String text) {
    boolean first = true;
    for (String line : Wrap.lines(text, COLUMNS - indent.length() - 2)) {
      lines.add(indent + (first ? "" : "  ") + line);
      first = false;
    }
  }
}
