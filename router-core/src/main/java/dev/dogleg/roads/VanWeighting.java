package dev.dogleg.roads;

import com.graphhopper.routing.weighting.Weighting;
import com.graphhopper.util.EdgeIteratorState;

/**
 * What the contraction minimises: milliseconds of driving and turning plus entry weights.
 *
 * <p>The unit is the millisecond, not the second, because whole numbers up to 2^24 survive the
 * library's single-precision sums unchanged; so contraction and own search agree exactly.
 */
final class VanWeighting implements Weighting {
  private final RoadGraph graph;

  VanWeighting(RoadGraph graph) {
    this.graph = graph;
  }

  @Override
  public double calcMinWeightPerDistance() {
    return 0;
  }

  @Override
  public double calcEdgeWeight(EdgeIteratorState edge, boolean reverse) {
    int key = reverse ? edge.getReverseEdgeKey() : edge.getEdgeKey();
    int ms = graph.edgeMs[key];
    return ms == RoadGraph.CLOSED ? Double.POSITIVE_INFINITY : ms;
  }

  @Override
  public long calcEdgeMillis(EdgeIteratorState edge, boolean reverse) {
    return graph.edgeMs[reverse ? edge.getReverseEdgeKey() : edge.getEdgeKey()];
  }

  @Override
  public double calcTurnWeight(int inEdge, int viaNode, int outEdge) {
    if (inEdge < 0 || outEdge < 0) {
      return 0;
    }
    int weight = graph.turnWeight(keyInto(inEdge, viaNode), keyFrom(outEdge, viaNode));
    return weight == RoadGraph.CLOSED ? Double.POSITIVE_INFINITY : weight;
  }

  @Override
  public long calcTurnMillis(int inEdge, int viaNode, int outEdge) {
    return graph.turnMs(keyInto(inEdge, viaNode), keyFrom(outEdge, viaNode));
  }

  private int keyFrom(int edge, int node) {
    return graph.tail[2 * edge] == node ? 2 * edge : 2 * edge + 1;
  }

  private int keyInto(int edge, int node) {
    return keyFrom(edge, node) ^ 1;
  }

  @Override
  public boolean hasTurnCosts() {
    return true;
  }

  @Override
  public String getName() {
    return "van";
  }
}
