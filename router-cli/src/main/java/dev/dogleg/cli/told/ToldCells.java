package dev.dogleg.cli.told;

import dev.dogleg.cli.export.CsvText;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.WallSpan;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.OffsetDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Turns rows of the log into cells and back. */
final class ToldCells {
  /** Version of the format, in the first cell of every row. */
  static final int FORMAT = 1;

  static final List<String> COLUMNS =
      List.of(
          "format",
          "written",
          "event",
          "run",
          "of",
          "client",
          "booking",
          "date",
          "from",
          "to",
          "occasion",
          "how",
          "send_at",
          "file",
          "end");

  /** Last cell of every row: a row without it was torn. */
  static final String END = ".";

  private static final String MIDNIGHT = "24:00";

  private ToldCells() {}

  static String line(ToldRow row) {
    Optional<ToldRow.Told> told = row.told();
    return CsvText.line(
        List.of(
            Integer.toString(FORMAT),
            text(row.written()),
            row.event().word(),
            row.run() == 0 ? "" : Integer.toString(row.run()),
            row.of() == 0 ? "" : Integer.toString(row.of()),
            CsvText.free(row.client()),
            told.map(one -> CsvText.free(String.join(";", one.bookings()))).orElse(""),
            told.map(one -> one.date().toString()).orElse(""),
            told.map(one -> WallSpan.text(one.span().fromSeconds())).orElse(""),
            told.map(one -> WallSpan.text(one.span().toSeconds())).orElse(""),
            told.map(one -> one.occasion().word()).orElse(""),
            told.map(one -> one.how().name().toLowerCase(Locale.ROOT)).orElse(""),
            told.map(one -> text(one.sendAt())).orElse(""),
            CsvText.free(row.file()),
            END));
  }

  private static String text(OffsetDateTime time) {
    return DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
  }

  /**
   * The row of some cells.
   *
   * @throws IllegalArgumentException or DateTimeException where they are none
   */
  static ToldRow row(List<String> cells) {
    if (cells.size() != COLUMNS.size() || !cells.get(COLUMNS.size() - 1).equals(END)) {
      throw new IllegalArgumentException(COLUMNS.size() + " cells with a point at the end");
    }
    ToldEvent event =
        ToldEvent.of(cells.get(2)).orElseThrow(() -> new IllegalArgumentException("an event"));
    return new ToldRow(
        OffsetDateTime.parse(cells.get(1)),
        event,
        whole(cells.get(3)),
        whole(cells.get(4)),
        CsvText.unguarded(cells.get(5)),
        cells.get(6).isEmpty() ? Optional.empty() : Optional.of(told(cells)),
        CsvText.unguarded(cells.get(13)));
  }

  private static ToldRow.Told told(List<String> cells) {
    return new ToldRow.Told(
        List.of(CsvText.unguarded(cells.get(6)).split(";")),
        LocalDate.parse(cells.get(7)),
        new WallSpan(wall(cells.get(8)), wall(cells.get(9))),
        Occasion.of(cells.get(10)).orElseThrow(() -> new IllegalArgumentException("an occasion")),
        HowToTell.valueOf(cells.get(11).toUpperCase(Locale.ROOT)),
        OffsetDateTime.parse(cells.get(12)));
  }

  private static int wall(String cell) {
    return cell.equals(MIDNIGHT) ? WallSpan.MIDNIGHT : LocalTime.parse(cell).toSecondOfDay();
  }

  private static int whole(String cell) {
    try {
      return cell.isEmpty() ? 0 : Integer.parseInt(cell);
    } catch (NumberFormatException noNumber) {
      throw new DateTimeException("a number", noNumber);
    }
  }
}
