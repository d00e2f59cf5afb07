package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.cli.export.LearnedCsv;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.groom.Learned;
import dev.dogleg.groom.LearnedKind;
import dev.dogleg.groom.LearnedRow;
import dev.dogleg.groom.learn.LearnSettings;
import dev.dogleg.groom.learn.Lesson;
import dev.dogleg.groom.learn.LoggedDrive;
import dev.dogleg.groom.learn.LoggedVisit;
import dev.dogleg.groom.learn.VisitLearner;
import dev.dogleg.groom.learn.VisitOutcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The visit log and the learned values as files. */
class LearnTablesTest {
  private static final LocalDate TODAY = LocalDate.of(2027, 4, 30);

  @TempDir Path dir;

  private static List<String> codes(Faults faults) {
    return faults.all().stream().map(Fault::code).toList();
  }

  private VisitLog log(String text, Faults faults) {
    Folder folder = GoodBook.in(dir).with("visits.csv", text);
    return VisitLog.read(dir.resolve("visits.csv"), "visits.csv", folder.read(), TODAY, faults)
        .orElseThrow();
  }

  @Test
  void aRowMayNameABookingInsteadOfClientAndPets() {
    Faults faults = new Faults();
    VisitLog log =
        log(
            """
            Date;Booking;Started;Done
            2027-03-02;okafor.biscuit+gravy@2027-03-02;9:10;11:00
            2027-03-03;nobody@2027-03-02;9:10;11:00
            """,
            faults);
    assertEquals(List.of("unknown-booking"), codes(faults));
    LoggedVisit visit = log.visits().get(0);
    assertEquals(2, visit.pets().size());
    assertEquals(List.of("nails"), visit.pets().get(1).services());
    assertEquals(110 * 60, visit.groomSeconds());
    assertEquals(1, log.setAside());
  }

  @Test
  void drivesAreReadWithTheirBandAndRoadClasses() {
    Faults faults = new Faults();
    VisitLog log =
        log(
            """
            date,client,pet,arrived,started,done,outcome,planned_drive_minutes,drive_minutes,band,main_minutes,street_minutes
            2027-03-02,Okafor,Gravy,9:40,9:50,10:30,,7.5,9,,5,2.5
            2027-03-03,Okafor,Gravy,3:10,3:20,4pm,done,"7,5",9,Morning Peak,,
            2027-03-04,Okafor,Gravy,9:40,,,no show,7,0,,,
            """,
            faults);
    assertEquals(List.of("guess", "guess"), codes(faults));
    // 9:40 less 9 minutes is 9:31, which is midday by the starter table.
    assertEquals(
        Optional.of(new LoggedDrive(450, 540, "midday", Map.of("main", 300, "street", 150))),
        log.visits().get(0).drive());
    assertEquals("morning peak", log.visits().get(1).drive().orElseThrow().band());
    assertEquals(2_400, log.visits().get(1).groomSeconds());
    assertEquals(VisitOutcome.NO_SHOW, log.visits().get(2).outcome());
    assertEquals(Optional.empty(), log.visits().get(2).drive());
  }

  @Test
  void severalGroomersNeedAName() {
    Faults faults = new Faults();
    String two =
        Folder.CARD.replace(
            "vans:", "  - name: Sam\n    hours: {mon: 8:00-18:00}\n    home: 2 Orchard Row\nvans:");
    Folder folder =
        GoodBook.in(dir)
            .with("business.yaml", two)
            .with(
                "visits.csv",
                """
                date,groomer,client,pets,started,done
                2027-03-02,,Okafor,Gravy,9:50,10:30
                2027-03-02,Sam,Okafor,Biscuit,9:50,10:30
                2027-03-02,Pat,Okafor,Biscuit,11:50,12:30
                """);
    VisitLog log =
        VisitLog.read(dir.resolve("visits.csv"), "visits.csv", folder.read(), TODAY, faults)
            .orElseThrow();
    assertEquals(List.of("missing-cell", "unknown-groomer"), codes(faults));
    assertEquals("sam", log.visits().get(0).groomerId());
  }

