/**
 * Drawing streets on a flat sheet of paper.
 *
 * <p><b>What it is.</b> Strokes in metres, the net that joins them where they meet, grids, curved
 * suburbs, and houses along the strokes.
 *
 * <p><b>Needs.</b> {@code osm}, JTS. <b>Promises.</b> Only arithmetic that the Java language fixes
 * to the last bit (no {@code Math.sin}), and a random generator whose algorithm is specified, so
 * that a sheet is the same everywhere. <b>Costs.</b> A second for a town.
 *
 * <p><b>Where it comes from.</b> Invented here.
 */
package dev.dogleg.sampletown.draw;
