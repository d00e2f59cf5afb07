package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.GroomEstimator;
import dev.dogleg.groom.GroomQuestion;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.Sizes;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.model.Species;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Own groom tables in a book folder. */
class OwnTablesTest {
  private static final GroomTables STARTER = StarterTables.load();

  @TempDir Path folder;

  private static int fullGroomMinutes(GroomTables tables) {
    GroomQuestion dog =
        GroomQuestion.of(
            tables.look(Optional.of(Species.DOG), "Cockapoo").withSize(Sizes.weighed(8_000)),
            tables.order(Species.DOG, "full", Where.NOWHERE, new Faults()).orElseThrow());
    return new GroomEstimator(tables).estimate(dog).time().quantileSeconds(500) / 60;
  }

  @Test
  void folderWithoutTablesHasTheStarters() {
    assertSame(STARTER, OwnTables.read(folder, STARTER, new Faults()));
    assertEquals(75, fullGroomMinutes(STARTER));
  }

  @Test
  void oneRowOfOnesOwnIsEnough() throws Exception {
    Files.writeString(
        folder.resolve("groom-times.csv"),
        """
        species;service;size;coat;minutes;Spread New;spread_known;provenance;my remark
        dog;full;SMALL;CURLY;66;0.2;0.1;my log;since spring
        """);
    Faults faults = new Faults();
    assertEquals(66, fullGroomMinutes(OwnTables.read(folder, STARTER, faults)));
    assertTrue(faults.isEmpty(), () -> faults.all().toString());
  }

  @Test
  void badRowIsSetAsideWithItsPlace() throws Exception {
    Files.writeString(
        folder.resolve("groom-times.csv"),
        """
        species,service,size,coat,minutes,spread_new,spread_known,provenance
        dog,full,SMALL,CURLY,sixty,0.2,0.1,my log
        """);
    Faults faults = new Faults();
    assertEquals(75, fullGroomMinutes(OwnTables.read(folder, STARTER, faults)));
    assertEquals("groom-times.csv:2:minutes", faults.all().get(0).where().toString());
    assertEquals(Severity.ASIDE, faults.all().get(0).severity());
  }
}
