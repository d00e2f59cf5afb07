/**
 * Exact timing of one ordered day, in whole seconds.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.schedule.DayTiming} times a given order of visits at
 * least cost and states the day as {@code PlannedStop}s, or the first rule that cannot be kept and
 * by how many seconds. Beneath it lie the parts that the planner shares: {@link
 * dev.dogleg.schedule.DayModel} (a day as arrays), {@link dev.dogleg.schedule.RunEnvelope} (least
 * cost to be ready to leave a door, as a function of time) and {@link dev.dogleg.schedule.StopStep}
 * (that function carried over one leg and one stop); and backwards {@link
 * dev.dogleg.schedule.CostFloor} (a lower bound on the rest of a day, as a function of time) and
 * {@link dev.dogleg.schedule.FloorStep} (that bound carried over a leg, a stop, a break). What
 * rules, tanks and a price for full days make of a step stands in {@link
 * dev.dogleg.schedule.StepTerms}; liked hours are further ways to stay at a door, places of water
 * further nodes.
 *
 * <p><b>Needs.</b> Travel times that are first in, first out. The rules stand in {@code
 * docs/TIMING.md} and {@code docs/WEEK.md}. <b>Promises.</b> The least cost over every leaving
 * second, every window, every place and time of the break; ties as the page says; no floating
 * point. <b>Costs.</b> One order of n visits takes n steps, each over a handful of runs; near a
 * change of traffic a run is cut at every second at which the leg's duration changes, but only
 * where the bound leaves hope.
 *
 * <p><b>Where it comes from.</b> Ready-time functions of a route with free start: Hashimoto,
 * Ibaraki, Imahori, Yagiura 2006, "The vehicle routing problem with flexible time windows and
 * traveling times", Discrete Applied Mathematics 154:2271-2290; duration as a function of the
 * start: Savelsbergh 1992, ORSA Journal on Computing 4:146-154.
 */
package dev.dogleg.schedule;
