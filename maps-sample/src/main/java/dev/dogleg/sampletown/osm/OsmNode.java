package dev.dogleg.sampletown.osm;

import java.util.Map;

/**
 * A point of the map.
 *
 * @param id positive, unique among nodes
 * @param latE7 latitude in units of 10⁻⁷ degrees
 * @param lonE7 longitude in units of 10⁻⁷ degrees
 * @param tags in the order in which they are written; may be empty
 */
public record OsmNode(long id, int latE7, int lonE7, Map<String, String> tags) {}
