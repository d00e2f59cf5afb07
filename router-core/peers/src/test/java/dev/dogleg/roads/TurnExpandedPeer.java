package dev.dogleg.roads;

import com.graphhopper.routing.ev.BooleanEncodedValue;
import com.graphhopper.routing.ev.EnumEncodedValue;
import com.graphhopper.routing.ev.RoadAccess;
import com.graphhopper.routing.ev.TurnRestriction;
import com.graphhopper.routing.util.AllEdgesIterator;
import com.graphhopper.routing.util.EncodingManager;
import com.graphhopper.storage.BaseGraph;
import com.graphhopper.util.EdgeIterator;
import com.graphhopper.util.EdgeIteratorState;
import com.graphhopper.util.FetchMode;
import com.graphhopper.util.PointList;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jgrapht.GraphPath;
import org.jgrapht.graph.DefaultDirectedWeightedGraph;
import org.jgrapht.graph.DefaultWeightedEdge;

/**
 * The turn-expanded graph of a network, built from the importing library's storage: a vertex for
 * each direction of each edge, an arc for each allowed turn, priced with the turn and with the edge
 * turned into.
 */
final class TurnExpandedPeer {
  private static final double ENTRY_PRICE_MS = 3 * 3600 * 1000.0;

  private final RoadNetwork roads;
  private final VanCard van;
  private final BaseGraph base;
  private final BooleanEncodedValue ban;
  private final EnumEncodedValue<RoadAccess> access;
  private final DefaultDirectedWeightedGraph<String, DefaultWeightedEdge> graph =
      new DefaultDirectedWeightedGraph<>(DefaultWeightedEdge.class);
  private final Map<DefaultWeightedEdge, Integer> entriesPaid = new HashMap<>();
  private final Map<Integer, Set<Integer>> twins = new HashMap<>();
  private final Map<Integer, Integer> roadsAtNode = new HashMap<>();
  private final List<RoadPoint> places = new ArrayList<>();

  TurnExpandedPeer(RoadNetwork roads, VanCard van) {
    this.roads = roads;
    this.van = van;
    this.base = roads.baseGraph();
    EncodingManager values = roads.encodedValues();
    this.ban = values.getTurnBooleanEncodedValue(TurnRestriction.key("van"));
    this.access = values.getEnumEncodedValue(RoadAccess.KEY, RoadAccess.class);
    AllEdgesIterator edges = base.getAllEdges();
    while (edges.next()) {
      learn(edges.detach(false));
    }
    edges = base.getAllEdges();
    while (edges.next()) {
      expand(edges.detach(false));
      expand(edges.detach(true));
    }
  }

  private double edgeMs(EdgeIteratorState edge) {
    return roads.hierarchy().graph.edgeMs[edge.getEdgeKey()];
  }

  private boolean open(EdgeIteratorState edge) {
    return edgeMs(edge) >= 0;
  }

  private void learn(EdgeIteratorState edge) {
    Set<Integer> same = new HashSet<>();
    base.forEdgeAndCopiesOfEdge(base.createEdgeExplorer(), edge, twin -> same.add(twin.getEdge()));
    twins.put(edge.getEdge(), same);
    boolean first = same.stream().allMatch(twin -> twin >= edge.getEdge());
    if (first && (open(edge) || open(edge.detach(true)))) {
      roadsAtNode.merge(edge.getBaseNode(), 1, Integer::sum);
      roadsAtNode.merge(edge.getAdjNode(), 1, Integer::sum);
    }
  }

  private static String vertex(EdgeIteratorState edge) {
    return "k" + edge.getEdgeKey();
  }

  private void expand(EdgeIteratorState in) {
    if (!open(in)) {
      return;
    }
    graph.addVertex(vertex(in));
    EdgeIterator out = base.createEdgeExplorer().setBaseNode(in.getAdjNode());
    while (out.next()) {
      EdgeIteratorState next = out.detach(false);
      double turn = open(next) ? turnMs(in, next) : Double.POSITIVE_INFINITY;
      if (turn < Double.POSITIVE_INFINITY) {
        graph.addVertex(vertex(next));
        int paid = restricted(next) && !restricted(in) ? 1 : 0;
        join(vertex(in), vertex(next), turn + paid * ENTRY_PRICE_MS + edgeMs(next), paid);
      }
    }
  }

  private void join(String from, String to, double weight, int paid) {
    DefaultWeightedEdge arc = graph.addEdge(from, to);
    graph.setEdgeWeight(arc, weight);
    entriesPaid.put(arc, paid);
  }

  private boolean restricted(EdgeIteratorState edge) {
    return Set.of(RoadAccess.DESTINATION, RoadAccess.CUSTOMERS, RoadAccess.PRIVATE)
        .contains(edge.get(access));
  }

