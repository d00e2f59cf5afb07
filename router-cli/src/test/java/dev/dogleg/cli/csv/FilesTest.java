package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Severity;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files as people and spreadsheets save them: encodings, separators, sizes. */
class FilesTest {
  private static final String BOOKING = "client,pet,address\nMüller,Žofka,12 Mühlweg\n";

  @TempDir Path dir;

  private ReadBook bookings(byte[] bytes) {
    return Folder.in(dir).with("bookings.csv", bytes).read();
  }

  private static String name(ReadBook read) {
    return read.book().orElseThrow().clients().get(0).name();
  }

  @Test
  void utf8WithAndWithoutByteOrderMark() {
    assertEquals("Müller", name(bookings(BOOKING.getBytes(StandardCharsets.UTF_8))));
    ReadBook marked = bookings(("\uFEFF" + BOOKING).getBytes(StandardCharsets.UTF_8));
    assertEquals("Müller", name(marked));
    assertEquals(List.of(), Folder.loud(marked));
  }

  @Test
  void windows1252IsRecognisedAndSaid() {
    ReadBook read =
        bookings(
            "client,pet,address\r\nMüller,Café,12 Mühlweg – links\r\n"
                .getBytes(Charset.forName("windows-1252")));
    assertEquals("Müller", name(read));
    assertEquals(
        "12 Mühlweg – links", read.book().orElseThrow().clients().get(0).place().address());
    assertEquals(
        List.of("NOTE bookings.csv:2 windows-1252"),
        Folder.all(read).stream().filter(line -> line.contains("1252")).toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"UTF-16", "UTF-16LE", "UTF-16BE", "UTF-32"})
  void otherEncodingsAreRefused(String charset) {
    ReadBook read = bookings(BOOKING.getBytes(Charset.forName(charset)));
    assertTrue(read.book().isEmpty());
    assertEquals("wrong-encoding", read.faults().all().get(0).code());
  }

  @Test
  void damagedUtf8IsNotTakenForWindows1252() {
    byte[] bytes = BOOKING.getBytes(StandardCharsets.UTF_8);
    byte[] damaged = java.util.Arrays.copyOf(bytes, bytes.length + 1);
    damaged[bytes.length] = (byte) 0xC3; // half a letter at the end of the file
    ReadBook read = bookings(damaged);
    assertEquals(List.of("STOP bookings.csv:3 wrong-encoding"), Folder.loud(read));
  }

  @Test
  void bytesWithoutMeaningInWindows1252AreRefused() {
    ReadBook read =
        bookings("client,pet,address\nM\u0081ller,R,1 A\n".getBytes(StandardCharsets.ISO_8859_1));
    assertEquals("wrong-encoding", read.faults().all().get(0).code());
  }

  @ParameterizedTest
  @ValueSource(strings = {",", ";", "\t"})
  void anySeparatorAnyLineEndAnyOrder(String separator) {
    for (String end : List.of("\n", "\r\n", "\r")) {
      String text =
          String.join(separator, "my code", "Address", "PET", "Client ")
              + end
              + String.join(separator, "7", "\"12 Mill Lane, upstairs; left\"", "Rex", "Okafor")
              + end;
      ReadBook read = bookings(text.getBytes(StandardCharsets.UTF_8));
      assertEquals(List.of(), Folder.loud(read));
      assertEquals("Okafor", name(read));
      assertEquals(
          "12 Mill Lane, upstairs; left",
          read.book().orElseThrow().clients().get(0).place().address());
      assertEquals(
          "7",
          read.cells(read.sources().booking("okafor.rex", Column.CLIENT)).get("my code"),
          "a person's own column passes through");
    }
  }

  @Test
  void aLineThatNamesTheSeparator() {
    ReadBook read =
        bookings(
            "sep=;\r\nclient;pet;address\r\nOkafor;Rex;1, A\r\n".getBytes(StandardCharsets.UTF_8));
    assertEquals(List.of(), Folder.loud(read));
    assertEquals(3, read.sources().booking("okafor.rex", Column.CLIENT).row());
  }

  /** The examples of RFC 4180, section 2, items 5 to 7, with our first line. */
  @Test
  void examplesOfTheStandard() {
    ReadBook read =
        bookings(
            "client,pet,address\r\n\"aaa\",\"b \r\nbb\",\"ccc\"\r\nzzz,yyy,xxx\r\n\"aaa2\",\"b\"\"bb\",\"ccc\"\r\n"
                .getBytes(StandardCharsets.UTF_8));
    assertEquals(List.of(), Folder.loud(read));
    assertEquals(
        List.of("b \nbb", "yyy", "b\"bb"),
        read.book().orElseThrow().pets().stream().map(pet -> pet.name()).toList());
    assertEquals(
        List.of(2, 4, 5),
        read.book().orElseThrow().bookings().stream()
            .map(booking -> read.sources().booking(booking.id(), Column.CLIENT).row())
            .toList(),
        "a row is the physical line where its record starts");
  }

