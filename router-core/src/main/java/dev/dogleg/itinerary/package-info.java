/**
 * The nouns that planner and audit share; no arithmetic.
 *
 * <p><b>What it is.</b> A {@link dev.dogleg.itinerary.DayRequest} asks for one groomer's day:
 * visits, shift, travel times, prices. A {@link dev.dogleg.itinerary.DayPlan} answers with timed
 * {@link dev.dogleg.itinerary.PlannedStop}s, what has {@link dev.dogleg.itinerary.NoRoom} and the
 * {@link dev.dogleg.itinerary.Proof} it carries. A {@link dev.dogleg.itinerary.Finding} is one
 * breach that the audit saw. {@code Week...} are the same for several van-days, with a {@link
 * dev.dogleg.itinerary.WeekCertificate} of what a week's proof rests on. The rules that bind all of
 * them stand in {@code docs/TIMING.md} and {@code docs/WEEK.md}.
 *
 * <p><b>Needs.</b> {@code time}, {@code travel}. <b>Promises.</b> Immutable, self-checking records.
 * <b>Costs.</b> Nothing but memory.
 *
 * <p><b>Where it comes from.</b> The travelling salesman problem with time windows and its
 * prize-collecting form are the field's names for a day.
 */
package dev.dogleg.itinerary;
