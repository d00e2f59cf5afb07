package dev.dogleg.sampletown;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.sampletown.osm.PbfFile;
import dev.dogleg.sampletown.town.Brindlewick;
import dev.dogleg.sampletown.town.TownMap;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * The generator still writes what is committed; if not: run the command of the README, and look at
 * the diff.
 */
class CommittedFilesTest {
  private static final TownMap TOWN = Brindlewick.draw();

  @Test
  void mapHasTheSameBytes() throws IOException {
    byte[] committed = Files.readAllBytes(Path.of(SampleTown.MAP_FILE));
    assertArrayEquals(committed, PbfFile.bytes(TOWN.map()));
  }

  @Test
  void landmarksHaveTheSameText() throws IOException {
    assertEquals(Files.readString(Path.of(SampleTown.LANDMARKS_FILE)), SampleTown.landmarks(TOWN));
  }

  @Test
  void filesAreSmall() throws IOException {
    assertTrue(Files.size(Path.of(SampleTown.MAP_FILE)) <= 2_000_000);
    assertTrue(Files.size(Path.of(SampleTown.PICTURE_FILE)) <= 200_000);
  }
}
