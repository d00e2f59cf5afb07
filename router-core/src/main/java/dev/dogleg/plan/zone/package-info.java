/**
 * On which weekdays each zone should be worked.
 *
 * <p><b>Terms.</b> A <i>zone-day assignment</i> gives every zone as many weekdays as it has now. A
 * visit on a day that is none of its zones' pays what the zone's strength says, or may not be made.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.plan.zone.ZoneDayPlanner} looks for the assignment whose
 * best week costs least: fewest visits left out first, then the planner's own price, driving before
 * all. <b>Needs.</b> A {@link dev.dogleg.plan.zone.ZoneWeek}: the week's request without any zone,
 * each visit with every van-day on which it might have been, and which visits lie in which zones; a
 * limit of weeks to plan. No map. <b>Promises.</b> Both the week with the days as they are and the
 * one proposed are plans of {@code plan.week} under the assignment itself, not estimates. Where the
 * search ends before its limit and every week on the way was proven, no assignment is better; else
 * the bound says how much better one might be. Same input, same answer. <b>Costs.</b> Two whole
 * weeks planned for each part of the search.
 *
 * <p><b>Where it comes from.</b> Branch and bound (Land and Doig 1960; from memory): a part of the
 * search leaves each zone more days than it may have; its week is planned with all of them open, so
 * that no assignment of the part can cost less.
 */
package dev.dogleg.plan.zone;
