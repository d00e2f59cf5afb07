package dev.dogleg.cli.export;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files of a run: all whole, or yesterday's. */
class WholeFilesTest {

  @TempDir Path folder;

  @Test
  void filesAreReplacedAndStaleOnesTakenAway() throws IOException {
    Files.writeString(folder.resolve("plan.csv"), "old");
    Files.writeString(folder.resolve("no-room.csv"), "old");
    WholeFiles files = new WholeFiles(folder);
    files.put("plan.csv", "new");
    files.put("no-room.csv", null);
    files.write();
    assertEquals("new", Files.readString(folder.resolve("plan.csv")));
    assertEquals(List.of("plan.csv"), names());
  }

  @Test
  void aRunThatCannotWriteLeavesYesterdaysFilesWhole() throws IOException {
    Files.writeString(folder.resolve("plan.csv"), "old");
    WholeFiles files = new WholeFiles(folder);
    files.put("plan.csv", "new");
    files.put("n".repeat(300), "no file system takes such a name");
    assertThrows(IOException.class, files::write);
    assertEquals("old", Files.readString(folder.resolve("plan.csv")));
    assertEquals(List.of("plan.csv"), names());
  }

  @Test
  void onlyTheOwnerReadsThem() throws IOException {
    assumeTrue(
        FileSystems.getDefault().supportedFileAttributeViews().contains("posix"),
        "no owners on this file system");
    WholeFiles files = new WholeFiles(folder.resolve("made here"));
    files.put("plan.csv", "new");
    files.write();
    assertEquals(
        "rw-------",
        PosixFilePermissions.toString(
            Files.getPosixFilePermissions(folder.resolve("made here/plan.csv"))));
    assertFalse(Files.exists(folder.resolve("plan.csv")));
  }

  private List<String> names() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(file -> file.getFileName().toString()).sorted().toList();
    }
  }
}
