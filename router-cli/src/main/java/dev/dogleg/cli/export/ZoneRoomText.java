package dev.dogleg.cli.export;

import dev.dogleg.cli.export.ZoneRoomSheet.Day;
import dev.dogleg.time.TimeWindow;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Room in a zone, read at a glance on 80 columns. */
public final class ZoneRoomText {
  private static final int COLUMNS = 80;
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final DateTimeFormatter CLOCK =
      DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);

  private ZoneRoomText() {}

  /**
   * The answer.
   *
   * @param sheet what there is to say
   * @return lines of at most 80 columns
   */
  public static List<String> lines(ZoneRoomSheet sheet) {
    List<String> lines = new ArrayList<>();
    say(lines, "", verdict(sheet));
    say(
        lines,
        "  ",
        "One more, "
            + Amounts.roughMinutes(sheet.plannedSeconds())
            + " min at the door, asked at each of the "
            + sheet.doors()
            + " doors of clients in "
            + sheet.zone()
            + " alone; all other days stay as they are.");
    boolean several = sheet.days().stream().map(Day::groomer).distinct().count() > 1;
    for (Day day : sheet.days()) {
      lines.add("");
      say(
          lines,
          "",
          DATE.format(day.day().date())
              + (several ? ", " + day.groomer() : "")
              + ": room at "
              + day.fitting()
              + " of "
              + sheet.doors()
              + (day.fitting() == 0 ? "." : ", " + driving(day)));
      if (day.fitting() > 0) {
        say(lines, "  ", spans(sheet, day));
      }
    }
    if (sheet.days().isEmpty()) {
      say(lines, "", "No planned day is one on which somebody there may be visited.");
    }
    return lines;
  }

  private static String verdict(ZoneRoomSheet sheet) {
    String where = " in " + sheet.zone() + ": at ";
    String share = sheet.fitting() + " of " + sheet.doors() + " doors";
    if (sheet.fitting() == 0) {
      return (sheet.proven() ? "NO ROOM while all others keep their day, proven," : "NOT FOUND")
          + where
          + "none of "
          + sheet.doors()
          + " doors.";
    }
    return (sheet.fitting() == sheet.doors() ? "YES," : "AT SOME DOORS,")
        + where
        + share
        + " some day has room.";
  }

  private static String driving(Day day) {
    long least = Math.max(0, Amounts.roughMinutes(day.leastDriveSeconds()));
    long most = Math.max(0, Amounts.roughMinutes(day.mostDriveSeconds()));
    return (least == most ? "" + least : least + " to " + most) + " min more driving.";
  }

  private static String spans(ZoneRoomSheet sheet, Day day) {
    String width = sheet.spanSeconds() == 3_600 ? "hour" : Amounts.spoken(sheet.spanSeconds());
    if (day.spans().isEmpty()) {
      return "No "
          + width
          + " holds at all of these doors without a longer day: ask with the address.";
    }
    return "May be told: any "
        + width
        + " of arrival within "
        + day.spans().stream().map(span -> span(day, span)).collect(Collectors.joining(" or "))
        + ".";
  }

  private static String span(Day day, TimeWindow span) {
    return CLOCK.format(day.day().wallAt(span.fromSeconds()))
        + "-"
        + CLOCK.format(day.day().wallAt(span.toSeconds()));
  }

  private static void say(List<String> lines, String indent, String text) {
    Wrap.lines(text, COLUMNS - indent.length()).forEach(line -> lines.add(indent + line));
  }
}
