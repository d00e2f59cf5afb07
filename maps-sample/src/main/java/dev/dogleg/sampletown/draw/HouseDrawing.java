package dev.dogleg.sampletown.draw;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Writes houses into the map: as a point, as an outline, or as a line of numbers. */
public final class HouseDrawing {
  private static final double HALF_WIDTH_METRES = 5;
  private static final double HALF_DEPTH_METRES = 4;

  private final MapDraft draft;
  private final List<House> houses = new ArrayList<>();
  private final List<House> implied = new ArrayList<>();

  /**
   * Writes into a draft.
   *
   * @param draft the map
   */
  public HouseDrawing(MapDraft draft) {
    this.draft = draft;
  }

  /**
   * Writes an address point.
   *
   * @param house the house
   * @return id of the node
   */
  public long node(House house) {
    houses.add(house);
    return draft.node(house.door(), house.tags());
  }

  /**
   * Writes a building with the address on it.
   *
   * @param house the house
   * @param street which its front faces
   */
  public void outline(House house, Stroke street) {
    houses.add(house);
    double at = street.metresAt(house.door());
    double degrees = Plane.degrees(street.at(at - 2), street.at(at + 2));
    List<Long> corners = new ArrayList<>();
    for (int[] corner : new int[][] {{-1, -1}, {1, -1}, {1, 1}, {-1, 1}}) {
      Coordinate along = Plane.step(house.door(), degrees, corner[0] * HALF_WIDTH_METRES);
      Coordinate place = Plane.step(along, degrees + 90, corner[1] * HALF_DEPTH_METRES);
      corners.add(draft.node(place, Tags.of()));
    }
    corners.add(corners.get(0));
    draft.wayOf(corners, Tags.with(Tags.of("building", "house"), tagArray(house)));
  }

  /**
   * Writes the first and the last house, and a line that stands for those between.
   *
   * @param row houses of one side of a street, numbers rising by two
   */
  public void interpolated(List<House> row) {
    House first = row.get(0);
    House last = row.get(row.size() - 1);
    int number = Integer.parseInt(first.number());
    draft.wayOf(
        List.of(node(first), node(last)),
        Tags.of("addr:interpolation", number % 2 == 0 ? "even" : "odd"));
    implied.addAll(row.subList(1, row.size() - 1));
  }

  /** {@return all houses that bear a number in the map} */
  public List<House> houses() {
    return houses;
  }

  /** {@return all houses that only a line of numbers stands for} */
  public List<House> implied() {
    return implied;
  }

  private static String[] tagArray(House house) {
    return house.tags().entrySet().stream()
        .flatMap(tag -> java.util.stream.Stream.of(tag.getKey(), tag.getValue()))
        .toArray(String[]::new);
  }
}
