package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekPlan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Solomon's instances against published values; sources are named in {@link SolomonValues}.
 *
 * <p>The routes of {@code solomon/sol} were found by others, so they check the reading of the files
 * and of the convention: their length by the file is the value listed.
 */
class SolomonWeeksTest {
  private final Path bench =
      Path.of(System.getProperty("dogleg.shared", "../shared")).resolve("bench");

  private void needsBench() {
    assumeTrue(Files.isDirectory(bench), "skipped: no benchmarks at " + bench);
  }

  private SolomonFile file(String name, int customers) throws IOException {
    return SolomonFile.read(bench.resolve("solomon").resolve(name + ".txt"), customers);
  }

  @ParameterizedTest
  @ValueSource(strings = {"C101", "R101", "RC101"})
  void theFirst25CustomersAreProvenAtThePublishedOptimum(String name) throws IOException {
    needsBench();
    SolomonFile file = file(name, 25);
    WeekPlan plan = WeekPlanner.plan(SolomonWeeks.week(file, 1));
    double published = SolomonValues.read(bench).best(name, 25).orElseThrow();
    assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind());
    assertEquals(0, plan.leftOutCounted());
    assertEquals(
        Math.round(published * 10), SolomonWeeks.checkedTenths(file, SolomonWeeks.routes(plan)));
    assertEquals(published, SolomonWeeks.units(plan.costSixtieths()), 1e-9);
  }

  @Test
  void publishedRoutesHaveTheLengthListedForThem() throws IOException {
    needsBench();
    SolomonValues known = SolomonValues.read(bench);
    try (Stream<Path> solutions = Files.list(bench.resolve("solomon/sol"))) {
      for (Path solution : solutions.sorted().toList()) {
        String name = solution.getFileName().toString().replace(".sol", "");
        assertEquals(
            Math.round(known.best(name, 100).orElseThrow() * 10),
            SolomonWeeks.checkedTenths(file(name, 100), routes(solution)),
            name);
      }
    }
  }

  @Test
  void brokenRoutesAreNotMeasured() throws IOException {
    needsBench();
    SolomonFile file = file("C101", 3);
    assertEquals(
        List.of("customer 1", "window of 3", "numbers"),
        List.of(
            fault(file, List.of(List.of(3, 2), List.of(2))),
            fault(file, List.of(List.of(1, 3, 2))),
            fault(file, List.of(List.of(3, 2)))));
  }

  private static String fault(SolomonFile file, List<List<Integer>> routes) {
    return assertThrows(IllegalStateException.class, () -> SolomonWeeks.checkedTenths(file, routes))
        .getMessage()
        .replace("the plan breaks: ", "");
  }

  /** Lines {@code Route #k: customers}; the last line tells the cost. */
  private static List<List<Integer>> routes(Path solution) throws IOException {
    List<List<Integer>> routes = new ArrayList<>();
    for (String line : Files.readAllLines(solution)) {
      if (line.startsWith("Route")) {
        String[] words = line.substring(line.indexOf(':') + 1).strip().split("\\s+");
        routes.add(Arrays.stream(words).map(Integer::valueOf).toList());
      }
    }
    return routes;
  }
}
