package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Real ring: {@code plan} on real extracts with bookings at addresses drawn from the extract itself
 * by a fixed seed. Map data © OpenStreetMap contributors, ODbL.
 */
class RealMapPlanTest {
  private static final int DOORS = 7;
  private static final long SEED = 20270301L;

  @TempDir Path temp;

  @ParameterizedTest
  @CsvSource({
    "us-ny-queens-village-2016, US, America/New_York",
    "li-liechtenstein-2021, LI, Europe/Vaduz"
  })
  void aDayAtDrawnAddressesIsPlanned(String name, String country, String zone) throws IOException {
    Path map =
        Path.of(System.getProperty("dogleg.shared")).resolve("maps").resolve(name + ".osm.pbf");
    assumeTrue(Files.exists(map), "real map absent: " + map);
    List<String> addresses = DrawnAddresses.of(map, DOORS + 1, SEED);
    Path book = Files.createDirectories(temp.resolve(name));
    Files.writeString(
        book.resolve("business.yaml"),
        """
        name: Test Grooming
        country: %s
        time_zone: %s
        vans:
          - name: Bluebell
        groomers:
          - name: Marlo
            home: "%s"
            hours: {mon: "8:00-19:00"}
        """
            .formatted(country, zone, addresses.get(DOORS)));
    StringBuilder bookings = new StringBuilder("client,pet,address,service,breed,date\n");
    for (int i = 0; i < DOORS; i++) {
      bookings.append(
          "Client %d,Pet %d,\"%s\",bath,Beagle,2027-03-01\n".formatted(i, i, addresses.get(i)));
    }
    Files.writeString(book.resolve("bookings.csv"), bookings.toString());
    TestRun run = TestRun.of("plan", book.toString(), "--map", map.toString());
    String said = "seed " + SEED + " on " + name + "\n" + run.out() + run.err();
    assertTrue(run.exit() == 0 || run.exit() == 4, said);
    assertTrue(run.out().contains("Map data © OpenStreetMap contributors, ODbL"), said);
    assertTrue(run.out().contains("No plan can beat this."), said);
    long visits =
        Files.readAllLines(book.resolve("plan/plan.csv")).stream()
            .filter(line -> line.contains(",visit,"))
            .count();
    long aside = run.err().lines().filter(line -> line.matches("  bookings.csv:\\d+:.*")).count();
    assertEquals(DOORS, visits + (visits < DOORS ? aside : 0), said);
    assertTrue(visits >= DOORS - 2, said);
  }
}
