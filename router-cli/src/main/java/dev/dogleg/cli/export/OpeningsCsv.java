package dev.dogleg.cli.export;

import dev.dogleg.cli.export.OpeningsSheet.Cell;
import dev.dogleg.cli.export.OpeningsSheet.Row;
import dev.dogleg.cli.export.OpeningsSheet.Zone;
import dev.dogleg.time.TimeWindow;
import java.time.LocalTime;
import java.util.List;

/** The table of times that may be told, a row a stretch, for a spreadsheet. */
public final class OpeningsCsv {

  /** The columns, in their order. */
  public static final List<String> COLUMNS =
      List.of("zone", "date", "groomer", "kind", "from", "to", "span_minutes", "dearer_minutes");

  private OpeningsCsv() {}

  /**
   * The whole file.
   *
   * @param sheet the table
   * @return text with a header; what is full has no row
   */
  public static String text(OpeningsSheet sheet) {
    CsvText csv = new CsvText(COLUMNS);
    for (Zone zone : sheet.zones()) {
      for (Row row : zone.rows()) {
        for (int kind = 0; kind < sheet.kinds().size(); kind++) {
          Cell cell = row.cells().get(kind);
          for (TimeWindow span : cell.shown(sheet.terms())) {
            csv.row(
                List.of(
                    CsvText.free(zone.name()),
                    row.day().date().toString(),
                    CsvText.free(row.groomer()),
                    sheet.kinds().get(kind).word(),
                    wall(row, span.fromSeconds()),
                    wall(row, span.toSeconds()),
                    Long.toString(Amounts.roughMinutes(sheet.terms().spanSeconds())),
                    Long.toString(Amounts.roughMinutes(cell.dearerSeconds()))));
          }
        }
      }
    }
    return csv.toString();
  }

  private static String wall(Row row, int seconds) {
    LocalTime time = row.day().wallAt(seconds).toLocalTime();
    return "%02d:%02d".formatted(time.getHour(), time.getMinute());
  }
}
