package dev.dogleg.roads;

import com.graphhopper.storage.BaseGraph;
import com.graphhopper.storage.index.LocationIndexTree;
import com.graphhopper.util.EdgeIteratorState;
import com.graphhopper.util.FetchMode;
import com.graphhopper.util.shapes.BBox;
import dev.dogleg.model.GeoPoint;
import java.util.Optional;
import java.util.TreeSet;

/**
 * Puts places on roads.
 *
 * <p>Among the drivable roads near a place, the nearest of a real network is taken; one that bears
 * the street's name is preferred where it is at most {@link #NAME_WORTH_METRES} farther, because
 * back lanes and side streets lie nearer to many a door than its own street. Roads cut off for this
 * van count only where nothing else is near. Ties go to the smaller edge number.
 */
final class Snapper {
  /** How much farther away a road of the right name may be. */
  static final double NAME_WORTH_METRES = 100;

  private static final double[] RINGS = {60, 250, SnapReport.FARTHEST_METRES};
  private static final double METRES_PER_DEGREE = 111_195;

  private final BaseGraph base;
  private final LocationIndexTree index;
  private final RoadGraph graph;
  private final int[] network;
  private final int[] networkSizes;
  private final String networkKey;

  Snapper(
      BaseGraph base, LocationIndexTree index, RoadGraph graph, int[] network, String networkKey) {
    this.base = base;
    this.index = index;
    this.graph = graph;
    this.network = network;
    this.networkSizes = Islands.sizes(network);
    this.networkKey = networkKey;
  }

  /** One road near the place. */
  private record Near(int edge, EdgeLine.Nearest spot, String name, boolean real, boolean agrees) {
    double metres() {
      return spot.metres();
    }
  }

  /** What is known of the roads near a place; null where there is none of a kind. */
  private static final class Choice {
    Near nearestReal;
    Near nearestNamed;
    Near nearestLoose;
    Near nearest;

    private static Near nearer(Near held, Near found) {
      return held == null || found.metres() < held.metres() ? found : held;
    }

    void see(Near road) {
      nearest = nearer(nearest, road);
      if (road.real) {
        nearestReal = nearer(nearestReal, road);
        nearestNamed = road.agrees ? nearer(nearestNamed, road) : nearestNamed;
      } else {
        nearestLoose = nearer(nearestLoose, road);
      }
    }

    Near taken() {
      if (nearestReal == null) {
        return nearestLoose;
      }
      boolean named =
          nearestNamed != null && nearestNamed.metres() <= nearestReal.metres() + NAME_WORTH_METRES;
      return named ? nearestNamed : nearestReal;
    }
  }

  SnapReport snap(GeoPoint place, String streetName) {
    String folded = StreetNames.fold(streetName);
    BBox bounds = base.getBounds();
    boolean off = !bounds.contains(place.lat(), place.lon());
    for (double metres : RINGS) {
      Choice choice = look(place, folded, metres);
      Near taken = choice.taken();
      boolean last = metres == SnapReport.FARTHEST_METRES;
      boolean settled =
          taken != null
              && taken.real
              && (folded.isEmpty() || taken.agrees)
              && taken.metres() <= metres;
      boolean farEnough =
          taken != null && taken.real && metres >= taken.metres() + NAME_WORTH_METRES;
      if (settled || farEnough || last) {
        return report(place, folded, choice, off);
      }
    }
    throw new AssertionError("the last ring always reports");
  }

  private Choice look(GeoPoint place, String folded, double metres) {
    double dLat = metres / METRES_PER_DEGREE;
    double dLon = dLat / Math.max(0.01, Math.cos(Math.toRadians(place.lat())));
    BBox box =
        new BBox(place.lon() - dLon, place.lon() + dLon, place.lat() - dLat, place.lat() + dLat);
    TreeSet<Integer> edges = new TreeSet<>();
    index.query(box, edges::add);
    Choice choice = new Choice();
    for (int edge : edges) {
      boolean drivable = graph.drivable(2 * edge) || graph.drivable(2 * edge + 1);
      boolean own = graph.original[edge] == edge && graph.lengthCm[edge] > 0;
      if (!drivable || !own || !graph.hasDoors(edge)) {
        continue;
      }
      EdgeIteratorState state = base.getEdgeIteratorState(edge, Integer.MIN_VALUE);
      EdgeLine.Nearest spot = new EdgeLine(state.fetchWayGeometry(FetchMode.ALL)).nearest(place);
      if (spot.metres() <= metres) {
        String name = state.getName();
        choice.see(new Near(edge, spot, name, real(edge), StreetNames.agrees(folded, name)));
      }
    }
    return choice;
  }

  private boolean real(int edge) {
    return isReal(network[2 * edge]) || isReal(network[2 * edge + 1]);
  }

  private boolean isReal(int number) {
    return number == 0 || (number > 0 && networkSizes[number] >= Islands.REAL_KEYS);
  }

  private SnapReport report(GeoPoint place, String folded, Choice choice, boolean off) {
    Near taken = choice.taken();
    if (taken == null) {
      return new SnapReport(
          place,
          Optional.empty(),
          -1,
          "",
          NameAgreement.NOT_ASKED,
          "",
          EntryKind.OPEN,
          false,
          false,
          off);
    }
    int lengthCm = graph.lengthCm[taken.edge];
    int offset = (int) Math.round(taken.spot.share() * lengthCm);
    boolean cutOff =
        choice.nearestLoose != null
            && taken.real
            && choice.nearestLoose.metres() + 1 < taken.metres();
    return new SnapReport(
        place,
        Optional.of(new RoadPoint(networkKey, taken.spot.point(), taken.edge, offset)),
        (int) Math.round(taken.metres()),
        taken.name,
        agreement(folded, taken),
        choice.nearest.name,
        graph.entryKind(taken.edge),
        network[2 * taken.edge] != 0 && network[2 * taken.edge + 1] != 0,
        cutOff,
        false);
  }

  private static NameAgreement agreement(String folded, Near road) {
    if (folded.isEmpty()) {
      return NameAgreement.NOT_ASKED;
    }
    if (road.name.isBlank()) {
      return NameAgreement.ROAD_UNNAMED;
    }
    return road.agrees ? NameAgreement.AGREES : NameAgreement.DIFFERS;
  }
}
