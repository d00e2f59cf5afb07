package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.MapDraft;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.Stroke;
import dev.dogleg.sampletown.draw.Tags;
import dev.dogleg.sampletown.osm.OsmRelation.Kind;
import dev.dogleg.sampletown.osm.OsmRelation.Member;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Forbidden and prescribed turns. */
final class TurnRestrictions {

  /** At the crossing of two streets: coming from a side, going to a side (degrees, 0 is east). */
  private record Turn(String kind, String from, double fromSide, String to, double toSide) {}

  private static final List<Turn> TURNS =
      List.of(
          new Turn("no_left_turn", "High Street", 270, "East Market Street", 180),
          new Turn("no_left_turn", "East Market Street", 180, "High Street", 90),
          new Turn("no_right_turn", "High Street", 90, "East Market Street", 180),
          new Turn("only_straight_on", "Station Road", 90, "Station Road", 270),
          new Turn("no_u_turn", "Halyard Boulevard", 90, "Halyard Boulevard", 90),
          new Turn("no_left_turn", "High Street", 270, "North 5th Street", 180),
          new Turn("no_left_turn", "High Street", 270, "North 9th Street", 180),
          new Turn("only_right_turn", "Dogwood Avenue", 90, "East Market Street", 180),
          new Turn("no_straight_on", "North 10th Street", 0, "North 10th Street", 180));

  /** Where a turn whose two streets are one street lies. */
  private static final List<String> CROSSED_BY =
      List.of("", "", "", "West Market Street", "46th Road", "", "", "", "High Street");

  private final List<Coordinate> vias = new ArrayList<>();

  List<Coordinate> vias(List<Stroke> joined) {
    for (int i = 0; i < TURNS.size(); i++) {
      Turn turn = TURNS.get(i);
      String other = CROSSED_BY.get(i).isEmpty() ? turn.to : CROSSED_BY.get(i);
      vias.add(common(joined, turn.from, other));
    }
    return vias;
  }

  private static Coordinate common(List<Stroke> joined, String one, String other) {
    for (Stroke a : joined) {
      for (Stroke b : joined) {
        if (a.name().equals(one) && b.name().equals(other)) {
          for (Coordinate point : a.points()) {
            if (b.points().contains(point)) {
              return point;
            }
          }
        }
      }
    }
    throw new IllegalStateException(one + " and " + other + " do not meet");
  }

  void write(Ways ways, MapDraft draft) {
    for (int i = 0; i < TURNS.size(); i++) {
      Turn turn = TURNS.get(i);
      Coordinate via = vias.get(i);
      draft.relation(
          List.of(
              new Member(Kind.WAY, way(ways, turn.from, via, turn.fromSide), "from"),
              new Member(Kind.NODE, draft.corner(via), "via"),
              new Member(Kind.WAY, way(ways, turn.to, via, turn.toSide), "to")),
          Tags.of("type", "restriction", "restriction", turn.kind));
    }
  }

  private static long way(Ways ways, String name, Coordinate via, double side) {
    for (Ways.Written way : ways.named(name)) {
      List<Coordinate> points = way.stroke().points();
      boolean starts = points.get(0).equals2D(via);
      if (starts || way.stroke().end().equals2D(via)) {
        Coordinate next = starts ? points.get(1) : points.get(points.size() - 2);
        double turned = Math.abs(Plane.degrees(via, next) - side) % 360;
        if (Math.min(turned, 360 - turned) < 45) {
          return way.id();
        }
      }
    }
    throw new IllegalStateException("no piece of " + name + " at the turn");
  }
}
