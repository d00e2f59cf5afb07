package dev.dogleg.address;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * The page docs/ADDRESSES.md: its example is one that a test runs, and it names every group of the
 * folding table.
 */
class AddressesPageTest {
  private static final Path ROOT = Path.of(System.getProperty("dogleg.root"));

  @Test
  void itsExampleIsRunBySampleMapLookUpTest() throws IOException {
    String page = Files.readString(ROOT.resolve("docs/ADDRESSES.md"));
    Path test =
        ROOT.resolve("router-core/src/test/java/dev/dogleg/address/SampleMapLookUpTest.java");
    List<String> lines = Files.readAllLines(test);
    List<String> strips = lines.stream().map(String::strip).toList();
    String example =
        lines
            .subList(strips.indexOf("// example-begin") + 1, strips.indexOf("// example-end"))
            .stream()
            .map(line -> line.isEmpty() ? line : line.substring(4))
            .collect(Collectors.joining("\n"));
    assertTrue(page.contains("```java\n" + example + "\n```"), "not on the page:\n" + example);
  }

  @Test
  void everyGroupOfTheTableIsExplained() throws IOException {
    String page = Files.readString(ROOT.resolve("docs/ADDRESSES.md"));
    Set<String> missing = new TreeSet<>();
    for (FoldingTable.Row row : FoldingTable.whole().rows()) {
      if (!page.contains("| `" + row.group() + "` |")) {
        missing.add(row.group());
      }
    }
    assertEquals(Set.of(), missing);
  }
}
