package dev.dogleg.cli.export;

import dev.dogleg.groom.LearnedKind;
import dev.dogleg.groom.LearnedRow;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;

/** learned.csv as text: one readable row for each thing learned. */
public final class LearnedCsv {

  /** The columns, in their order. */
  public static final List<String> COLUMNS =
      List.of("kind", "what", "factor", "spread", "visits", "last", "keep", "note");

  /** Kinds that have a spread and no factor. */
  private static final Set<LearnedKind> SPREADS =
      Set.of(LearnedKind.DAY, LearnedKind.DRIVE_DAY, LearnedKind.DRIVE_LEG);

  private LearnedCsv() {}

  /**
   * The whole file.
   *
   * @param rows what was learned, in the order to be written
   * @param version version of the format, written into the first row
   * @return text with a header
   */
  public static String text(List<LearnedRow> rows, int version) {
    CsvText csv = new CsvText(COLUMNS);
    csv.row(
        List.of(
            "format",
            Integer.toString(version),
            "",
            "",
            "",
            "",
            "",
            "factor and spread may be edited; keep yes holds a row when learning again; without a"
                + " row the level above holds"));
    for (LearnedRow row : rows) {
      boolean spreadOnly = SPREADS.contains(row.kind());
      boolean both = row.kind() == LearnedKind.PET || row.kind() == LearnedKind.DRIVE;
      csv.row(
          List.of(
              row.kind().word(),
              CsvText.free(row.what()),
              spreadOnly ? "" : thousandths(row.factorPermille()),
              spreadOnly || both ? thousandths(row.spreadPermille()) : "",
              Integer.toString(row.visits()),
              row.last().map(LocalDate::toString).orElse(""),
              row.keep() ? "yes" : "",
              CsvText.free(row.note())));
    }
    return csv.toString();
  }

  private static String thousandths(int number) {
    return BigDecimal.valueOf(number, 3).toPlainString();
  }
}
