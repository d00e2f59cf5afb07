package dev.dogleg.sampletown.draw;

import dev.dogleg.sampletown.osm.OsmMap;
import dev.dogleg.sampletown.osm.OsmNode;
import dev.dogleg.sampletown.osm.OsmRelation;
import dev.dogleg.sampletown.osm.OsmWay;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;

/** The map being drawn: gives out ids, and turns metres into degrees. */
public final class MapDraft {
  private static final double CENTRE_LAT = -48.88;
  private static final double CENTRE_LON = -123.39;
  private static final double METRES_PER_DEGREE = 111_195;
  private static final double LON_METRES_PER_DEGREE =
      METRES_PER_DEGREE * StrictMath.cos(StrictMath.toRadians(CENTRE_LAT));

  private final List<OsmNode> nodes = new ArrayList<>();
  private final List<OsmWay> ways = new ArrayList<>();
  private final List<OsmRelation> relations = new ArrayList<>();
  private final Map<Coordinate, Long> corners = new HashMap<>();

  /**
   * Finds the latitude of a point.
   *
   * @param point in metres
   * @return units of 10⁻⁷ degrees
   */
  public static int latE7(Coordinate point) {
    double y = point.y + 110 * StrictMath.sin(point.x / 2300 + 0.6);
    return (int) Math.rint((CENTRE_LAT + y / METRES_PER_DEGREE) * 1e7);
  }

  /**
   * Finds the longitude of a point. The sheet is bent a little on the way, so that no street of a
   * grid is quite straight.
   *
   * @param point in metres
   * @return units of 10⁻⁷ degrees
   */
  public static int lonE7(Coordinate point) {
    double x = point.x + 90 * StrictMath.sin(point.y / 1900) + 0.06 * point.y;
    return (int) Math.rint((CENTRE_LON + x / LON_METRES_PER_DEGREE) * 1e7);
  }

  /**
   * Adds a node of its own.
   *
   * @param point in metres
   * @param tags of the node
   * @return its id
   */
  public long node(Coordinate point, Map<String, String> tags) {
    long id = nodes.size() + 1L;
    nodes.add(new OsmNode(id, latE7(point), lonE7(point), tags));
    return id;
  }

  /**
   * Finds or adds the node that all ways through a point share.
   *
   * @param point in metres
   * @return its id
   */
  public long corner(Coordinate point) {
    Long known = corners.get(point);
    if (known == null) {
      known = node(point, Map.of());
      corners.put(point, known);
    }
    return known;
  }

  /**
   * Tags the node of a corner that a way passes.
   *
   * @param point in metres, exactly a corner
   * @param keysAndValues key, value, ...
   */
  public void tagCorner(Coordinate point, String... keysAndValues) {
    Long id = corners.get(point);
    if (id == null) {
      throw new IllegalArgumentException("no way passes " + point);
    }
    int index = (int) (id - 1);
    OsmNode old = nodes.get(index);
    nodes.set(
        index, new OsmNode(id, old.latE7(), old.lonE7(), Tags.with(old.tags(), keysAndValues)));
  }

  /**
   * Adds a way through corners.
   *
   * @param points in metres
   * @param tags of the way
   * @return its id
   */
  public long way(List<Coordinate> points, Map<String, String> tags) {
    return wayOf(points.stream().map(this::corner).toList(), tags);
  }

  /**
   * Adds a way through nodes.
   *
   * @param nodeIds ids of the nodes
   * @param tags of the way
   * @return its id
   */
  public long wayOf(List<Long> nodeIds, Map<String, String> tags) {
    long id = ways.size() + 1L;
    ways.add(new OsmWay(id, nodeIds, new LinkedHashMap<>(tags)));
    return id;
  }

  /**
   * Adds a relation.
   *
   * @param members its members
   * @param tags of the relation
   * @return its id
   */
  public long relation(List<OsmRelation.Member> members, Map<String, String> tags) {
    long id = relations.size() + 1L;
    relations.add(new OsmRelation(id, members, tags));
    return id;
  }

  /** {@return the map as drawn so far} */
  public OsmMap map() {
    return new OsmMap(nodes, ways, relations);
  }
}
