package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The saving that {@code zones} prints is that of weeks which {@code plan} plans just so. */
class ZonesCommandTest {
  private static final Path GOLDEN =
      TestRun.ROOT.resolve("router-cli/src/test/golden/zones-report");

  @TempDir Path dir;

  @BeforeEach
  void layOut() throws IOException {
    try (Stream<Path> files = Files.walk(GOLDEN)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        if (!file.startsWith(GOLDEN.resolve("expected"))) {
          Path copy = dir.resolve(GOLDEN.relativize(file).toString());
          Files.createDirectories(copy.getParent());
          Files.copy(file, copy);
        }
      }
    }
  }

  private String[] on(String... words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.add(1, dir.toString());
    all.addAll(List.of("--map", TestRun.MAP.toString()));
    return all.toArray(String[]::new);
  }

  @Test
  void thePlannerDrivesAsMuchAsIsPrinted() throws IOException {
    TestRun run = TestRun.warm(on("zones", "--json"));
    assertEquals(0, run.exit(), run.err());
    JsonNode proposal = new ObjectMapper().readTree(run.out()).path("proposal");
    assertTrue(proposal.path("proven").asBoolean(), run.out());
    assertTrue(proposal.path("saves").asBoolean(), run.out());
    // Every visit that was not told may be on any of the three days, as the page says.
    String bookings = Files.readString(dir.resolve("bookings.csv"));
    Files.writeString(
        dir.resolve("bookings.csv"),
        bookings.replaceAll("2027-03-0[123](,\\w+,)\\R", "2027-03-01..2027-03-03$1\n"));
    assertEquals(8, Files.readString(dir.resolve("bookings.csv")).split("\\.\\.").length);
    for (String week : List.of("now", "proposed")) {
      assertEquals(
          proposal.path(week).path("drive_seconds").asInt(),
          planned(proposal.path(week).path("days")),
          60,
          week);
    }
  }

  /** Seconds of driving of the week that is planned with zones on some days. */
  private double planned(JsonNode days) throws IOException {
    StringBuilder zones = new StringBuilder();
    for (String line : Files.readString(GOLDEN.resolve("zones.csv")).split("\n")) {
      String[] cells = line.split(",", 3);
      List<String> words = new ArrayList<>();
      days.path(cells[0].replace("\"\"", "\"").replaceAll("^\"|\"$", ""))
          .forEach(word -> words.add(word.asText()));
      zones
          .append(cells[0])
          .append(',')
          .append(words.isEmpty() ? cells[1] : String.join(";", words))
          .append(',')
          .append(cells[2])
          .append('\n');
    }
    Files.writeString(dir.resolve("zones.csv"), zones);
    TestRun plan = TestRun.warm(on("plan", "--from", "2027-03-01", "--days", "3", "--fresh"));
    assertTrue(plan.exit() == 0 || plan.exit() == 4, plan.err());
    List<String> lines = Files.readAllLines(dir.resolve("plan/plan.csv"));
    int column = List.of(lines.get(0).split(",")).indexOf("drive_minutes");
    double minutes = 0;
    for (String line : lines.subList(1, lines.size())) {
      String cell = line.split(",(?=(?:[^\"]*\"[^\"]*\")*[^\"]*$)", -1)[column];
      minutes += cell.isEmpty() ? 0 : Double.parseDouble(cell);
    }
    return minutes * 60;
  }

  @Test
  void thePageNamesNobodyAndRunsNothing() throws IOException {
    Files.writeString(
        dir.resolve("zones.csv"),
        Files.readString(dir.resolve("zones.csv"))
            .replace("Far side", "<script>alert(1)</script>"));
    TestRun run = TestRun.warm(on("zones", "--weeks", "2"));
    assertEquals(0, run.exit(), run.err());
    String page = Files.readString(dir.resolve("plan/zones.html"));
    assertFalse(page.contains("<script"), "escaped");
    assertTrue(page.contains("&lt;script&gt;"));
    List<String> clients = Files.readAllLines(dir.resolve("clients.csv"));
    for (String line : clients.subList(1, clients.size())) {
      String name = line.split(",")[0];
      assertFalse(page.contains(name), "names " + name);
    }
    String elsewhere = page.replace("http://www.w3.org/2000/svg", "");
    assertFalse(elsewhere.contains("http:") || elsewhere.contains("https:"), "asks nobody");
    assertTrue(page.contains("default-src 'none'"));
  }

  @Test
  void withoutZonesOrPlanNothingIsWritten() throws IOException {
    Files.delete(dir.resolve("plan/plan.csv"));
    Files.writeString(dir.resolve("zones.csv"), "zone,days\n");
    Files.delete(dir.resolve("zones.geojson"));
    TestRun run = TestRun.warm(on("zones"));
    assertEquals(3, run.exit());
    assertTrue(run.err().contains("no-zones") && run.err().contains("missing-file"), run.err());
    assertFalse(Files.exists(dir.resolve("plan/zones.html")));
  }
}
