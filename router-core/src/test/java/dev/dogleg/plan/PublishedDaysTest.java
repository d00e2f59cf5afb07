package dev.dogleg.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * A quick part of the published days, proven at their best known values; all of them: {@link
 * PublishedRun}. Sources: Langevin et al. 1993, Dumas et al. 1995, Pesant et al. 1998 (collection
 * of López-Ibáñez and Blum), Arigliano et al. 2018 (time-dependent).
 */
class PublishedDaysTest {
  private static final Set<String> QUICK =
      Set.of(
          "Langevin/N20ft301.dat",
          "Langevin/N40ft201.dat",
          "Langevin/N60ft201.dat",
          "Langevin/N60ft204.dat",
          "Dumas/n20w20.001.txt",
          "Dumas/n20w60.003.txt",
          "Dumas/n40w20.001.txt",
          "Dumas/n40w20.002.txt",
          "SolomonPotvinBengio/rc_201.1.txt",
          "SolomonPotvinBengio/rc_201.4.txt",
          "td/15_70_A_100_A1",
          "td/15_98_B_100_C1");

  @Test
  void aQuickPartIsProvenAtTheBestKnownValues() throws Exception {
    Path shared = Path.of(System.getProperty("dogleg.shared", "../shared"));
    assumeTrue(Files.isDirectory(shared.resolve("bench")), "skipped: no benchmarks at " + shared);
    List<PublishedResults.Row> rows = new PublishedResults(shared).solve(QUICK::contains, 60);
    assertEquals(
        List.of(),
        rows.stream().filter(row -> !row.agrees()).map(PublishedResults.Row::toString).toList());
    assertEquals(true, rows.size() >= QUICK.size(), "rows " + rows.size());
  }
}
