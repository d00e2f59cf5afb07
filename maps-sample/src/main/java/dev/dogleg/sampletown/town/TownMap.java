package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.osm.OsmMap;
import java.util.List;

/**
 * The town, ready to be written.
 *
 * @param map nodes, ways and relations
 * @param landmarks places of interest
 */
public record TownMap(OsmMap map, List<Landmark> landmarks) {

  /** Copies the list. */
  public TownMap {
    landmarks = List.copyOf(landmarks);
  }
}
