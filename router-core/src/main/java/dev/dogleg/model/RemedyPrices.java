package dev.dogleg.model;

import java.util.List;

/**
 * Prices of what is done where a week is full, and of what clients like; seconds of driving.
 *
 * <p>Each remedy named later is so much dearer that the ones before are used first: an ask and a
 * visit left to the next week cost 3,600 s, 14,400 s or 57,600 s as first, second or third (four
 * times as much each); a minute of overtime costs one, four or sixteen times its usual price, so an
 * hour at the usual 120 s lies between the two.
 *
 * @param overtimeTimes factor of the price of an overtime minute, 1..100
 * @param askSeconds moving a client who is to be asked, 0..1,000,000
 * @param nextWeekSeconds leaving an agreed booking to a later day of its span, 0..1,000,000
 * @param likeSeconds a day or hour that the client likes less, 0..36,000
 */
public record RemedyPrices(
    int overtimeTimes, int askSeconds, int nextWeekSeconds, int likeSeconds) {
  private static final int FIRST_SECONDS = 3_600;
  private static final int TIMES = 4;
  private static final int USUAL_LIKE_SECONDS = 900;

  /** Checks the ranges. */
  public RemedyPrices {
    if (overtimeTimes < 1
        || overtimeTimes > 100
        || askSeconds < 0
        || askSeconds > 1_000_000
        || nextWeekSeconds < 0
        || nextWeekSeconds > 1_000_000
        || likeSeconds < 0
        || likeSeconds > 36_000) {
      throw new IllegalArgumentException("prices of remedies out of range");
    }
  }

  /**
   * Prices by the order of remedies.
   *
   * @param order the first remedy first; one that is missing is not used, whatever its price
   * @return the prices
   */
  public static RemedyPrices of(List<Remedy> order) {
    return new RemedyPrices(
        power(order, Remedy.LONGER_DAY),
        FIRST_SECONDS * power(order, Remedy.ASK),
        FIRST_SECONDS * power(order, Remedy.NEXT_WEEK),
        USUAL_LIKE_SECONDS);
  }

  private static int power(List<Remedy> order, Remedy remedy) {
    int factor = 1;
    for (int before = order.indexOf(remedy); before > 0; before--) {
      factor *= TIMES;
    }
    return factor;
  }
}
