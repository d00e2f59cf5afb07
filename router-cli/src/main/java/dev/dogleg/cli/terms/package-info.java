/**
 * From what a groomer writes to the planner's terms, without a map.
 *
 * <p><b>What it is.</b> Van-days come from hours and special days; stops carry the tags of their
 * pets, clients and places; rules by tag, zones, likes and water become choices, prices, limits and
 * {@link dev.dogleg.itinerary.DayRule}s as {@code docs/WEEK.md} says. What cannot hold is named
 * here, before planning.
 *
 * <p><b>Needs.</b> {@code model}, {@code itinerary}, {@code groom} (what a pet looks like).
 * <b>Promises.</b> The same book gives the same terms, in any order of its rows; a told time is
 * never narrowed; a price is whole minutes of driving. <b>Costs.</b> Rules times stops times days.
 *
 * <p><b>Where it comes from.</b> Ours; the shapes of rules are those of {@code
 * docs/formats-week.md}.
 */
package dev.dogleg.cli.terms;
