package dev.dogleg.cli.told;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Faults;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.WallSpan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A run that is cut short anywhere neither tells anybody twice nor forgets anybody. */
class HandOverTest {
  private static final OffsetDateTime NOW = OffsetDateTime.parse("2027-02-28T17:00:00-08:00");
  private static final LocalDate DAY = LocalDate.of(2027, 3, 1);
  private static final List<String> BOOKINGS = List.of("ada.mop", "joss.pip", "wil.bo");

  @TempDir Path book;

  private Path file() {
    return book.resolve("plan/texts.csv");
  }

  private ToldLog log() {
    return ToldLog.read(book, new Faults());
  }

  private static ToldRow.Told told(String booking) {
    return new ToldRow.Told(
        List.of(booking),
        DAY,
        new WallSpan(36_000, 39_600),
        Occasion.EVENING,
        HowToTell.TEXT,
        NOW.plusHours(1));
  }

  /** What a run does: finish what was cut short, tell who was not told yet; so many steps. */
  private void run(List<String> wanted, int steps) throws IOException {
    ToldLog log = HandOver.finish(book, log(), NOW).log();
    ToldBook before = ToldBook.of(log.rows());
    List<String> some =
        wanted.stream().filter(booking -> before.last(booking, DAY).isEmpty()).toList();
    if (some.isEmpty()) {
      return;
    }
    HandOver handOver = new HandOver(book, log, file(), before.nextRun());
    if (steps > 0) {
      handOver.stage(String.join("\n", some) + "\n", "page of " + some);
    }
    if (steps > 1) {
      handOver.prepare(some, some.stream().map(HandOverTest::told).toList(), NOW);
    }
    if (steps > 2) {
      handOver.move();
    }
    if (steps > 3) {
      handOver.mark(NOW);
    }
  }

  /** Everything in files that a person can find: those in place, today's and earlier ones. */
  private List<String> handedOver(String extension) throws IOException {
    List<String> lines = new ArrayList<>();
    if (Files.exists(file().getParent())) {
      try (Stream<Path> files = Files.list(file().getParent())) {
        for (Path found : files.sorted().toList()) {
          String name = found.getFileName().toString();
          if (name.startsWith("texts") && name.endsWith(extension)) {
            lines.addAll(Files.readAllLines(found));
          }
        }
      }
    }
    return lines.stream().sorted().toList();
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void cutShortAfterAnyStep(int steps) throws IOException {
    run(BOOKINGS, steps);
    run(BOOKINGS, 4);
    assertEquals(BOOKINGS, handedOver(".csv"));
    assertEquals(1, handedOver(".html").size());
    run(BOOKINGS, 4);
    assertEquals(BOOKINGS, handedOver(".csv"), "a third run tells nobody again");
    assertEquals(List.of(), ToldBook.of(log().rows()).open());
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 1, 2, 3, 4})
  void cutShortWhileFinishing(int steps) throws IOException {
    run(BOOKINGS.subList(0, 2), 2);
    // Finishing takes the third and fourth step; then somebody new is told, cut short in turn.
    run(BOOKINGS, steps);
    run(BOOKINGS, 4);
    assertEquals(BOOKINGS, handedOver(".csv"));
  }

  @Test
  void cutShortBetweenTheMovesOfTwoFiles() throws IOException {
    run(BOOKINGS, 2);
    Path page = HandOver.page(file());
    Files.move(page.resolveSibling("." + page.getFileName() + ".run-1.part"), page);
    run(BOOKINGS, 4);
    assertEquals(BOOKINGS, handedOver(".csv"));
    assertEquals(1, handedOver(".html").size());
  }

  @Test
  void cutShortAfterEveryByteOfTheLog() throws IOException {
    run(BOOKINGS.subList(0, 1), 4);
    byte[] before = Files.readAllBytes(book.resolve(ToldLog.FILE));
    run(BOOKINGS, 2);
    byte[] after = Files.readAllBytes(book.resolve(ToldLog.FILE));
    byte[] texts = Files.readAllBytes(file().resolveSibling(".texts.csv.run-2.part"));
    byte[] page = Files.readAllBytes(file().resolveSibling(".texts.html.run-2.part"));
    for (int length = before.length; length <= after.length; length++) {
      Files.write(book.resolve(ToldLog.FILE), java.util.Arrays.copyOf(after, length));
      Files.write(file().resolveSibling(".texts.csv.run-2.part"), texts);
      Files.write(file().resolveSibling(".texts.html.run-2.part"), page);
      run(BOOKINGS, 4);
      assertEquals(BOOKINGS, handedOver(".csv"), "cut after byte " + length);
      assertEquals(List.of(), ToldBook.of(log().rows()).open(), "cut after byte " + length);
      // Back to where the second run began.
      try (Stream<Path> files = Files.list(file().getParent())) {
        for (Path found : files.toList()) {
          Files.delete(found);
        }
      }
      Files.writeString(file(), BOOKINGS.get(0) + "\n");
    }
  }

  @Test
  void anEarlierFileIsKept() throws IOException {
    run(BOOKINGS.subList(0, 1), 4);
    run(BOOKINGS, 4);
    assertEquals(List.of("joss.pip", "wil.bo"), Files.readAllLines(file()));
    assertEquals(
        List.of("ada.mop"), Files.readAllLines(file().resolveSibling("texts-before-run-2.csv")));
  }

  @Test
  void onlyTheOwnerReadsThem() throws IOException {
    run(BOOKINGS, 4);
    if (book.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      for (Path found : List.of(file(), HandOver.page(file()), book.resolve(ToldLog.FILE))) {
        assertEquals(
            "rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(found)));
      }
    }
    assertFalse(Files.exists(file().resolveSibling(".texts.csv.run-1.part")));
    assertTrue(log().rows().stream().allMatch(row -> row.run() == 1));
  }
}
