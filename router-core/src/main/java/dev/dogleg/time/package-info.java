/**
 * Time inside a working day.
 *
 * <p><b>What it is.</b> An instant of a working day is an {@code int}: whole seconds elapsed since
 * that day's local midnight. {@link dev.dogleg.time.TimeWindow} is a closed span of them, {@link
 * dev.dogleg.time.WorkDay} converts to and from the wall clock at the edges (the two days of the
 * year on which clocks change are right by that).
 *
 * <p><b>Needs.</b> A time zone named once, at the edge. <b>Promises.</b> No clock is read here.
 * <b>Costs.</b> Constant time.
 *
 * <p><b>Where it comes from.</b> Elapsed seconds avoid the repeated and the missing hour of a clock
 * change (java.time's zone rules do the conversion).
 */
package dev.dogleg.time;
