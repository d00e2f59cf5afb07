package dev.dogleg.sampletown.town;

import org.locationtech.jts.geom.Coordinate;

/**
 * Something that stands on a street.
 *
 * @param street name of the street
 * @param place on the street, in metres
 * @param tags key, value, ...
 */
record Barrier(String street, Coordinate place, java.util.List<String> tags) {}
