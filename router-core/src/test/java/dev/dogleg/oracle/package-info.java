/**
 * Trying everything: oracles that planner and audit are tested against, and seeded days and weeks
 * with every term that there is.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.oracle.DayOracle} lives small days second by second;
 * {@link dev.dogleg.oracle.WeekOracle} tries every assignment of a small week; {@link
 * dev.dogleg.oracle.RandomTerms} and {@link dev.dogleg.oracle.RandomWeeks} make cases by seed.
 *
 * <p><b>Needs.</b> {@code time}, {@code travel}, {@code itinerary} of the main code; nothing of
 * planner or audit. <b>Promises.</b> A third reading of {@code docs/TIMING.md} and {@code
 * docs/WEEK.md}. <b>Costs.</b> Milliseconds for five visits of a day of seconds, about a second for
 * seven. <b>Where it comes from.</b> Full enumeration.
 */
package dev.dogleg.oracle;
