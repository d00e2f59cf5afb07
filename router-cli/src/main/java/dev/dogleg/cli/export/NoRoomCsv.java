package dev.dogleg.cli.export;

import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.WeekNoRoom;
import java.util.ArrayList;
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

  /**
   * The file of a week: one row for each stop without room and van-day on which it might have been,
   * with the smallest change behind; one row with neither date nor groomer where no day was left.
   *
   * @param left what is left out
   * @param days planned days, by number
   * @return text with a header: the columns above and {@code change}
   */
  public static String week(List<WeekLeftOut> left, List<PlannedDay> days) {
    List<String> columns = new ArrayList<>(COLUMNS);
    columns.add("change");
    CsvText csv = new CsvText(columns);
    for (WeekLeftOut one : left) {
      String change = one.reason().change().map(c -> NoRoomText.change(one, days)).orElse("");
      for (WeekNoRoom.OnDay on : one.reason().days()) {
        PlannedDay day = days.get(on.day());
        List<String> cells =
            new ArrayList<>(row(new LeftOut(on.reason(), one.label(), one.laterUntil()), day));
        cells.add(CsvText.free(change));
        csv.row(cells);
      }
      if (one.reason().days().isEmpty()) {
        csv.row(
            List.of(
                "",
                "",
                CsvText.free(String.join(";", one.label().bookings())),
                CsvText.free(one.label().client()),
                CsvText.free(String.join(";", one.label().pets())),
                one.label().booked() ? "booked" : "waiting",
                "no-day",
                "",
                "",
                "",
                one.laterUntil().map(java.time.LocalDate::toString).orElse(""),
                "no day of the run is left for it",
                ""));
      }
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
