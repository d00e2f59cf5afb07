/**
 * Writing the sample map.
 *
 * <p><b>What it is.</b> The command that draws the town and writes the map file, the landmarks and
 * the picture.
 *
 * <p><b>Needs.</b> {@code town}, {@code draw}, {@code osm}. <b>Promises.</b> The map file and the
 * landmarks have the same bytes on every run. <b>Costs.</b> Two seconds.
 *
 * <p><b>Where it comes from.</b> Invented here.
 */
package dev.dogleg.sampletown;
