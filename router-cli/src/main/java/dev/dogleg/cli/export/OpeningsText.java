package dev.dogleg.cli.export;

import dev.dogleg.cli.export.OpeningsSheet.Cell;
import dev.dogleg.cli.export.OpeningsSheet.Kind;
import dev.dogleg.cli.export.OpeningsSheet.NotPlanned;
import dev.dogleg.cli.export.OpeningsSheet.Row;
import dev.dogleg.cli.export.OpeningsSheet.Zone;
import dev.dogleg.time.TimeWindow;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The table of times that may be told, to be printed and read at a glance on 80 columns. */
public final class OpeningsText {
  private static final int COLUMNS = 80;
  private static final int LABEL = 14;
  private static final int CELL = 13;
  private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEE", Locale.ENGLISH);
  private static final DateTimeFormatter MONTH = DateTimeFormatter.ofPattern("MMM", Locale.ENGLISH);
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter MADE =
      DateTimeFormatter.ofPattern("EEE d MMM yyyy, HH:mm", Locale.ENGLISH);

  private final OpeningsSheet sheet;
  private final List<String> lines = new ArrayList<>();

  private OpeningsText(OpeningsSheet sheet) {
    this.sheet = sheet;
  }

  /**
   * The table.
   *
   * @param sheet the table and what is needed to show it
   * @return lines of at most 80 columns
   */
  public static List<String> lines(OpeningsSheet sheet) {
    return new OpeningsText(sheet).write();
  }

  private List<String> write() {
    say("Times you may tell a new client, made " + MADE.format(sheet.made()) + ".");
    say(howToRead());
    say("Each line is good for ONE client. Said yes? Into the book with it, and run this again.");
    lines.add("");
    header();
    for (Zone zone : sheet.zones()) {
      lines.add("");
      zone(zone);
    }
    legend();
    notPlanned();
    return lines;
  }

  /** The first stretch that leaves a choice serves as example. */
  private String howToRead() {
    String span = Amounts.spoken(sheet.terms().spanSeconds());
    String text = "Tell a span of " + span + " that lies inside the times shown";
    for (Zone zone : sheet.zones()) {
      for (Row row : zone.rows()) {
        for (Cell cell : row.cells()) {
          for (TimeWindow shown : cell.shown(sheet.terms())) {
            if (shown.toSeconds() - shown.fromSeconds() > sheet.terms().spanSeconds()) {
              int last = shown.toSeconds() - sheet.terms().spanSeconds();
              return text
                  + ": "
                  + span(row, shown)
                  + " is any from "
                  + span(row, shown.fromSeconds())
                  + " to "
                  + span(row, last)
                  + ", on the "
                  + quarter()
                  + ".";
            }
          }
        }
      }
    }
    return text + ", begun on the " + quarter() + ".";
  }

  private String quarter() {
    return sheet.terms().stepSeconds() == 900
        ? "quarter hour"
        : Amounts.roughMinutes(sheet.terms().stepSeconds()) + " minutes";
  }

  private void header() {
    StringBuilder names = new StringBuilder(" ".repeat(LABEL));
    StringBuilder minutes = new StringBuilder(padded("at the door", LABEL));
    for (Kind kind : sheet.kinds()) {
      names.append(padded(kind.word(), CELL));
      minutes.append(padded(Amounts.spoken(kind.plannedSeconds()), CELL));
    }
    lines.add(names.toString().stripTrailing());
    lines.add(minutes.toString().stripTrailing());
  }

  private void zone(Zone zone) {
    say(zone.name() + " (" + zone.doors() + (zone.doors() == 1 ? " door)" : " doors)"));
    boolean several =
        sheet.zones().stream()
                .flatMap(one -> one.rows().stream())
                .map(Row::groomer)
                .distinct()
                .count()
            > 1;
    for (Row row : zone.rows()) {
      row(row, several);
    }
  }

