/**
 * Does one more client fit: when, and at what cost to the day; or no, and why.
 *
 * <p><b>Terms.</b> A <i>newcomer</i> is a booking that a planned week does not have yet. <i>Tier
 * A</i>: the other van-days stay untouched, one van-day keeps all its visits and is planned anew
 * with the newcomer among them. <i>Tier B</i>: visits that are told or fixed keep their van-day,
 * the others may change it as their bookings allow. A no of tier A is never a no of tier B.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.fit.FitWeek} is a planned week, prepared once; {@link
 * dev.dogleg.fit.FitWeek#ask} turns a {@link dev.dogleg.fit.FitQuestion} into a {@link
 * dev.dogleg.fit.FitAnswer}. {@link dev.dogleg.fit.RoomAhead} asks before anybody has called: the
 * times that may be told to a kind of client whichever known door of a zone it lives at.
 * <b>Needs.</b> A week's request and which van-day serves which booking; travel times that hold the
 * newcomer's door, in the week's request or in the question; an effort limit in steps. No map, no
 * clock, no LP library of its own. <b>Promises.</b> An offer of tier A marked proven is the best
 * day of all those visits to the second, not the cheapest insertion; told times, which are arrival
 * windows of the request, are never broken; a no is proven or says that it is not. Everything is
 * immutable to its users: many threads may ask one week at once. <b>Costs.</b> See {@code
 * docs/BENCHMARKS.md}: some milliseconds in tier A; a week made ready once ({@link
 * dev.dogleg.fit.FitWeek#readyForOtherDays}) answers tier B in a tenth of a second or a few, any
 * other plans a whole week from scratch.
 *
 * <p><b>Where it comes from.</b> Tier A is the exact day engine of {@code plan}, tier B the week
 * planner of {@code plan.week}, each with the newcomer forced in; a week made ready keeps the
 * prices, cuts and listed sets of its own bound ({@link dev.dogleg.plan.week.WarmWeek}).
 */
package dev.dogleg.fit;
