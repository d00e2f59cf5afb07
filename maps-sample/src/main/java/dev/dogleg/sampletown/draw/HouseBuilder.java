package dev.dogleg.sampletown.draw;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;

/** Walks along every street and puts houses on both sides, odd on the left, even on the right. */
public final class HouseBuilder {
  private static final double CORNER_METRES = 17;
  private static final double SET_BACK_METRES = 13;
  private static final double APART_METRES = 12;
  private static final int ONE_IN_OUTLINE = 9;
  private static final int ONE_IN_SUFFIX = 40;

  private final List<Stroke> strokes;
  private final Clearance clearance;
  private final Map<Coordinate, Integer> touched = new HashMap<>();
  private final NearPoints built = new NearPoints();
  private final int[] street;
  private final Map<Integer, Integer> blocks = new HashMap<>();
  private final Map<String, int[]> counters = new HashMap<>();
  private final Function<Coordinate, Locality> locality;
  private final HouseDrawing drawing;
  private final Random random;

  /** The houses between two crossings on one side. */
  private record Row(List<Coordinate> doors, int side, int street, int block) {}

  /**
   * Prepares the walk.
   *
   * @param strokes joined strokes
   * @param locality tells the district of a point
   * @param drawing takes the houses
   * @param random decides gaps and outlines; advanced
   */
  public HouseBuilder(
      List<Stroke> strokes,
      Function<Coordinate, Locality> locality,
      HouseDrawing drawing,
      Random random) {
    this.strokes = strokes;
    this.locality = locality;
    this.drawing = drawing;
    this.random = random;
    this.clearance = new Clearance(strokes);
    this.street = SameStreet.numbers(strokes);
    for (Stroke stroke : strokes) {
      if (stroke.isRoad()) {
        new HashSet<>(stroke.points()).forEach(c -> touched.merge(c, 1, Integer::sum));
      }
    }
  }

  /**
   * Keeps a place free.
   *
   * @param door of a house built by other means
   */
  public void keepFree(Coordinate door) {
    built.add(door);
  }

  /** Builds all houses. */
  public void build() {
    for (int s = 0; s < strokes.size(); s++) {
      if (strokes.get(s).houses() != HouseStyle.NONE) {
        build(s);
      }
    }
  }

  private void build(int index) {
    Stroke stroke = strokes.get(index);
    List<Double> crossings = crossings(stroke);
    boolean scattered = stroke.houses() == HouseStyle.SCATTERED;

    int firstBlock = blocks.getOrDefault(street[index], 0);
    blocks.put(street[index], firstBlock + crossings.size() - 1);
    for (int block = 0; block + 1 < crossings.size(); block++) {
      double from = crossings.get(block) + CORNER_METRES;
      double to = crossings.get(block + 1) - CORNER_METRES;
      for (int side : new int[] {1, -1}) {
        List<Coordinate> doors = new ArrayList<>();
        double at = from + (scattered ? random.nextInt(300) : random.nextInt(4));
        while (at < to) {
          Coordinate door = stroke.beside(at, side * (SET_BACK_METRES + random.nextInt(4)));
          if (clearance.isFree(door, index) && !built.anyWithin(door, APART_METRES)) {
            doors.add(door);
            built.add(door);
          }
          at += scattered ? 150 + random.nextInt(500) : 17 + random.nextInt(7);
        }
        number(stroke, new Row(doors, side, street[index], firstBlock + block));
      }
    }
  }

  private List<Double> crossings(Stroke stroke) {
    List<Double> crossings = new ArrayList<>(List.of(0.0));
    double walked = 0;
    for (int i = 1; i + 1 < stroke.points().size(); i++) {
      walked += stroke.points().get(i - 1).distance(stroke.points().get(i));
      if (touched.getOrDefault(stroke.points().get(i), 0) > 1) {
        crossings.add(walked);
      }
    }
    crossings.add(stroke.length());
    return crossings;
  }

  private void number(Stroke stroke, Row row) {
    if (row.doors.isEmpty()) {
      return;
    }
    List<House> houses = new ArrayList<>();
    String before = "";
    for (Coordinate door : row.doors) {
      Locality here = locality.apply(row.doors.get(0));
      boolean suffix =
          stroke.houses() != HouseStyle.INTERPOLATED
              && !before.isEmpty()
              && !before.endsWith("a")
              && random.nextInt(ONE_IN_SUFFIX) == 0;
      String number = suffix ? before + "a" : next(stroke, row);
      houses.add(new House(number, stroke.name(), here, door));
      before = number;
    }
    if (stroke.houses() == HouseStyle.INTERPOLATED && houses.size() > 2) {
      drawing.interpolated(houses);
      return;
    }
    for (House house : houses) {
      if (random.nextInt(ONE_IN_OUTLINE) == 0) {
        drawing.outline(house, stroke);
      } else {
        drawing.node(house);
      }
    }
  }

  private String next(Stroke stroke, Row row) {
    boolean hundreds = stroke.houses() == HouseStyle.HUNDREDS;
    boolean hyphened = stroke.houses() == HouseStyle.HYPHENED;
    String key = row.street + (hundreds || hyphened ? "/" + row.block : "");
    int[] counter = counters.computeIfAbsent(key, k -> new int[] {-1, 0});
    int side = row.side > 0 ? 0 : 1;
    counter[side] += 2;
    if (hyphened) {
      return String.format("%d-%02d", 30 + row.block, counter[side]);
    }
    return Integer.toString(hundreds ? 100 * (row.block + 1) + counter[side] : counter[side]);
  }
}
