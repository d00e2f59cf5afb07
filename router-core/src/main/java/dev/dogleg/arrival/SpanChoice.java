package dev.dogleg.arrival;

import dev.dogleg.time.TimeWindow;

/**
 * Chooses the span of one door: its end by the target, its start where width and waiting weigh
 * least.
 */
final class SpanChoice {
  private final SpanTerms terms;

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
    int needed = arrival.quantileSeconds(terms.keptPermille());
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
      int kept = Math.max(start, within.fromSeconds());
      long price =
          (long) terms.widthMinutePrice() * (to - kept)
              + Math.round(terms.waitMinutePrice() * arrival.meanWaitSeconds(kept));
      if (price < cheapest) {
        cheapest = price;
        best = kept;
      }
      if (start <= earliest) {
        break;
      }
    }
    int wait = (int) Math.round(arrival.meanWaitSeconds(best));
    return new TimeToTell(
        visitId,
        new TimeWindow(Math.min(best, to), to),
        arrival.permilleBy(to),
        wait,
        needed <= to);
  }

  private int up(int seconds) {
    return (seconds + terms.roundSeconds() - 1) / terms.roundSeconds() * terms.roundSeconds();
  }

  private int down(int seconds) {
    return seconds / terms.roundSeconds() * terms.roundSeconds();
  }
}
