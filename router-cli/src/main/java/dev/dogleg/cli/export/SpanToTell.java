package dev.dogleg.cli.export;

import dev.dogleg.time.TimeWindow;

/** The span that is told anew to somebody who is reached late. */
final class SpanToTell {
  private static final int QUARTER_SECONDS = 900;

  private SpanToTell() {}

  /**
   * The span for an arrival: a quarter of an hour either way, outward to whole quarters; it does
   * not begin before the quarter in which it is told.
   *
   * @param arriveSeconds planned arrival, elapsed seconds, not before {@code nowSeconds}
   * @param nowSeconds when it is told, elapsed seconds
   * @return the span
   */
  static TimeWindow around(int arriveSeconds, int nowSeconds) {
    int from = Math.max(nowSeconds, arriveSeconds - QUARTER_SECONDS);
    int to = arriveSeconds + QUARTER_SECONDS;
    return new TimeWindow(
        from / QUARTER_SECONDS * QUARTER_SECONDS,
        (to + QUARTER_SECONDS - 1) / QUARTER_SECONDS * QUARTER_SECONDS);
  }
}
