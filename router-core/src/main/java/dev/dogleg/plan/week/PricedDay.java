package dev.dogleg.plan.week;

/**
 * A kind of van-day with prices, as {@link DayLabels} and {@link ReducedKeep} look at it.
 *
 * @param day what is known of it however its rules and tanks are
 * @param step carries partial days from door to door
 * @param duals prices
 * @param glance tells what may still become of a partial day, by these prices
 * @param open what may still come, with the cuts of these prices
 * @param near what is remembered where
 * @param load load points
 * @param stops whether water may be needed
 */
record PricedDay(
    RelaxedDay day,
    RunStep step,
    DayDuals duals,
    RestGlance glance,
    StillOpen open,
    NearVisits near,
    DayLoad load,
    StopNeed stops) {}
