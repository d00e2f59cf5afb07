package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.roads.DrawnPlaces;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TravelMatrix;
import dev.dogleg.travel.TravelTimes;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;

/** The seeded weeks of a ledger run: opens the maps they lie on, each once. */
final class LedgerWeeks {
  private static final String GRID = "grid";

  private final LedgerOptions options;
  private final Map<String, DrawnPlaces> opened = new HashMap<>();

  /**
   * Opens the maps; those opened for the first time are read, 7 to 20 processor seconds each.
   *
   * @param options which weeks
   * @param root the project's folder; extracts lie beside it in {@code ../shared/maps}
   * @throws IllegalArgumentException where a map is not there
   */
  LedgerWeeks(LedgerOptions options, Path root) {
    this.options = options;
    for (String map : options.maps()) {
      if (!map.equals(GRID)) {
        opened.put(map, open(map, root));
      }
    }
  }

  /**
   * A week.
   *
   * @param seed seed
   */
  WeekRequest week(long seed) {
    RoadWeeks.Shape shape = options.shape();
    String map = options.map(seed);
    if (!map.equals(GRID)) {
      TravelMatrix drives = opened.get(map).drives(shape.places(), seed);
      return RoadWeeks.week(
          seed, shape, new BandedTravelTimes(drives, StarterTraffic.bands(drives.roadClasses())));
    }
    if (options.rules() || options.water()) {
      return RoadWeeks.week(seed, shape, grid(seed, shape.bookings() + 1));
    }
    return CustomaryWeeks.week(seed, customary(shape.bookings()));
  }

  /** Drives over 20 by 16 km; one door more than bookings is where tanks are filled. */
  private TravelTimes grid(long seed, int doors) {
    return CustomaryWeeks.week(seed, customary(doors)).days().get(0).travel();
  }

  private CustomaryWeeks.Shape customary(int bookings) {
    return new CustomaryWeeks.Shape(
        bookings, options.vans(), options.fill(), true, Long.MAX_VALUE / 4);
  }

  private static DrawnPlaces open(String name, Path root) {
    Path sample = root.resolve("maps-sample").resolve(name + ".osm.pbf");
    Path map =
        Files.exists(sample) ? sample : root.resolve("../shared/maps").resolve(name + ".osm.pbf");
    if (!Files.exists(map)) {
      throw new IllegalArgumentException("no map " + map);
    }
    return DrawnPlaces.of(map, root.resolve("router-core/target/ledger-maps"));
  }
}
