package dev.dogleg.cli.told;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.WallSpan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The log of what was told, and what follows from it. */
class ToldLogTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2027-02-28T17:00:00-08:00");
  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  @TempDir Path book;

  private static ToldRow.Told told(String booking, int from, int to, Occasion occasion) {
    return new ToldRow.Told(
        List.of(booking), DAY, new WallSpan(from, to), occasion, HowToTell.TEXT, NOW);
  }

  private static ToldRow prepared(int run, int of, String client, ToldRow.Told told) {
    return new ToldRow(
        NOW, ToldEvent.PREPARED, run, of, client, Optional.of(told), "=1+1,\"x\"/texts.csv");
  }

  private static ToldRow plain(ToldEvent event, String client) {
    return new ToldRow(NOW, event, 0, 0, client, Optional.empty(), "");
  }

  private List<ToldRow> write(ToldRow... rows) throws IOException {
    ToldLog.read(book, new Faults()).append(List.of(rows));
    return ToldLog.read(book, new Faults()).rows();
  }

  @Test
  void rowsComeBackAsTheyWere() throws IOException {
    ToldRow one = prepared(1, 1, "josé-ñ", told("a+b;c@2027-03-01", 0, 86_400, Occasion.ON_MY_WAY));
    // One booking with a semicolon is two: ids have none, so take them apart beforehand.
    ToldRow two = prepared(2, 1, "x", told("josé.pip", 36_001, 39_600, Occasion.LATE));
    List<ToldRow> read = write(one, two, plain(ToldEvent.STOPPED, "x"));
    assertEquals(List.of("a+b", "c@2027-03-01"), read.get(0).told().orElseThrow().bookings());
    assertEquals(one.file(), read.get(0).file());
    assertEquals(List.of(two, plain(ToldEvent.STOPPED, "x")), read.subList(1, 3));
    assertTrue(
        Files.readString(book.resolve(ToldLog.FILE)).lines().noneMatch(l -> l.contains(",=")),
        "no cell begins like a formula");
  }

  @Test
  void aTornEndIsPassedOverSaidAndCutOff() throws IOException {
    write(plain(ToldEvent.STOPPED, "ada"));
    Path file = book.resolve(ToldLog.FILE);
    String sound = Files.readString(file);
    Files.writeString(file, sound + "1,2027-02-28T17:00:00-08:00,resumed,,,ada,");
    Faults faults = new Faults();
    ToldLog log = ToldLog.read(book, faults);
    assertEquals(List.of("torn-row"), faults.all().stream().map(f -> f.code()).toList());
    assertEquals(Severity.LOOK, faults.all().get(0).severity());
    assertEquals(3, faults.all().get(0).where().row());
    assertTrue(ToldBook.of(log.rows()).stopped("ada"));
    log.append(List.of(plain(ToldEvent.RESUMED, "ada")));
    assertTrue(Files.readString(file).startsWith(sound));
    Faults after = new Faults();
    assertEquals(2, ToldLog.read(book, after).rows().size());
    assertTrue(after.isEmpty());
  }

  @Test
  void aWholeRowWithoutLineEndCounts() throws IOException {
    write(plain(ToldEvent.STOPPED, "ada"));
    Path file = book.resolve(ToldLog.FILE);
    Files.writeString(file, Files.readString(file).stripTrailing());
    assertEquals(2, write(plain(ToldEvent.RESUMED, "ada")).size());
  }

  @Test
  void whatIsNoRowInTheMidstStopsTheRun() throws IOException {
    write(plain(ToldEvent.STOPPED, "ada"));
    Path file = book.resolve(ToldLog.FILE);
    String header = Files.readString(file).lines().findFirst().orElseThrow();
    Files.writeString(
        file, header + "\r\nnonsense\r\n" + Files.readString(file).substring(header.length() + 2));
    Faults faults = new Faults();
    ToldLog.read(book, faults);
    assertEquals(List.of("bad-told-row"), faults.all().stream().map(f -> f.code()).toList());
    assertTrue(faults.stops());
  }

  @Test
  void aNewerFormatIsRefused() throws IOException {
    write(plain(ToldEvent.STOPPED, "ada"));
    Path file = book.resolve(ToldLog.FILE);
    Files.writeString(file, Files.readString(file).replace("\r\n1,", "\r\n2,"));
    Faults faults = new Faults();
    assertEquals(List.of(), ToldLog.read(book, faults).rows());
    assertEquals(List.of("newer-format"), faults.all().stream().map(f -> f.code()).toList());
  }

  @Test
  void theLastToldSpanBindsAndAnAskOnlyOnceConfirmed() throws IOException {
    DateSpan day = DateSpan.of(DAY);
    Set<String> ids = Set.of("ada.mop@2027-03-01", "wil.bo@2027-03-01..2027-03-05");
    ToldRow first =
        prepared(1, 1, "ada", told("ada.mop@2027-03-01", 36_000, 43_200, Occasion.EVENING));
    ToldRow second =
        prepared(2, 1, "ada", told("ada.mop@2027-03-01", 37_800, 39_600, Occasion.ON_MY_WAY));
    ToldRow ask = prepared(3, 1, "wil", told("wil.bo@2027-02-27", 36_000, 39_600, Occasion.ASK));
    ToldRow cutShort = prepared(4, 2, "ada", told("ada.mop@2027-03-01", 0, 60, Occasion.CHANGED));
    ToldBook told = ToldBook.of(write(first, second, ask, cutShort));
    assertEquals(second.told(), told.binding("ada.mop@2027-03-01", day, ids));
    assertEquals(Optional.empty(), told.binding("wil.bo@2027-03-01..2027-03-05", day, ids));
    assertEquals(5, told.nextRun());
    assertEquals(1, told.changes("ada.mop@2027-03-01", DAY));
    ToldRow yes = new ToldRow(NOW, ToldEvent.CONFIRMED, 3, 0, "wil", ask.told(), "");
    ToldBook agreed = ToldBook.of(write(yes));
    // The id changed with its date; what is left of it is the same.
    assertEquals(ask.told(), agreed.binding("wil.bo@2027-03-01..2027-03-05", day, ids));
    assertEquals(
        Optional.empty(),
        agreed.binding("wil.bo@2027-03-01..2027-03-05", day, Set.of("wil.bo@2027-02-27")),
        "it is another booking's");
  }
}
