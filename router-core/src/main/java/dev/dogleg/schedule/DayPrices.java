package dev.dogleg.schedule;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Prices;

/**
 * What the seconds of one day cost.
 *
 * @param driven one driven second
 * @param waited one waited second
 * @param overtime one second after the shift's end
 * @param end one second by which the day ends later
 * @param lateFrom second after which the day's end costs {@code late} more
 * @param late price of each such second
 * @param groomFrom service seconds after which each one costs {@code groom}
 * @param groom price of each such second
 * @param rules by how much prices of rules are to be taken
 */
record DayPrices(
    long driven,
    long waited,
    long overtime,
    long end,
    int lateFrom,
    long late,
    int groomFrom,
    long groom,
    long rules) {

  private static final BalanceTerms NO_BALANCE = new BalanceTerms(0, 0, 0, 0);

  /** The prices of a request, in sixtieths. */
  static DayPrices of(Prices prices, DayTerms terms) {
    BalanceTerms balance = terms.balance().orElse(NO_BALANCE);
    return new DayPrices(
        Prices.SIXTIETHS_PER_DRIVE_SECOND,
        prices.waitingMinuteSeconds(),
        prices.overtimeMinuteSeconds(),
        prices.endMinuteSeconds(),
        balance.endSeconds(),
        balance.endSixtieths(),
        balance.groomSeconds(),
        balance.groomSixtieths(),
        1);
  }

  /** Prices of driving and of the end alone. */
  static DayPrices plain(long driven, long end) {
    return new DayPrices(driven, 0, 0, end, 0, 0, 0, 0, 1);
  }

  /** Every price times {@code scale}, and {@code perSecond} more for a driven or waited second. */
  DayPrices times(long scale, long perSecond) {
    return new DayPrices(
        Math.addExact(Math.multiplyExact(driven, scale), perSecond),
        Math.addExact(Math.multiplyExact(waited, scale), perSecond),
        Math.multiplyExact(overtime, scale),
        Math.multiplyExact(end, scale),
        lateFrom,
        Math.multiplyExact(late, scale),
        groomFrom,
        Math.multiplyExact(groom, scale),
        Math.multiplyExact(rules, scale));
  }
}
