package dev.dogleg.cli.told;

import com.opencsv.ICSVParser;
import com.opencsv.RFC4180ParserBuilder;
import dev.dogleg.cli.export.CsvText;
import dev.dogleg.cli.export.OwnerFile;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.DateTimeException;
import java.util.ArrayList;
import java.util.List;

/**
 * The log {@code told.csv} of a book: read whole, only ever lengthened.
 *
 * <p>Rows are added in one piece and flushed before {@link #append} comes back. Each ends with a
 * point, so that a row that a crash tore is known; such rows at the end are passed over, said, and
 * cut off when the log is lengthened. Life cycle: read, then used by one thread.
 */
public final class ToldLog {
  /** Name of the log in a book folder. */
  public static final String FILE = "told.csv";

  private static final int MOST_BYTES = 20_000_000;
  private static final byte NEW_LINE = '\n';

  private final Path file;
  private final List<ToldRow> rows;
  private final int soundBytes;
  private final boolean ended;

  private ToldLog(Path file, List<ToldRow> rows, int soundBytes, boolean ended) {
    this.file = file;
    this.rows = List.copyOf(rows);
    this.soundBytes = soundBytes;
    this.ended = ended;
  }

  /**
   * Reads the log of a book; one that is not there yet is empty.
   *
   * @param folder the book folder
   * @param faults takes {@code torn-row} (to be looked at), {@code bad-told-row}, {@code
   *     newer-format}, {@code unreadable-file} (they stop the run: what was promised is not known)
   * @return the log; empty where a fault stops
   */
  public static ToldLog read(Path folder, Faults faults) {
    Path file = folder.resolve(FILE);
    if (!Files.exists(file)) {
      return new ToldLog(file, List.of(), 0, true);
    }
    try {
      if (!Files.isRegularFile(file) || Files.size(file) > MOST_BYTES) {
        stop(faults, "unreadable-file", 0, "", "a file of at most 20 MB was expected", "");
        return new ToldLog(file, List.of(), 0, true);
      }
      return read(file, Files.readAllBytes(file), faults);
    } catch (IOException broken) {
      stop(faults, "unreadable-file", 0, "", "cannot be read: " + broken, "");
      return new ToldLog(file, List.of(), 0, true);
    }
  }

  private static ToldLog read(Path file, byte[] bytes, Faults faults) {
    List<ToldRow> rows = new ArrayList<>();
    ICSVParser parser = new RFC4180ParserBuilder().build();
    List<Fault> unsound = new ArrayList<>();
    int soundBytes = 0;
    boolean ended = true;
    int line = 0;
    for (int from = 0; from < bytes.length; ) {
      int to = from;
      while (to < bytes.length && bytes[to] != NEW_LINE) {
        to++;
      }
      line++;
      boolean whole = to < bytes.length;
      String text = new String(bytes, from, to - from, StandardCharsets.UTF_8).strip();
      from = to + 1;
      if (text.isEmpty() || (line == 1 && whole && isHeader(text))) {
        soundBytes = unsound.isEmpty() ? Math.min(from, bytes.length) : soundBytes;
        continue;
      }
      try {
        List<String> cells = List.of(parser.parseLine(text));
        if (newer(cells)) {
          stop(
              faults,
              "newer-format",
              line,
              cells.get(0),
              "told format " + ToldCells.FORMAT + " is the newest this program reads",
              "use a newer program");
          return new ToldLog(file, List.of(), 0, true);
        }
        rows.add(ToldCells.row(cells));
        // What is unsound in the midst of sound rows was not torn by a crash.
        unsound.forEach(faults::add);
        unsound.clear();
        soundBytes = Math.min(from, bytes.length);
        ended = whole;
      } catch (IOException | IllegalArgumentException | DateTimeException bad) {
        unsound.add(bad(line, text, bad));
      }
    }
    if (!unsound.isEmpty()) {
      faults.add(
          new Fault(
              "torn-row",
              Severity.LOOK,
              unsound.get(0).where(),
              unsound.get(0).seen(),
              "a row that ends with a point was expected; it is passed over",
              "the run that wrote it was cut short; the next run of texts puts it right"));
    }
    return new ToldLog(file, rows, soundBytes, ended);
  }

  private static boolean isHeader(String text) {
    return text.replace("\ufeff", "").startsWith(ToldCells.COLUMNS.get(0) + ",");
  }

  private static boolean newer(List<String> cells) {
    return cells.get(0).matches("\\d{1,9}") && Integer.parseInt(cells.get(0)) > ToldCells.FORMAT;
  }

  private static Fault bad(int line, String text, Exception why) {
    return new Fault(
        "bad-told-row",
        Severity.STOP,
        Where.row(FILE, line),
        text.length() > 60 ? text.substring(0, 60) : text,
        "a row of the log was expected: " + why.getMessage(),
        "the log is written by the program; put the row right or take it out");
  }

  private static void stop(
      Faults faults, String code, int row, String seen, String expected, String hint) {
    faults.add(new Fault(code, Severity.STOP, Where.row(FILE, row), seen, expected, hint));
  }

  /** {@return its sound rows, oldest first} */
  public List<ToldRow> rows() {
    return rows;
  }

  /**
   * Adds rows and flushes them to the disk, all in one piece.
   *
   * @param more rows to add
   * @return the longer log
   * @throws IOException where they cannot be written
   */
  public ToldLog append(List<ToldRow> more) throws IOException {
    StringBuilder text = new StringBuilder();
    if (!Files.exists(file)) {
      Files.createFile(file, OwnerFile.ownerOnly());
    }
    if (soundBytes == 0) {
      text.append(CsvText.line(ToldCells.COLUMNS));
    } else if (!ended) {
      text.append("\r\n");
    }
    more.forEach(row -> text.append(ToldCells.line(row)));
    ByteBuffer bytes = StandardCharsets.UTF_8.encode(text.toString());
    int length = bytes.remaining();
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE)) {
      channel.truncate(soundBytes);
      channel.position(soundBytes);
      OwnerFile.flush(channel, bytes);
    }
    List<ToldRow> all = new ArrayList<>(rows);
    all.addAll(more);
    return new ToldLog(file, all, soundBytes + length, true);
  }
}
