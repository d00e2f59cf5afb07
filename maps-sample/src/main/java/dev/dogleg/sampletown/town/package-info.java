/**
 * The invented town of Brindlewick.
 *
 * <p><b>What it is.</b> Its ground (coast, river, railway), main roads, quarters, villages, odd
 * places, and the landmarks that tests use.
 *
 * <p><b>Needs.</b> {@code draw}, {@code osm}. <b>Promises.</b> No line and no name was taken from a
 * map. <b>Costs.</b> A second.
 *
 * <p><b>Where it comes from.</b> Invented here; it lies in the middle of the South Pacific, where
 * there is no land.
 */
package dev.dogleg.sampletown.town;