  @Test
  void missingFileFolderAndFolderInPlaceOfAFile() throws IOException {
    ReadBook none = BookReader.read(dir.resolve("nowhere"), ReadOptions.of(Folder.TABLES));
    assertEquals("missing-file", none.faults().all().get(0).code());
    Folder folder = Folder.in(dir);
    assertEquals(List.of("STOP bookings.csv missing-file"), Folder.loud(folder.read()));
    Files.createDirectory(dir.resolve("bookings.csv"));
    assertEquals(List.of("STOP bookings.csv is-directory"), Folder.loud(folder.read()));
  }

  @Test
  void aBookingsFileAloneNeedsACard() throws IOException {
    Folder folder = new Folder(dir).with("day.csv", BOOKING);
    assertEquals(List.of("STOP  missing-card"), Folder.loud(folder.readFile("day.csv")));
    Path card = Files.createDirectory(dir.resolve("else")).resolve("card.yaml");
    Files.writeString(card, Folder.CARD);
    ReadBook read =
        BookReader.read(
            dir.resolve("day.csv"),
            new ReadOptions(Folder.TABLES, Optional.of(card), Optional.empty(), false));
    assertTrue(read.book().isPresent());
  }

  @Test
  void aHundredMegabytesAreNotRead() throws IOException {
    Folder folder = Folder.in(dir);
    try (RandomAccessFile file = new RandomAccessFile(dir.resolve("bookings.csv").toFile(), "rw")) {
      file.setLength(100_000_000L);
    }
    assertEquals(List.of("STOP bookings.csv file-too-big"), Folder.loud(folder.read()));
  }

  @Test
  void tooManyRows() {
    StringBuilder text = new StringBuilder("client,pet,address\n");
    IntStream.range(0, 100_002).forEach(i -> text.append('c').append(i).append(",p,a\n"));
    ReadBook read = bookings(text.toString().getBytes(StandardCharsets.UTF_8));
    assertTrue(
        read.faults().all().stream().anyMatch(fault -> fault.code().equals("too-many-rows")));
    assertTrue(read.book().isEmpty());
  }

  /** Four megabytes behind a quote that is never closed: quadratic for the library alone. */
  @Test
  void aQuoteThatIsNeverClosed() {
    StringBuilder text = new StringBuilder("client,pet,address,note\nOkafor,Rex,\"1 Mill Lane\n");
    while (text.length() < 4_000_000) {
      text.append("Lindqvist,Pepper,3 Station Road,").append("x".repeat(9_900)).append('\n');
    }
    ReadBook read = bookings(text.toString().getBytes(StandardCharsets.UTF_8));
    assertEquals("ASIDE bookings.csv:2 unclosed-quote", Folder.loud(read).get(0));
  }

  @Test
  void quotesInEveryRowStopAtAThousandFaults() {
    String text = "client,pet,address\n" + "Okafor,\"Rex,1\n".repeat(20_000);
    ReadBook read = bookings(text.getBytes(StandardCharsets.UTF_8));
    assertTrue(
        read.faults().of(Severity.STOP).stream()
            .anyMatch(fault -> fault.code().equals("too-many-faults")));
    assertTrue(read.faults().all().size() < 2_000);
  }

  @Test
  void aFieldOfMoreThanTenThousandCharacters() {
    String text = "client,pet,address,note\nOkafor,Rex,1 A," + "x".repeat(10_001) + "\nB,C,2 B,\n";
    ReadBook read = bookings(text.getBytes(StandardCharsets.UTF_8));
    assertEquals(List.of("ASIDE bookings.csv:2:note long-cell"), Folder.loud(read));
    assertEquals(1, read.book().orElseThrow().bookings().size());
  }

  @Test
  void fiftyLinesAreARecordAndFiftyOneAreNot() {
    String fifty = "client,pet,address,note\nOkafor,Rex,1 A,\"" + "x\n".repeat(49) + "\"\n";
    assertEquals(List.of(), Folder.loud(bookings(fifty.getBytes(StandardCharsets.UTF_8))));
    String more = "client,pet,address,note\nOkafor,Rex,1 A,\"" + "x\n".repeat(50) + "\"\n";
    assertEquals(
        "ASIDE bookings.csv:2 unclosed-quote",
        Folder.loud(bookings(more.getBytes(StandardCharsets.UTF_8))).get(0));
  }
}
