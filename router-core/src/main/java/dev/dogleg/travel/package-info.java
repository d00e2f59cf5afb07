/**
 * Seconds and metres from place to place, at any leaving time.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.travel.TravelTimes} is what timing, planner and audit
 * ask; places are numbers 0..size-1. {@link dev.dogleg.travel.TravelMatrix} holds one road path per
 * ordered pair, as free-flow seconds per road class, turn seconds and metres. {@link
 * dev.dogleg.travel.TrafficBands} slows road classes by the hour; {@link
 * dev.dogleg.travel.BandedTravelTimes} joins the two.
 *
 * <p><b>Needs.</b> A matrix from {@code roads} or from a test. <b>Promises.</b> First in, first
 * out: whoever leaves later never arrives earlier. A pair without a road says so ({@link
 * dev.dogleg.travel.TravelTimes#reaches}), it has no made-up number. Pairs are not mirrored and a
 * detour may be shorter than the direct leg. Immutable, any number of threads. <b>Costs.</b> A few
 * steps per band passed; flat arrays.
 *
 * <p><b>Where it comes from.</b> Ichoua, Gendreau, Potvin 2003, "Vehicle dispatching with
 * time-dependent travel times", European Journal of Operational Research 144: speeds change at band
 * limits and a leg is integrated over them, which makes first-in-first-out hold by construction.
 */
package dev.dogleg.travel;