  private void row(Row row, boolean several) {
    List<List<String>> cells = row.cells().stream().map(cell -> cell(row, cell)).toList();
    int height = Math.max(several ? 2 : 1, cells.stream().mapToInt(List::size).max().orElse(1));
    for (int line = 0; line < height; line++) {
      String label =
          switch (line) {
            case 0 -> " " + day(row.day().date()) + (row.dearerSeconds() > 0 ? " ~" : "");
            case 1 -> several ? "  " + row.groomer() : "";
            default -> "";
          };
      StringBuilder text = new StringBuilder(padded(label, LABEL));
      for (List<String> cell : cells) {
        text.append(padded(line < cell.size() ? cell.get(line) : "", CELL));
      }
      lines.add(text.toString().stripTrailing());
    }
  }

  private List<String> cell(Row row, Cell cell) {
    if (!cell.allowed()) {
      return List.of("-");
    }
    if (cell.spans().isEmpty()) {
      return List.of(cell.proven() ? "full" : "full?");
    }
    return cell.shown(sheet.terms()).stream().map(shown -> span(row, shown)).toList();
  }

  private void legend() {
    lines.add("");
    List<Cell> all =
        sheet.zones().stream()
            .flatMap(zone -> zone.rows().stream())
            .flatMap(row -> row.cells().stream())
            .toList();
    if (all.stream().anyMatch(cell -> cell.allowed() && cell.spans().isEmpty())) {
      say("full: no time holds at every door; for one address ask dogleg fit, it may know one.");
    }
    if (all.stream().anyMatch(cell -> !cell.proven())) {
      say("full?: nothing found within the limit, not proven.");
    }
    if (all.stream().anyMatch(cell -> !cell.allowed())) {
      say("-: your zones, rules or roads do not allow this day at every door there.");
    }
    int dearer = all.stream().mapToInt(Cell::dearerSeconds).max().orElse(0);
    if (dearer > 0) {
      say(
          "~: your zones or rules would rather have another day (worth up to "
              + Amounts.roughMinutes(dearer)
              + " min of driving).");
    }
    say(
        "A time holds at every known door of its zone and at an address whose drives are up to "
            + Amounts.roughMinutes(sheet.terms().marginSeconds())
            + " min longer; farther out: dogleg fit. Everybody planned keeps the day, told times can"
            + " be kept, this one in "
            + sheet.terms().keptPercent()
            + " of 100; "
            + (sheet.terms().overtime() ? "overtime as your card allows." : "no more overtime."));
    for (Kind kind : sheet.kinds()) {
      say("  " + kind.word() + ": " + kind.standsFor());
    }
    say(
        "One dog, first visit, full service; minutes enough for "
            + sheet.terms().enoughPercent()
            + " of 100 such dogs. Cats, several dogs, matted coats: dogleg fit.");
  }

  private void notPlanned() {
    for (NotPlanned day : sheet.notPlanned()) {
      say(
          "NOT PLANNED, tell nothing: "
              + day(day.date()).strip()
              + " ("
              + names(day.waiting())
              + " in the book).");
    }
    if (!sheet.notCounted().isEmpty()) {
      say(
          "NOT COUNTED, in the book and not in the plan: "
              + names(sheet.notCounted())
              + ". Plan first to be sure.");
    }
  }

  private static String names(List<String> names) {
    return names.size() <= 3
        ? String.join(", ", names)
        : String.join(", ", names.subList(0, 2)) + " and " + (names.size() - 2) + " more";
  }

  private static String day(LocalDate date) {
    return "%s %2d %s".formatted(DAY.format(date), date.getDayOfMonth(), MONTH.format(date));
  }

  private String span(Row row, int fromSeconds) {
    return span(row, new TimeWindow(fromSeconds, fromSeconds + sheet.terms().spanSeconds()));
  }

  private static String span(Row row, TimeWindow span) {
    return CLOCK.format(row.day().wallAt(span.fromSeconds()))
        + "-"
        + CLOCK.format(row.day().wallAt(span.toSeconds()));
  }

  private static String padded(String text, int width) {
    int[] points = text.codePoints().limit(width - 1L).toArray();
    return new String(points, 0, points.length) + " ".repeat(width - points.length);
  }

  private void say(String text) {
    String indent = text.startsWith("  ") ? "  " : "";
    List<String> wrapped = Wrap.lines(text.strip(), COLUMNS - indent.length() - 2);
    lines.add(indent + wrapped.get(0));
    wrapped.stream().skip(1).forEach(line -> lines.add(indent + "  " + line));
  }
}
