package dev.dogleg.cli.tell;

import dev.dogleg.cli.export.CsvText;
import dev.dogleg.model.HowToTell;
import java.time.format.DateTimeFormatter;
import java.util.List;

/**
 * {@code texts.csv}: one row a text, for any program that sends texts.
 *
 * <p>Client and message are free text, guarded against being read as a formula (a message begins
 * with a letter anyhow); phone, time and segments have closed grammars and are written as they are.
 */
public final class TextsCsv {
  /** The columns, in their order. */
  public static final List<String> COLUMNS =
      List.of("client", "phone", "message", "time", "segments");

  private TextsCsv() {}

  /**
   * The whole file.
   *
   * @param all who is to hear something; those to be texted have a row
   * @return text with a header, lines ended by CR LF as RFC 4180 says
   */
  public static String text(List<ToTell> all) {
    CsvText csv = new CsvText(COLUMNS);
    for (ToTell one : all) {
      if (one.how() == HowToTell.TEXT) {
        csv.row(
            List.of(
                CsvText.free(one.door().client().name()),
                one.door().client().phone().orElseThrow(),
                CsvText.free(one.message()),
                DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(one.sendAt()),
                Integer.toString(TextSize.of(one.message()).segments())));
      }
    }
    return csv.toString();
  }
}
