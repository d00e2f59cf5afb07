/**
 * Plans as text: plan.csv, no-room.csv, set-aside.csv and the printed day.
 *
 * <p><b>What it is.</b> Pure functions from a {@link dev.dogleg.cli.export.PlannedDay} (a plan with
 * the labels a reader is shown) to text, and {@link dev.dogleg.cli.export.WholeFiles}, which writes
 * the files of a run whole or not at all. The formats stand in {@code docs/FORMATS.md}.
 *
 * <p><b>Needs.</b> {@code itinerary}, {@code time}, {@code fault}. <b>Promises.</b> Same plan, same
 * bytes; no phone and no gate code; text that begins like a formula is guarded. <b>Costs.</b>
 * Linear in the length of the text.
 *
 * <p><b>Where it comes from.</b> Comma-separated values after RFC 4180; the apostrophe against
 * formulas is common practice of spreadsheets.
 */
package dev.dogleg.cli.export;
