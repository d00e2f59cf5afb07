package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Fault;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Small bad books, each named after what is wrong with it; {@code faults.txt} holds what is said.
 * Run with {@code -Ddogleg.rewrite=true} to write those files anew, then read the difference.
 */
class BadBooksTest {
  private static final Path BOOKS =
      Path.of(System.getProperty("dogleg.root"), "router-cli/src/test/resources/bad-books");

  static List<String> books() throws IOException {
    try (Stream<Path> folders = Files.list(BOOKS)) {
      return folders.map(folder -> folder.getFileName().toString()).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("books")
  void saysWhatIsWrong(String name) throws IOException {
    Path folder = BOOKS.resolve(name);
    ReadBook read = BookReader.read(folder, ReadOptions.of(Folder.TABLES));
    String said =
        read.faults().all().stream()
            .map(fault -> fault.severity() + " " + fault)
            .collect(Collectors.joining("\n", "", "\n"));
    Path golden = folder.resolve("faults.txt");
    if (Boolean.getBoolean("dogleg.rewrite")) {
      Files.writeString(golden, said);
    }
    assertEquals(Files.readString(golden), said, name);
    assertTrue(read.book().isPresent() != read.faults().stops(), "a book, or a reason to stop");
    for (Fault fault : read.faults().all()) {
      assertTrue(fault.where().row() > 0 || !fault.where().file().isEmpty(), fault.toString());
    }
  }
}
