/**
 * Plans a day: which visits, in which order, when; with a proof or a bound, and with reasons.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.plan.DayPlanner} turns a {@code DayRequest} into a {@code
 * DayPlan}. First the fewest booked visits left out, then least cost; what has no room is named
 * with its true reason. For a week, {@link dev.dogleg.plan.SetBounds} lists every set of visits a
 * day may serve with a cost it cannot be below, and {@link dev.dogleg.plan.SetDays} gives the best
 * day of one set.
 *
 * <p><b>Needs.</b> Travel times that are first in, first out; an effort limit in steps. No LP
 * library. <b>Promises.</b> A plan marked {@code PROVEN_BEST} cannot be beaten under {@code
 * docs/TIMING.md}, to the second; otherwise its bound holds. The answer depends on visits, ids,
 * seed and effort alone, not on the order of the input or on threads. <b>Costs.</b> See {@code
 * docs/BENCHMARKS.md}: days of 16 visits without windows in well under a second, 25 with customary
 * windows; memory follows the partial days that the bound cannot drop.
 *
 * <p><b>Where it comes from.</b> Held and Karp 1962 (sets and last stop); Dumas, Desrosiers,
 * Gelinas, Solomon 1995, Operations Research 43:367-371 (windows cut the sets); Baldacci, Mingozzi,
 * Roberti 2012, INFORMS Journal on Computing 24:356-371 (relaxed paths as completion bounds); Tilk
 * and Irnich 2017, Transportation Science 51:549-565 (free start, duration).
 */
package dev.dogleg.plan;
