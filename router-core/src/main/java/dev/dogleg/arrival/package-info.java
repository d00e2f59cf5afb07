/**
 * When the van is at each door, how likely a told time holds, and which times to tell.
 *
 * <p><b>Terms.</b> A <i>told time</i> is a span for arrival at the door. It is <i>kept</i> if the
 * van is at the door not after its end; an early van waits until its start.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.arrival.ArrivalForecast} turns a planned day into a
 * distribution of arrival at each door; {@link dev.dogleg.arrival.TimesToTell} turns those into
 * spans for owners: the evening before, and on the way; {@link dev.dogleg.arrival.PromiseOdds}
 * prices a planned day by the promises that it is likely to break. <b>Needs.</b> A planned day and
 * the spread of its services, its drives and of whole days. <b>Promises.</b> No sampling: the same
 * day gives the same spans on every machine. <b>Costs.</b> See {@code docs/BENCHMARKS.md}: some
 * milliseconds a day.
 *
 * <p><b>Where it comes from.</b> Distributions of service ends added up on an even grid of time:
 * direct convolution; one factor that all services of a day share, as in one-factor models of
 * dependence (Vasicek 1987), integrated by the trapezium rule (Trefethen and Weideman 2014).
 */
package dev.dogleg.arrival;