  private double turnMs(EdgeIteratorState in, EdgeIteratorState out) {
    boolean sameRoad = twins.get(in.getEdge()).contains(out.getEdge());
    boolean forwards = (in.getEdgeKey() & 1) == (out.getEdgeKey() & 1);
    if (sameRoad && !forwards) {
      return 1000.0 * van.turns().uTurn();
    }
    int via = in.getAdjNode();
    if (base.getTurnCostStorage().get(ban, in.getEdge(), via, out.getEdge())) {
      return Double.POSITIVE_INFINITY;
    }
    PointList coming = in.detach(true).fetchWayGeometry(FetchMode.ALL);
    PointList going = out.fetchWayGeometry(FetchMode.ALL);
    int back = heading(coming);
    int on = heading(going);
    if (roadsAtNode.get(via) < 3 || back < 0 || on < 0) {
      return 0;
    }
    // Positive to the right: where the van goes, seen from where it was heading.
    int right = ((on - (back + 180)) % 360 + 540) % 360 - 180;
    if (Math.abs(right) < 30) {
      return 0;
    }
    if (Math.abs(right) > 120) {
      return 1000.0 * van.turns().sharp();
    }
    return 1000.0 * (right < 0 ? van.turns().crossing() : van.turns().nearSide());
  }

  /** Whole degrees clockwise from north, -1 without a length. */
  private static int heading(PointList line) {
    for (int i = 1; i < line.size(); i++) {
      double north = line.getLat(i) - line.getLat(0);
      double east = (line.getLon(i) - line.getLon(0)) * Math.cos(Math.toRadians(line.getLat(0)));
      if (Math.sqrt(north * north + east * east) > 1e-6) {
        return (int) (Math.round(Math.toDegrees(Math.atan2(east, north))) + 360) % 360;
      }
    }
    return -1;
  }

  static String start(RoadPoint place) {
    return "from " + place.edge() + " " + place.offsetCm();
  }

  static String end(RoadPoint place) {
    return "to " + place.edge() + " " + place.offsetCm();
  }

  /** Joins a place to its stretch of road, in both directions and on its twins. */
  void addPlace(RoadPoint place) {
    if (!graph.addVertex(start(place))) {
      return;
    }
    graph.addVertex(end(place));
    places.add(place);
    for (int edge : twins.get(place.edge())) {
      for (boolean reverse : new boolean[] {false, true}) {
        EdgeIteratorState key = base.getEdgeIteratorStateForKey(2 * edge + (reverse ? 1 : 0));
        if (!open(key)) {
          continue;
        }
        double share = share(place, key, reverse);
        double before = Math.floor(edgeMs(key) * share + 0.5);
        join(start(place), vertex(key), edgeMs(key) - before, 0);
        for (DefaultWeightedEdge arc : List.copyOf(graph.incomingEdgesOf(vertex(key)))) {
          String source = graph.getEdgeSource(arc);
          if (source.startsWith("k")) {
            int paid = entriesPaid.get(arc);
            DefaultWeightedEdge into = graph.getEdge(source, end(place));
            double weight = graph.getEdgeWeight(arc) - edgeMs(key) + before;
            if (into == null) {
              join(source, end(place), weight, paid);
            } else if (weight < graph.getEdgeWeight(into)) {
              graph.setEdgeWeight(into, weight);
              entriesPaid.put(into, paid);
            }
          }
        }
      }
    }
    places.forEach(other -> joinAlongOneEdge(other, place));
    places.forEach(other -> joinAlongOneEdge(place, other));
  }

  private void joinAlongOneEdge(RoadPoint from, RoadPoint to) {
    if (!twins.get(from.edge()).contains(to.edge())) {
      return;
    }
    for (boolean reverse : new boolean[] {false, true}) {
      EdgeIteratorState key = base.getEdgeIteratorStateForKey(2 * from.edge() + (reverse ? 1 : 0));
      double a = share(from, key, reverse);
      double b = share(to, key, reverse);
      if (open(key) && a <= b && graph.getEdge(start(from), end(to)) == null) {
        double ms = Math.floor(edgeMs(key) * b + 0.5) - Math.floor(edgeMs(key) * a + 0.5);
        join(start(from), end(to), ms, 0);
      }
    }
  }

  private static double share(RoadPoint place, EdgeIteratorState key, boolean reverse) {
    double whole = Math.round(key.getDistance() * 100);
    double cm = reverse ? whole - place.offsetCm() : place.offsetCm();
    return cm / whole;
  }

  DefaultDirectedWeightedGraph<String, DefaultWeightedEdge> graph() {
    return graph;
  }

  /** Milliseconds of a path, entry prices taken off. */
  double withoutEntryPrices(GraphPath<String, DefaultWeightedEdge> path) {
    int paid = path.getEdgeList().stream().mapToInt(entriesPaid::get).sum();
    return path.getWeight() - paid * ENTRY_PRICE_MS;
  }
}
