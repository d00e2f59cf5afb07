/**
 * The independent check of a planned day or week, also of one that a person edited by hand.
 *
 * <p><b>What it is.</b> {@link dev.dogleg.audit.DayAudit} reads a plan against its request and
 * lists every breach with what was measured and what is allowed; {@link dev.dogleg.audit.WeekAudit}
 * does so for a week, day by day and as a whole. {@link dev.dogleg.audit.DayReTiming} gives times
 * to an order that a person wrote down, never refuses, and lists the breaches too. All are readings
 * of {@code docs/TIMING.md} and {@code docs/WEEK.md} alone: no arithmetic is shared with the
 * planner, so an error there and the same error here are two errors. Codes: {@code
 * docs/FINDINGS.md}.
 *
 * <p><b>Needs.</b> {@code fault}, {@code time}, {@code model}, {@code travel}, {@code itinerary};
 * never the planner. <b>Promises.</b> An empty list means that every rule of those pages which can
 * be seen from a plan holds: order, places, drives at the true leaving times, limits, break, water,
 * must rules, waiting, spare, cost with the prices of rules and balance, what is left out and
 * whether its reason is true, and a proof that does not contradict the plan; a counted booking of a
 * week that has room beside all that a van-day serves is seen too. That no better week exists is
 * computed again by {@link dev.dogleg.audit.CertificateAudit} from the week's certificate; how much
 * of that is taken from the certificate unproved it says. Findings stand in the order of the day,
 * those on the whole day last. Nothing throws for a bad plan. <b>Costs.</b> A few hundred drives
 * asked for per stop (the spare is searched by halving); a conflict of up to five visits (four
 * where water may be fetched) is tried in every order. A certificate: its sums, and the sets of
 * each van-day, small ones first, as far as a count of work goes: for 30 bookings on five days
 * about as long as the planner takes. Bounds of sets rest on the least drives that {@code travel}
 * tells, on which the planner's rest too.
 *
 * <p><b>Where it comes from.</b> A validator apart from the solver is common practice in operations
 * research; intervals of possible leaving times are carried forward stop by stop as in Savelsbergh
 * 1985, "Local search in routing problems with time windows", Annals of Operations Research
 * 4:285-305, written anew for several windows and traffic.
 */
package dev.dogleg.audit;
