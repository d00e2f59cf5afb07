package dev.dogleg.arrival;

import dev.dogleg.time.TimeWindow;

/**
 * Chooses the spans of a day, one door after the other: each end by the target, each start where
 * width and waiting weigh least.
 *
 * <p>Ends are rounded outward, so a door is kept more often than asked. What the doors before have
 * above the target a later door may fall short of it, within a limit: so of all told times of a day
 * just the share asked for is kept, and spans stay narrow.
 */
final class SpanChoice {
  /** The most by which a single door may fall short of the target, in thousandths. */
  static final int MOST_SHORT = 50;

  private final SpanTerms terms;

  /** What the doors before are kept above the target, in thousandths. */
  private int credit;

  SpanChoice(SpanTerms terms) {
    this.terms = terms;
  }

  /**
   * The span to tell.
   *
   * @param visitId whose door
   * @param arrival when the van is there
   * @param within what was told or asked before; the span stays inside
   */
  TimeToTell of(String visitId, ArrivalTime arrival, TimeWindow within) {
    int allowed = Math.max(0, Math.min(credit, MOST_SHORT));
    int needed = arrival.quantileSeconds(terms.keptPermille() - allowed);
    // Where the van is there before the span may begin, the span is as wide as the least all the
    // same: nobody is told a minute.
    int least = within.fromSeconds() + terms.leastWidthSeconds();
    int to = Math.min(within.toSeconds(), up(Math.max(needed, least)));
    int latestFrom = to - terms.leastWidthSeconds();
    int from = down(Math.max(0, latestFrom));
    long cheapest = Long.MAX_VALUE;
    int best = Math.max(within.fromSeconds(), Math.min(from, to));
    int earliest = Math.max(within.fromSeconds(), arrival.quantileSeconds(1) - 3_600);
    for (int start = from; ; start -= terms.roundSeconds()) {
      int starts = Math.max(start, within.fromSeconds());
      long price =
          (long) terms.widthMinutePrice() * (to - starts)
              + Math.round(terms.waitMinutePrice() * arrival.meanWaitSeconds(starts));
      if (price < cheapest) {
        cheapest = price;
        best = starts;
      }
      if (start <= earliest) {
        break;
      }
    }
    int kept = arrival.permilleBy(to);
    credit += kept - terms.keptPermille();
    int wait = (int) Math.round(arrival.meanWaitSeconds(best));
    return new TimeToTell(
        visitId, new TimeWindow(Math.min(best, to), to), kept, wait, needed <= to);
  }

  private int up(int seconds) {
    return (seconds + terms.roundSeconds() - 1) / terms.roundSeconds() * terms.roundSeconds();
  }

  private int down(int seconds) {
    return seconds / terms.roundSeconds() * terms.roundSeconds();
  }
}
