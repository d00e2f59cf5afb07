/**
 * Plans several van-days as one problem, with a proof or a bound, and with reasons.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.plan.week.WeekPlanner} turns a {@code WeekRequest} into a
 * {@code WeekPlan}: first the fewest counted bookings left out, then least cost. A fast search
 * gives a first week; the sets of bookings that a van-day can serve are the columns of a
 * set-partitioning master; an LP with subset-row cuts and a branching tree close the gap between
 * them. Of weeks as good as a proven one the least by ids and van-days is taken. {@link
 * dev.dogleg.plan.week.WarmWeek} keeps of one week what makes the proof of the same week with one
 * more booking cheap.
 *
 * <p><b>Needs.</b> Travel times that are first in, first out; the day engine of {@code plan} for
 * exact costs; an LP library, which only suggests prices where the own simplex does not settle.
 * <b>Promises.</b> A week marked {@code PROVEN_BEST} cannot be beaten under {@code docs/WEEK.md}:
 * every bound is a sum of whole numbers ({@code WeekBound}), and a {@link
 * dev.dogleg.itinerary.WeekCertificate} holds the prices by which anybody can compute it again. The
 * answer depends on bookings, ids, seed and effort alone, not on the order of the input or on
 * threads. <b>Costs.</b> See {@code docs/BENCHMARKS.md}.
 *
 * <p><b>Where it comes from.</b> Jepsen, Petersen, Spoorendonk, Pisinger 2008, Operations Research
 * 56:497-511 (subset-row cuts); Baldacci, Mingozzi, Roberti 2011, Operations Research 59:1269-1283
 * (columns inside the gap); Righini, Salani 2006, Discrete Optimization 3:255-273 (labels from both
 * ends); Pecin, Pessoa, Poggi, Uchoa 2017, Mathematical Programming Computation 9:61-100 (cuts of
 * limited memory); Ryan and Foster 1981 (two on one route, or not); Christiaens and Vanden Berghe
 * 2020, Transportation Science 54:417-433 (ruin and recreate); Ichoua, Gendreau, Potvin 2003
 * (traffic).
 */
package dev.dogleg.plan.week;