  @Test
  void whatIsWrittenIsReadAgain() throws IOException {
    List<LearnedRow> rows =
        List.of(
            row(LearnedKind.PACE, "robin", 1_080, 0, true, "=mine, \"really\""),
            row(LearnedKind.SPREAD_KNOWN, "", 912, 0, false, ""),
            row(LearnedKind.DAY, "", 1_000, 47, false, "what all grooms of a day share"),
            row(LearnedKind.BREED, "Miniature Poodle", 955, 0, false, ""),
            row(LearnedKind.PET, "okafor.biscuit", 1_204, 61, false, "full: 90 min"),
            row(LearnedKind.DRIVE, "midday/main", 1_100, 0, false, ""),
            row(LearnedKind.DRIVE_LEG, "", 1_000, 143, false, ""));
    Files.writeString(dir.resolve("learned.csv"), LearnedCsv.text(rows, 1));
    Faults faults = new Faults();
    Learned read = LearnedTable.read(dir, faults);
    assertEquals(List.of(), faults.all());
    assertEquals(rows, read.rows());
    assertEquals(1.1, read.driveFactor("midday", "main"), 1e-12);
    assertEquals(1.0, read.driveFactor("midday", "street"), 1e-12);
  }

  private static LearnedRow row(
      LearnedKind kind, String what, int factor, int spread, boolean keep, String note) {
    return new LearnedRow(
        kind, what, factor, spread, 5, Optional.of(LocalDate.of(2027, 2, 1)), keep, note);
  }

  @Test
  void allThatALessonTeachesSurvivesTheFile() throws IOException {
    Faults faults = new Faults();
    Folder folder = GoodBook.in(dir);
    StringBuilder text = new StringBuilder("date,client,pets,started,done\n");
    for (int day = 1; day <= 9; day++) {
      text.append("2027-04-0")
          .append(day)
          .append(",Okafor,Gravy,9:00,9:5")
          .append(day)
          .append('\n');
    }
    VisitLog log = log(text.toString(), faults);
    ReadBook read = folder.read();
    Lesson lesson =
        new VisitLearner(read.tables(), read.book().orElseThrow(), LearnSettings.USUAL)
            .learn(log.visits(), TODAY);
    Files.writeString(dir.resolve("learned.csv"), LearnedCsv.text(lesson.learned().rows(), 1));
    assertEquals(lesson.learned().rows(), LearnedTable.read(dir, faults).rows());
    assertEquals(List.of(), faults.all());
    // The book reads it too, and its tables in force hold it.
    assertEquals(lesson.learned().rows(), folder.read().tables().learned().rows());
  }

  @Test
  void aRowThatCannotBeReadIsPassedOverAndANewerFileStopsTheRun() {
    Faults faults = new Faults();
    GoodBook.in(dir)
        .with(
            "learned.csv",
            """
            kind,what,factor,spread
            pace,,1.1,
            pet,okafor.biscuit,0.1,
            pet,okafor.biscuit,1.2,0.05
            pet,okafor.biscuit,1.3,0.05
            ,x,1,
            day,,,
            mood,x,1,
            """);
    Learned read = LearnedTable.read(dir, faults);
    assertEquals(
        List.of(
            "missing-cell",
            "bad-number",
            "duplicate-row",
            "missing-cell",
            "missing-cell",
            "unknown-kind"),
        codes(faults));
    assertEquals(1, read.rows().size());
    assertEquals(
        1_200, read.find(LearnedKind.PET, "okafor.biscuit").orElseThrow().factorPermille());
    Folder newer = GoodBook.in(dir).with("learned.csv", "kind,what,factor\nformat,2,\n");
    assertTrue(newer.read().faults().stops());
    assertEquals(List.of("newer-format"), codes(newer.read().faults()));
  }
}
