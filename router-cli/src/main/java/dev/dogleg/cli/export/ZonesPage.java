package dev.dogleg.cli.export;

import dev.dogleg.cli.export.ZonesSheet.About;
import dev.dogleg.cli.export.ZonesSheet.Cell;
import dev.dogleg.cli.export.ZonesSheet.Line;
import dev.dogleg.cli.export.ZonesSheet.Proposal;
import java.time.DayOfWeek;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.TreeSet;

/**
 * The zones as one page: a map, what its signs mean, a table, the days proposed. No client is
 * named.
 *
 * <p>Everything that comes from the book is escaped; the page forbids itself scripts and any
 * request.
 */
public final class ZonesPage {
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);

  private final ZonesSheet sheet;
  private final StringBuilder page = new StringBuilder();

  private ZonesPage(ZonesSheet sheet) {
    this.sheet = sheet;
  }

  /**
   * The page.
   *
   * @param sheet what there is to say
   * @param map the picture
   * @param attribution whose map it is
   * @return HTML
   */
  public static String of(ZonesSheet sheet, ZonesMap map, String attribution) {
    return new ZonesPage(sheet).write(map, attribution);
  }

  private String write(ZonesMap map, String attribution) {
    page.append(
        """
        <!DOCTYPE html>
        <html lang="en">
        <meta charset="utf-8">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
        <meta name="viewport" content="width=device-width">
        <title>Zones</title>
        <style>
        body { font: 15px/1.4 sans-serif; color: #222; margin: 1em auto; max-width: 62em; padding: 0 1em }
        table { border-collapse: collapse }
        th, td { padding: .2em .6em; text-align: right; border-bottom: 1px solid #ddd }
        th:first-child, td:first-child { text-align: left }
        .day { color: #fff; border-radius: 1em; padding: 0 .5em; margin-right: .6em; white-space: nowrap }
        .wrong { color: #c00; font-weight: bold }
        </style>
        <h1>Zones</h1>
        <p>Look at this while parked, never while driving.</p>
        """);
    page.append(map.svg(attribution));
    legend();
    table();
    sheet.proposal().ifPresent(this::proposal);
    page.append("<p>").append(ZonesMap.escaped(attribution)).append("</p>\n");
    return page.append("</html>\n").toString();
  }

  private void legend() {
    page.append("<p>");
    TreeSet<DayOfWeek> days = new TreeSet<>();
    sheet.days().forEach(day -> days.add(day.date().getDayOfWeek()));
    for (DayOfWeek day : days) {
      page.append("<span class=\"day\" style=\"background:")
          .append(ZonesMap.colour(day))
          .append("\">")
          .append(ZonesMap.letters(day))
          .append("</span>");
    }
    page.append(
        "doors and drives by planned day; <span class=\"wrong\">ringed in red</span>: on a day that"
            + " is none of their zones'; small and white: a client without a visit in this plan;"
            + " black square: where a day starts or ends; dashed: a zone without limits of its own,"
            + " drawn around its doors.</p>\n");
  }

  private void table() {
    page.append("<table>\n<tr><th>minutes on the road (visits)");
    for (ZonesSheet.Day day : sheet.days()) {
      page.append("<th>").append(DATE.format(day.date()));
      if (sheet.severalGroomers()) {
        page.append("<br>").append(ZonesMap.escaped(day.groomer()));
      }
    }
    page.append("<th>together\n");
    for (Line line : sheet.lines()) {
      if (line.about() == About.ZONE || !line.sum().equals(Cell.NONE)) {
        page.append("<tr><td>").append(title(line));
        line.cells().forEach(this::cell);
        cell(line.sum());
        page.append('\n');
      }
    }
    page.append("</table>\n");
  }

  private static String title(Line line) {
    return switch (line.about()) {
      case ZONE -> ZonesMap.escaped(line.name() + " (" + line.days() + ")");
      case NO_ZONE -> "in no zone";
      case OTHER -> "errands and water";
      case HOME -> "home";
    };
  }

  private void cell(Cell cell) {
    page.append("<td>");
    if (!cell.equals(Cell.NONE)) {
      page.append(Amounts.roughMinutes(cell.driveSeconds()));
      if (cell.visits() > 0) {
        page.append(" (").append(cell.visits()).append(')');
      }
      if (cell.wrongDay() > 0) {
        page.append(" <span class=\"wrong\">").append(cell.wrongDay()).append(" wrong</span>");
      }
    }
  }

  private void proposal(Proposal proposal) {
    if (!proposal.worthwhile()) {
      page.append("<p>No better days for the zones were found.</p>\n");
      return;
    }
    page.append("<h2>Better days: ")
        .append(ZonesMap.escaped(ZonesText.gain(proposal)))
        .append(", checked by planning both</h2>\n<table>\n")
        .append("<tr><th>zone<th>now<th>proposed\n");
    List<String> zones = proposal.zones();
    for (int zone = 0; zone < zones.size(); zone++) {
      page.append("<tr><td>")
          .append(ZonesMap.escaped(zones.get(zone)))
          .append("<td>")
          .append(ZonesText.days(proposal.answer().now().days().get(zone)))
          .append("<td>")
          .append(ZonesText.days(proposal.answer().best().days().get(zone)))
          .append('\n');
    }
    page.append("</table>\n");
  }
}
