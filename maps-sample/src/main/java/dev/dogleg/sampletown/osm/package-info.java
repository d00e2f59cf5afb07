/**
 * The map as OpenStreetMap data.
 *
 * <p><b>What it is.</b> Nodes, ways and relations, and a writer of the {@code .osm.pbf} format.
 *
 * <p><b>Needs.</b> The protobuf classes of osmosis-osm-binary. <b>Promises.</b> Same map, same
 * bytes, on every machine. <b>Costs.</b> Nothing but memory: the whole file is built in an array.
 *
 * <p><b>Where it comes from.</b> The published description of the PBF format of OpenStreetMap
 * (fileformat.proto and osmformat.proto, as shipped in osmosis-osm-binary 0.48.3).
 */
package dev.dogleg.sampletown.osm;
