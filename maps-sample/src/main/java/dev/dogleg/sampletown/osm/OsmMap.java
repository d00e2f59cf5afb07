package dev.dogleg.sampletown.osm;

import java.util.List;

/**
 * A whole map; each list is sorted by id.
 *
 * @param nodes all nodes
 * @param ways all ways; their nodes are among the nodes
 * @param relations all relations; their members are among nodes and ways
 */
public record OsmMap(List<OsmNode> nodes, List<OsmWay> ways, List<OsmRelation> relations) {

  /** Copies the lists and checks their order. */
  public OsmMap {
    nodes = List.copyOf(nodes);
    ways = List.copyOf(ways);
    relations = List.copyOf(relations);
    checkSorted(nodes.stream().mapToLong(OsmNode::id).toArray());
    checkSorted(ways.stream().mapToLong(OsmWay::id).toArray());
    checkSorted(relations.stream().mapToLong(OsmRelation::id).toArray());
  }

  private static void checkSorted(long[] ids) {
    for (int i = 1; i < ids.length; i++) {
      if (ids[i - 1] >= ids[i]) {
        throw new IllegalArgumentException("ids not ascending at " + ids[i]);
      }
    }
  }
}
