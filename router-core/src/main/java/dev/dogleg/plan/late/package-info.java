/**
 * The rest of a day that runs late, solved anew at once: told times kept where possible, else
 * broken least and named.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.plan.late.LatePlanner} takes a {@link
 * dev.dogleg.plan.late.RestOfDay} (the day as asked, what is done, where the van is, what time it
 * is) and answers with at most three {@link dev.dogleg.plan.late.LateChoice}s: keep the order,
 * another order, one visit to another day. Each is a sound {@code DayPlan} of a {@code DayRequest}
 * of its own, whose broken windows are as wide as what is said. What binds and what gives way
 * stands in {@code docs/LATE.md}.
 *
 * <p><b>Needs.</b> Travel times that are first in, first out; visits whose windows hold only what
 * may not slide, and apart from them the promises that may. <b>Promises.</b> A choice marked proven
 * is the least in the order of {@code docs/LATE.md} (left out, told times broken, seconds late,
 * wishes, break, cost) over every order and every leaving second. Nothing is read from a clock.
 * <b>Costs.</b> Below 0.3 s for ten doors left (see {@code docs/BENCHMARKS.md}); a search over sets
 * of visits, so each door more about doubles it; where a level of sets is too wide the narrower
 * part is kept and the choice is not proven.
 *
 * <p><b>Where it comes from.</b> Sets and last stop: Held and Karp 1962, Journal of the Society for
 * Industrial and Applied Mathematics 10:196-210. Lexicographic labels that an earlier and better
 * one makes useless: Desrochers and Soumis 1988, INFOR 26:191-212. With drives that are first in,
 * first out the earliest departure makes every arrival least (Kaufman and Smith 1993, IVHS Journal
 * 1:1-11), so the least lateness of an order is that of its earliest timing.
 */
package dev.dogleg.plan.late;
