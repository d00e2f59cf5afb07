/**
 * Offline address look-up from the same map extract that the roads come from.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.address.AddressIndex} answers what a person typed with a
 * {@link dev.dogleg.address.LookUp}: found, ambiguous or none, each candidate graded {@link
 * dev.dogleg.address.Grade exact, interpolated, street or none} with a distance estimate and a
 * reason in words. A house is one map object that bears a number: a point, a building outline, a
 * building relation. Everything is derived from house numbers, interpolation ways, named streets,
 * boundaries and places of the extract; no network is asked.
 *
 * <p><b>Needs.</b> {@code fault}, {@code model}; a map file ({@code .osm.pbf}, {@code .osm}, {@code
 * .osm.gz}, {@code .osm.bz2}) and a folder it may write to. The only package that sees the search
 * index.
 *
 * <p><b>Promises.</b> Never a silent pick: two doors of one address over 25 m apart are ambiguous;
 * a house of another town, another street or another number is never graded exact; a street read
 * through a typing error says so. Same text, same map, same answer, on any number of threads. The
 * index folder is keyed by the map's checksum and the format, moved into place whole, and safe when
 * two processes open it at once.
 *
 * <p><b>Costs.</b> Building reads the map three times (relations, ways, points); what grows with
 * the country is kept on disk, the heap holds boundaries and one vote per square kilometre. Opening
 * costs one checksum of the map. Figures: {@code docs/BENCHMARKS.md}, "Address look-up".
 *
 * <p><b>Where it comes from.</b> Tags as the OpenStreetMap wiki defines them (keys {@code addr},
 * {@code addr:interpolation}, {@code boundary}, relation {@code associatedStreet}); the rules of
 * folding, each with its source, in {@code folding.tsv}; Levenshtein automata by Schulz and Mihov
 * 2002, as the search index implements them.
 */
package dev.dogleg.address;
