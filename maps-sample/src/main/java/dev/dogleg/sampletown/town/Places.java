package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.MapDraft;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.Tags;
import dev.dogleg.sampletown.osm.OsmRelation.Kind;
import dev.dogleg.sampletown.osm.OsmRelation.Member;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Polygon;

/** Names of the town, its districts and villages, as points and as boundaries. */
final class Places {
  private final MapDraft draft;
  private final List<District> districts;

  Places(MapDraft draft, List<District> districts) {
    this.draft = draft;
    this.districts = districts;
  }

  void write() {
    draft.node(Plane.at(0, 150), Tags.of("place", "town", "name", "Brindlewick"));
    for (District district : districts) {
      Coordinate middle = district.area().getCentroid().getCoordinate();
      draft.node(Plane.at(middle.x, middle.y), Tags.of("place", "suburb", "name", district.name()));
      boundary(district.area(), district.name(), "10", district.postcode());
    }
    for (Village village : Village.all()) {
      draft.node(village.centre(), Tags.of("place", "village", "name", village.name()));
      boundary(village.area(), village.name(), "8", village.postcode());
    }
    water();
  }

  private void boundary(Polygon area, String name, String level, String postcode) {
    Coordinate[] ring = area.getExteriorRing().getCoordinates();
    List<Coordinate> edge = java.util.Arrays.stream(ring).map(c -> Plane.at(c.x, c.y)).toList();
    long first = draft.node(edge.get(0), Map.of());
    List<Long> nodes = new java.util.ArrayList<>(List.of(first));
    edge.subList(1, edge.size() - 1).forEach(c -> nodes.add(draft.node(c, Map.of())));
    nodes.add(first);
    long way = draft.wayOf(nodes, Tags.of("boundary", "administrative", "admin_level", level));
    draft.relation(
        List.of(new Member(Kind.WAY, way, "outer")),
        Tags.of(
            "type",
            "boundary",
            "boundary",
            "administrative",
            "admin_level",
            level,
            "name",
            name,
            "postal_code",
            postcode));
  }

  private void water() {
    List<Coordinate> west = Ground.bank(-Ground.RIVER_HALF_WIDTH_METRES);
    List<Coordinate> east = new java.util.ArrayList<>(Ground.bank(Ground.RIVER_HALF_WIDTH_METRES));
    java.util.Collections.reverse(east);
    List<Coordinate> ring = new java.util.ArrayList<>(west);
    ring.addAll(east);
    ring.add(west.get(0));
    draft.way(ring, Tags.of("natural", "water", "water", "river"));
  }
}
