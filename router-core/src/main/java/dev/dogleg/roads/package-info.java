/**
 * Driving times, lengths and paths of one van over the roads of an OpenStreetMap extract.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.roads.RoadNetwork} reads an extract once, for one {@link
 * dev.dogleg.roads.VanCard}, keeps the result in a cache folder, and then puts places on roads
 * ({@link dev.dogleg.roads.SnapReport}), fills a {@link dev.dogleg.travel.TravelMatrix} and draws a
 * {@link dev.dogleg.roads.RoadRoute}. The only package that sees GraphHopper.
 *
 * <p><b>Needs.</b> A file {@code .osm.pbf}, {@code .osm}, {@code .osm.gz} or {@code .osm.bz2},
 * sorted (nodes, ways, relations) and with positive ids; a folder to keep the result in. Tags that
 * are missing count as open: a bridge without a height tag is passed.
 *
 * <p><b>Promises.</b> Drive seconds are edge seconds plus turn seconds, and the same in matrix and
 * route, whichever other places are asked for at the same time. Height, width, length and weight
 * are hard limits, on ways and on barrier nodes. Turn restrictions hold, those over a way too.
 * Private and destination-only roads are used at the two ends of a drive: entering one from an open
 * road weighs three hours in the search (and nothing in the time told), so it is passed through
 * only where there is no other way, and the route then says so. A pair without a road says so;
 * nothing is ever replaced by a straight line. Pairs are not mirrored. Leaving a door, the van may
 * set off in either direction. Conditional access tags (by the hour) are not applied; roads for
 * delivery only stay closed; a barrier on a junction of several ways is not seen, as in the
 * importing library.
 *
 * <p><b>Costs.</b> Import: see docs/BENCHMARKS.md. A matrix of 60 places on a town takes tens of
 * milliseconds. A network may be read by any number of threads; close it when done.
 *
 * <p><b>Where it comes from.</b> GraphHopper 11.0 reads the file and contracts the graph on edges
 * (Geisberger, Sanders, Schultes, Delling 2008, "Contraction Hierarchies"; with turn costs:
 * Geisberger, Vetter 2011, "Efficient Routing in Road Networks with Turn Costs"). Many-to-many by
 * buckets: Knopp, Sanders, Schultes, Schulz, Wagner 2007, "Computing Many-to-Many Shortest Paths
 * Using Highway Hierarchies". Tags: the OpenStreetMap wiki.
 */
package dev.dogleg.roads;
