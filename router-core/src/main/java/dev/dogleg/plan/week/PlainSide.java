package dev.dogleg.plan.week;

/**
 * One end of a plain day with its tables and the prices in force.
 *
 * @param day the day read from that end
 * @param reach what may still follow
 * @param floor what the rest is worth at least, at these prices
 * @param values ways at these prices
 */
record PlainSide(PlainDay day, PlainOpen reach, PlainFloor floor, PlainValues values) {
  /** An end of a day without prices. */
  static PlainSide of(PlainDay day) {
    long[] free = new long[day.n];
    return new PlainSide(
        day, new PlainOpen(day), new PlainFloor(day), PlainValues.of(day, free, 0));
  }

  /** The same at other prices. */
  PlainSide at(long[] worth, long scale) {
    PlainValues priced = PlainValues.of(day, worth, scale);
    floor.fill(priced.arcs, priced.ends);
    return new PlainSide(day, reach, floor, priced);
  }
}
