package dev.dogleg.cli.export;

import dev.dogleg.itinerary.NoRoom;
import java.util.List;
import java.util.Locale;

/** no-room.csv: what a run leaves out, and why. */
public final class NoRoomCsv {

  /** The columns, in their order. */
  public static final List<String> COLUMNS =
      List.of(
          "date",
          "groomer",
          "booking",
          "client",
          "pets",
          "status",
          "why",
          "rule",
          "short_minutes",
          "with_bookings",
          "later_until",
          "reason");

  private NoRoomCsv() {}

  /**
   * The whole file.
   *
   * @param days planned days, in order
   * @return text with a header; one row for each visit without room
   */
  public static String text(List<PlannedDay> days) {
    CsvText csv = new CsvText(COLUMNS);
    for (PlannedDay day : days) {
      day.leftOut().forEach(left -> csv.row(row(left, day)));
    }
    return csv.toString();
  }

  private static List<String> row(LeftOut left, PlannedDay day) {
    NoRoom noRoom = left.reason();
    StopLabel label = left.label();
    return List.of(
        day.plan().shift().day().date().toString(),
        CsvText.free(day.plan().shift().groomerId()),
        CsvText.free(String.join(";", label.bookings())),
        CsvText.free(label.client()),
        CsvText.free(String.join(";", label.pets())),
        label.booked() ? "booked" : "waiting",
        noRoom.why().name().toLowerCase(Locale.ROOT).replace('_', '-'),
        noRoom.rule(),
        noRoom.shortBySeconds() > 0 ? Amounts.minutes(noRoom.shortBySeconds()) : "",
        CsvText.free(String.join(";", noRoom.withVisits())),
        left.laterUntil().map(java.time.LocalDate::toString).orElse(""),
        CsvText.free(NoRoomText.why(left, day)));
  }
}
