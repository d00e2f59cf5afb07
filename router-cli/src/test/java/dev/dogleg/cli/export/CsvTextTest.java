package dev.dogleg.cli.export;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180Parser;
import java.io.StringReader;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cells on their way into a file and back, read by an independent reader of RFC 4180. */
class CsvTextTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "plain",
        "=1+1",
        "+1 555-0100",
        "-5",
        "@home",
        "\tindented",
        "\rreturn",
        "'=already guarded",
        "''@twice",
        "'tis plain",
        "comma, quote \" and\nline",
        " blanks ",
        "Zoë 龍 ©"
      })
  void freeTextComesBackAsItWas(String cell) throws Exception {
    CsvText csv = new CsvText(List.of("a", "b"));
    csv.row(List.of(CsvText.free(cell), "end"));
    try (CSVReader reader =
        new CSVReaderBuilder(new StringReader(csv.toString()))
            .withCSVParser(new RFC4180Parser())
            .withKeepCarriageReturn(true)
            .build()) {
      reader.readNext();
      String[] row = reader.readNext();
      assertEquals(cell, CsvText.unguarded(row[0]));
      assertEquals("end", row[1].strip());
    }
  }

  @Test
  void aFormulaCarriesAnApostrophe() {
    // A spreadsheet shows '=cmd as text.
    assertEquals("'=cmd|' /C calc'!A0", CsvText.free("=cmd|' /C calc'!A0"));
  }
}
