package dev.dogleg.cli.export;

import java.util.List;

/** plan.csv as a file: its columns, its version, and rows turned into text. */
public final class PlanCsv {

  /** Version of the format, written into the note of a day's first row. */
  public static final int FORMAT_VERSION = 1;

  /** The columns, in their order. */
  public static final List<String> COLUMNS =
      List.of(
          "date",
          "groomer",
          "van",
          "stop",
          "kind",
          "booking",
          "client",
          "pets",
          "address",
          "lat",
          "lon",
          "arrive",
          "start",
          "leave",
          "drive_minutes",
          "drive_km",
          "wait_minutes",
          "groom_minutes",
          "spare_minutes",
          "note");

  private PlanCsv() {}

  /**
   * The whole file.
   *
   * @param rows events in order, day after day
   * @return text with a header, lines ended by CR LF as RFC 4180 says
   */
  public static String text(List<PlanRow> rows) {
    CsvText csv = new CsvText(COLUMNS);
    rows.forEach(row -> csv.row(row.cells()));
    return csv.toString();
  }
}
