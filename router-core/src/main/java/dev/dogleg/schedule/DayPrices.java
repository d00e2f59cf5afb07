package dev.dogleg.schedule;

import dev.dogleg.itinerary.Prices;

/**
 * What the seconds of one day cost.
 *
 * @param driven one driven second
 * @param waited one waited second
 * @param overtime one second after the shift's end
 * @param end one second by which the day ends later
 */
record DayPrices(long driven, long waited, long overtime, long end) {

  /** The prices of a request, in sixtieths. */
  static DayPrices of(Prices prices) {
    return new DayPrices(
        Prices.SIXTIETHS_PER_DRIVE_SECOND,
        prices.waitingMinuteSeconds(),
        prices.overtimeMinuteSeconds(),
        prices.endMinuteSeconds());
  }

  /** Every price times {@code scale}, and {@code perSecond} more for a driven or waited second. */
  DayPrices times(long scale, long perSecond) {
    return new DayPrices(
        Math.addExact(Math.multiplyExact(driven, scale), perSecond),
        Math.addExact(Math.multiplyExact(waited, scale), perSecond),
        Math.multiplyExact(overtime, scale),
        Math.multiplyExact(end, scale));
  }
}
