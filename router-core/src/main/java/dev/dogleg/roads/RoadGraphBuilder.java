package dev.dogleg.roads;

import com.graphhopper.routing.ev.BooleanEncodedValue;
import com.graphhopper.routing.ev.EnumEncodedValue;
import com.graphhopper.routing.ev.RoadAccess;
import com.graphhopper.routing.ev.RoadClass;
import com.graphhopper.routing.ev.RoadEnvironment;
import com.graphhopper.routing.ev.TurnRestriction;
import com.graphhopper.routing.util.AllEdgesIterator;
import com.graphhopper.routing.util.EncodingManager;
import com.graphhopper.routing.weighting.Weighting;
import com.graphhopper.storage.BaseGraph;
import com.graphhopper.storage.TurnCostStorage;
import com.graphhopper.util.EdgeExplorer;
import com.graphhopper.util.EdgeIteratorState;
import com.graphhopper.util.FetchMode;
import com.graphhopper.util.PointList;
import java.util.Arrays;
import java.util.stream.LongStream;

/** Flattens the imported graph into a {@link RoadGraph}. */
final class RoadGraphBuilder {
  private final BaseGraph base;
  private final EncodingManager values;
  private final int[] tail;
  private final int[] edgeMs;
  private final short[] bearing;
  private final int[] lengthCm;
  private final byte[] roadClass;
  private final byte[] entry;
  private final byte[] gate;
  private final byte[] doors;
  private final int[] original;

  private RoadGraphBuilder(BaseGraph base, EncodingManager values) {
    this.base = base;
    this.values = values;
    int edges = base.getEdges();
    this.tail = new int[2 * edges];
    this.edgeMs = new int[2 * edges];
    this.bearing = new short[2 * edges];
    this.lengthCm = new int[edges];
    this.roadClass = new byte[edges];
    this.entry = new byte[edges];
    this.gate = new byte[edges];
    this.doors = new byte[edges];
    this.original = new int[edges];
  }

  /**
   * Reads every edge once.
   *
   * @param base imported graph
   * @param values its encoded values
   * @param time what says how long an edge takes and whether it is open
   * @param van the card
   * @return flat arrays
   */
  static RoadGraph build(BaseGraph base, EncodingManager values, Weighting time, VanCard van) {
    RoadGraphBuilder builder = new RoadGraphBuilder(base, values);
    builder.readEdges(time);
    return new RoadGraph(
        van,
        builder.tail,
        builder.edgeMs,
        builder.bearing,
        builder.lengthCm,
        builder.roadClass,
        builder.entry,
        builder.gate,
        builder.doors,
        builder.original,
        builder.junctions(),
        builder.forbidden());
  }

  private void readEdges(Weighting time) {
    EnumEncodedValue<RoadClass> classes =
        values.getEnumEncodedValue(RoadClass.KEY, RoadClass.class);
    EnumEncodedValue<RoadAccess> access =
        values.getEnumEncodedValue(RoadAccess.KEY, RoadAccess.class);
    EnumEncodedValue<RoadEnvironment> environment =
        values.getEnumEncodedValue(RoadEnvironment.KEY, RoadEnvironment.class);
    BooleanEncodedValue gates = values.getBooleanEncodedValue(VanTags.GATE);
    EdgeExplorer explorer = base.createEdgeExplorer();
    AllEdgesIterator edge = base.getAllEdges();
    while (edge.next()) {
      int id = edge.getEdge();
      tail[2 * id] = edge.getBaseNode();
      tail[2 * id + 1] = edge.getAdjNode();
      edgeMs[2 * id] = milliseconds(time, edge, false);
      edgeMs[2 * id + 1] = milliseconds(time, edge, true);
      lengthCm[id] = Math.toIntExact(Math.round(edge.getDistance() * 100));
      roadClass[id] = (byte) TrafficClass.of(edge.get(classes));
      entry[id] = kind(edge.get(access));
      gate[id] = (byte) (edge.get(gates) ? 1 : 0);
      doors[id] = (byte) (hasDoors(edge.get(classes), edge.get(environment)) ? 1 : 0);
      PointList line = edge.fetchWayGeometry(FetchMode.ALL);
      bearing[2 * id] = Bearing.leaving(line, false);
      bearing[2 * id + 1] = Bearing.leaving(line, true);
      original[id] = id;
      EdgeIteratorState state = edge.detach(false);
      base.forEdgeAndCopiesOfEdge(
          explorer, state, twin -> original[id] = Math.min(original[id], twin.getEdge()));
    }
  }

  private static int milliseconds(Weighting time, EdgeIteratorState edge, boolean reverse) {
    if (Double.isInfinite(time.calcEdgeWeight(edge, reverse))) {
      return RoadGraph.CLOSED;
    }
    return Math.max(1, Math.toIntExact(time.calcEdgeMillis(edge, reverse)));
  }

  /** No door opens onto a motorway, into a tunnel or onto a ferry. */
  private static boolean hasDoors(RoadClass road, RoadEnvironment where) {
    return road != RoadClass.MOTORWAY
        && where != RoadEnvironment.TUNNEL
        && where != RoadEnvironment.FERRY;
  }

  private static byte kind(RoadAccess access) {
    return switch (access) {
      case DESTINATION, CUSTOMERS -> RoadGraph.DESTINATION;
      case PRIVATE -> RoadGraph.PRIVATE;
      default -> RoadGraph.OPEN;
    };
  }

  /** Marks the nodes where three or more drivable roads meet, twins counted once. */
  private byte[] junctions() {
    int[] roads = new int[base.getNodes()];
    for (int id = 0; id < original.length; id++) {
      boolean open = edgeMs[2 * id] != RoadGraph.CLOSED || edgeMs[2 * id + 1] != RoadGraph.CLOSED;
      if (open && original[id] == id) {
        roads[tail[2 * id]]++;
        roads[tail[2 * id + 1]]++;
      }
    }
    byte[] junction = new byte[roads.length];
    for (int node = 0; node < roads.length; node++) {
      junction[node] = (byte) (roads[node] > 2 ? 1 : 0);
    }
    return junction;
  }

  private long[] forbidden() {
    BooleanEncodedValue ban =
        values.getTurnBooleanEncodedValue(TurnRestriction.key(VanProfile.NAME));
    LongStream.Builder turns = LongStream.builder();
    TurnCostStorage.Iterator stored = base.getTurnCostStorage().getAllTurnCosts();
    while (stored.next()) {
      if (stored.get(ban)) {
        int via = stored.getViaNode();
        turns.add(
            RoadGraph.turn(
                keyFrom(stored.getFromEdge(), via) ^ 1, keyFrom(stored.getToEdge(), via)));
      }
    }
    long[] sorted = turns.build().toArray();
    Arrays.sort(sorted);
    return sorted;
  }

  private int keyFrom(int edge, int node) {
    return tail[2 * edge] == node ? 2 * edge : 2 * edge + 1;
  }
}
