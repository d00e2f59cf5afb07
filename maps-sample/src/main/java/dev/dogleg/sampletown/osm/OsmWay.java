package dev.dogleg.sampletown.osm;

import java.util.List;
import java.util.Map;

/**
 * A line of the map, or an area if it ends where it starts.
 *
 * @param id positive, unique among ways
 * @param nodeIds at least two nodes, in order
 * @param tags in the order in which they are written
 */
public record OsmWay(long id, List<Long> nodeIds, Map<String, String> tags) {

  /** Copies the list. */
  public OsmWay {
    nodeIds = List.copyOf(nodeIds);
    if (nodeIds.size() < 2) {
      throw new IllegalArgumentException("way " + id + " has fewer than two nodes");
    }
  }
}
