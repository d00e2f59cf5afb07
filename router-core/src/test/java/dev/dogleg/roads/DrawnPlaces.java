package dev.dogleg.roads;

import dev.dogleg.travel.TravelMatrix;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;

/** Drives among seeded places of a real map that all reach each other, for seeded weeks. */
public final class DrawnPlaces {
  private static final int SPARE_PLACES = 20;

  private final String name;
  private final RoadNetwork roads;

  private DrawnPlaces(String name, RoadNetwork roads) {
    this.name = name;
    this.roads = roads;
  }

  /**
   * Opens a map; the first time it is read, which takes 7 to 20 processor seconds.
   *
   * @param map an OpenStreetMap extract
   * @param cache folder in which it is kept for the next time
   * @return its places; the roads stay open as long as the process
   */
  public static DrawnPlaces of(Path map, Path cache) {
    return new DrawnPlaces(
        map.getFileName().toString().replace(".osm.pbf", ""),
        RoadNetwork.open(map, VanCard.starter(), cache, Progress.SILENT));
  }

  /** {@return the map's name, without its ending} */
  public String name() {
    return name;
  }

  /**
   * Drives among places drawn beside the map's roads.
   *
   * @param count number of places, 1 or more
   * @param seed seed of the draw
   * @return free-flow drives by {@link RoadNetwork#matrix}; every place reaches every other
   * @throws IllegalStateException where so many places of the draw do not reach each other
   */
  public TravelMatrix drives(int count, long seed) {
    List<RoadPoint> drawn = drawn(count, seed);
    TravelMatrix all = roads.matrix(drawn);
    return all.part(kept(all, count));
  }

  /**
   * Places drawn so.
   *
   * @param count number of places, 1 or more
   * @param seed seed of the draw
   * @return places that {@link #drives(int, long)} speaks of
   * @throws IllegalStateException where so many places of the draw do not reach each other
   */
  public List<RoadPoint> points(int count, long seed) {
    List<RoadPoint> drawn = drawn(count, seed);
    return IntStream.of(kept(roads.matrix(drawn), count)).mapToObj(drawn::get).toList();
  }

  /**
   * Drives among places of this map.
   *
   * @param places the places
   * @return free-flow drives by {@link RoadNetwork#matrix}
   */
  public TravelMatrix drives(List<RoadPoint> places) {
    return roads.matrix(places);
  }

  private List<RoadPoint> drawn(int count, long seed) {
    return RandomPlaces.draw(roads, count + count / 2 + SPARE_PLACES, seed);
  }

  private int[] kept(TravelMatrix all, int count) {
    int most = 0;
    for (int place = 1; place < all.size(); place++) {
      most = bothWays(all, place).length > bothWays(all, most).length ? place : most;
    }
    int[] kept = new int[count];
    int size = 0;
    for (int place : bothWays(all, most)) {
      int candidate = place;
      if (size < count
          && IntStream.of(kept).limit(size).allMatch(other -> bothWays(all, candidate, other))) {
        kept[size++] = place;
      }
    }
    if (size < count) {
      throw new IllegalStateException(
          "only " + size + " of " + all.size() + " places of " + name + " reach each other");
    }
    return kept;
  }

  private static int[] bothWays(TravelMatrix all, int place) {
    return IntStream.range(0, all.size()).filter(other -> bothWays(all, place, other)).toArray();
  }

  private static boolean bothWays(TravelMatrix all, int one, int other) {
    return all.reaches(one, other) && all.reaches(other, one);
  }
}
