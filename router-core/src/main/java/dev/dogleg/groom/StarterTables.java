package dev.dogleg.groom;

import com.opencsv.CSVReader;
import com.opencsv.CSVReaderBuilder;
import com.opencsv.RFC4180Parser;
import com.opencsv.exceptions.CsvException;
import dev.dogleg.fault.Where;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The starter tables of the folder {@code seeds}, which travel with the library on its class path.
 *
 * <p>Only our own, tested files are read here; a business's files come through the command line's
 * hardened reader.
 */
public final class StarterTables {
  private static final String FOLDER = "/dev/dogleg/seeds/";

  private StarterTables() {}

  /** Read once in a process, by whichever thread comes first; the others wait for it. */
  private static final class Kept {
    static final GroomTables TABLES =
        GroomTables.of(
            new GroomRows(
                rows("groom-times.csv"),
                rows("add-ons.csv"),
                rows("breeds.csv"),
                rows("services.csv"),
                rows("words.csv")));

    private Kept() {}
  }

  /** {@return the starter tables; the first call takes tens of milliseconds} */
  public static GroomTables load() {
    return Kept.TABLES;
  }

  /**
   * Rows of one starter table.
   *
   * @param file file name in the folder {@code seeds}, for example {@code traffic.csv}
   * @return its rows, in the order of the file
   * @throws IllegalArgumentException where there is no such table
   */
  public static List<TableRow> rows(String file) {
    try (InputStream stream = StarterTables.class.getResourceAsStream(FOLDER + file)) {
      if (stream == null) {
        throw new IllegalArgumentException("no starter table " + file);
      }
      InputStreamReader text = new InputStreamReader(stream, StandardCharsets.UTF_8);
      try (CSVReader reader =
          new CSVReaderBuilder(text).withCSVParser(new RFC4180Parser()).build()) {
        return rows(file, reader);
      }
    } catch (IOException broken) {
      throw new UncheckedIOException("cannot read starter table " + file, broken);
    } catch (CsvException broken) {
      throw new IllegalStateException("starter table " + file + " is broken", broken);
    }
  }

  private static List<TableRow> rows(String file, CSVReader reader)
      throws IOException, CsvException {
    String[] header = reader.readNext();
    List<TableRow> rows = new ArrayList<>();
    int line = (int) reader.getLinesRead() + 1;
    for (String[] cells = reader.readNext(); cells != null; cells = reader.readNext()) {
      if (cells.length != header.length) {
        throw new IllegalStateException(file + ":" + line + " has " + cells.length + " cells");
      }
      Map<String, String> byName = new LinkedHashMap<>();
      for (int column = 0; column < header.length; column++) {
        byName.put(header[column], cells[column]);
      }
      rows.add(new TableRow(Where.row(file, line), byName));
      line = (int) reader.getLinesRead() + 1;
    }
    return rows;
  }
}
