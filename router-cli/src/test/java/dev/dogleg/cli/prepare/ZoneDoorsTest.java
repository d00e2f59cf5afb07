package dev.dogleg.cli.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.csv.BookReader;
import dev.dogleg.cli.csv.ReadOptions;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.model.Book;
import dev.dogleg.model.Place;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Which doors lie in which zone, on the sample map: town ring. */
class ZoneDoorsTest {
  private static final Path ROOT =
      Path.of(System.getProperty("dogleg.root")).toAbsolutePath().normalize();
  private static final String VERMILION = "12 Vermilion Street, Brindlewick";
  private static final String NORTHFIELD = "115 North 10th Street, Northfield";

  @TempDir Path dir;
  private final Faults faults = new Faults();

  private Optional<ZoneDoors> doors(String zones) throws IOException {
    Files.writeString(
        dir.resolve("business.yaml"),
        """
        country: US
        time_zone: Etc/GMT+8
        groomers:
          - name: Marlo Finch
            home: 45 Hazel Avenue, Brindlewick
            hours: {mon: "8:00-18:00"}
        vans:
          - name: Bluebell
        """);
    // Two clients at one door, one nobody knows where, one without a booking.
    Files.writeString(
        dir.resolve("clients.csv"),
        "client,address\nAda,\"%s\"\nHob,\"%s\"\nBo,\"%s\"\nNo,\"1 Nowhere Street\"\n"
            .formatted(VERMILION, VERMILION, NORTHFIELD));
    Files.writeString(dir.resolve("bookings.csv"), "client,pets\nAda,Rex\n");
    if (!zones.isEmpty()) {
      Files.writeString(
          dir.resolve("zones.csv"),
          "zone,days,postcodes,from,minutes,strength,districts\n" + zones);
    }
    Book book = BookReader.read(dir, ReadOptions.of(StarterTables.load())).book().orElseThrow();
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Console console = new Console(nowhere, nowhere, false, StandardCharsets.UTF_8);
    try (MapInUse map =
        new MapInUse(
            ROOT.resolve("maps-sample/brindlewick.osm.pbf"),
            ROOT.resolve("router-cli/target/test-cache"),
            console,
            faults)) {
      return ZoneDoors.of(book, map, new LookUps(map, book.clients()), new Rows(), faults);
    }
  }

  private static List<String> addresses(List<Place> places) {
    return places.stream().map(Place::address).toList();
  }

  @Test
  void withoutZonesEverybodyIsEverywhereAndOneDoorCountsOnce() throws IOException {
    ZoneDoors doors = doors("").orElseThrow();
    assertEquals(List.of(ZoneDoors.EVERYWHERE), doors.zones());
    assertEquals(List.of(VERMILION, NORTHFIELD), addresses(doors.doors(ZoneDoors.EVERYWHERE)));
    assertEquals(List.of(), doors.outside());
    assertEquals(List.of("address-not-found"), faults.all().stream().map(Fault::code).toList());
  }

  @Test
  void zonesByMinutesAndWhatLiesInNone() throws IOException {
    ZoneDoors doors =
        doors("Around,mon,,\"" + VERMILION + "\",2,must\nFar,mon,99999,,,rather\n").orElseThrow();
    assertEquals(List.of("Around", "Far"), doors.zones());
    assertEquals(List.of(VERMILION), addresses(doors.doors("Around")));
    assertEquals(List.of(), doors.doors("Far"));
    assertEquals(List.of(NORTHFIELD), addresses(doors.outside()));
    assertThrows(IllegalArgumentException.class, () -> doors.doors("Near"));
  }

  @Test
  void zonesByDistrictsOfTheMap() throws IOException {
    ZoneDoors doors = doors("Up,mon,,,,must,northfield; Halyard\n").orElseThrow();
    assertEquals(List.of(NORTHFIELD), addresses(doors.doors("Up")));
    assertEquals(List.of(VERMILION), addresses(doors.outside()));
  }

  @Test
  void aDistrictThatCannotBeUsedStopsTheRunAndSaysWhichIsNear() throws IOException {
    // The town itself is a point of the sample map that 26,600 addresses bear as their city.
    assertTrue(doors("Up,mon,,,,must,Nortfield; Atlantis; Brindlewick\n").isEmpty());
    List<Fault> found =
        faults.all().stream().filter(one -> one.code().contains("district")).toList();
    assertEquals(
        List.of("unknown-district", "unknown-district", "district-by-addresses"),
        found.stream().map(Fault::code).toList());
    assertEquals("did you mean Northfield?", found.get(0).hint());
    assertTrue(
        found.get(1).hint().startsWith("the map has Brindlewick, Currycombe"), found.get(1).hint());
    assertEquals("zones.csv", found.get(0).where().file());
  }

  @Test
  void aZoneThatCountsFromNowhereStopsTheRun() throws IOException {
    assertTrue(doors("Around,mon,,\"1 Nowhere Street\",2,must\n").isEmpty());
    assertTrue(faults.stops());
  }
}
