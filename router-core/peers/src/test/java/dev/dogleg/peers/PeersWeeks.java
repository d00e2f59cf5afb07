package dev.dogleg.peers;

import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.CustomaryWeeks;
import dev.dogleg.plan.week.RoadWeeks;
import dev.dogleg.roads.DrawnPlaces;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Overloaded weeks of one van as the peers can model them: no traffic, break, water or rules. */
final class PeersWeeks {
  private static final double LOAD = 1.15;
  private static final long NO_LIMIT = Long.MAX_VALUE / 4;

  private final int bookings;

  /** The map; empty where the doors are invented. */
  private final Optional<DrawnPlaces> places;

  /**
   * Weeks of so many bookings.
   *
   * @param bookings number of bookings
   * @param map name of an extract beside the project; empty: invented doors
   * @throws IllegalArgumentException where the extract is not there
   */
  PeersWeeks(int bookings, Optional<String> map) {
    this.bookings = bookings;
    places = map.map(PeersWeeks::open);
  }

  private static DrawnPlaces open(String name) {
    Path map = Path.of(System.getProperty("dogleg.shared"), "maps", name + ".osm.pbf");
    if (!Files.exists(map)) {
      throw new IllegalArgumentException("no map " + map);
    }
    return DrawnPlaces.of(map, Path.of("target", "peer-maps"));
  }

  /**
   * A week; of a map the same as in the week ledger, but for what the peers cannot model.
   *
   * @param seed seed
   */
  WeekRequest week(long seed) {
    if (places.isEmpty()) {
      return CustomaryWeeks.week(
          seed, new CustomaryWeeks.Shape(bookings, 1, LOAD, false, NO_LIMIT));
    }
    RoadWeeks.Shape shape = new RoadWeeks.Shape(bookings, 1, LOAD, false, false, NO_LIMIT);
    TravelMatrix drives = places.get().drives(shape.places(), seed);
    WeekRequest week =
        RoadWeeks.week(
            seed, shape, new BandedTravelTimes(drives, TrafficBands.none(drives.roadClasses())));
    return new WeekRequest(
        week.days().stream().map(PeersWeeks::withoutBreak).toList(),
        week.bookings(),
        week.prices(),
        week.seed(),
        week.effort());
  }

  private static WeekDay withoutBreak(WeekDay day) {
    return new WeekDay(day.shift().resting(Optional.empty()), day.travel(), DayTerms.NONE);
  }
}
