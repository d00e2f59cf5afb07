package dev.dogleg.cli.words;

import dev.dogleg.model.WallSpan;
import java.util.Optional;

/**
 * Decides which half of the day a time without am and pm means, by the hours usually worked.
 *
 * <p>Of a span's readings that do not run backwards the one that lies wholly in those hours is
 * taken, then one that touches them, then any; among equals the shortest, then the earliest. Where
 * one end is written as only the 24-hour clock does ({@code 7:00-20:00}), the other is read so too,
 * if that lies in those hours. Of a single time the earliest that lies in those hours, else the
 * earliest. It is a guess where a reading not taken was as good, or where the plain reading was
 * passed over.
 *
 * @param <T> what was decided
 * @param value the decision
 * @param guess whether it should be said
 */
record HalfOfDay<T>(T value, boolean guess) {

  static Optional<HalfOfDay<WallSpan>> span(ClockTime from, ClockTime to, WallSpan usual) {
    if ((from.fullDay() || to.fullDay()) && from.seconds() < to.seconds()) {
      WallSpan written = new WallSpan(from.seconds(), to.seconds());
      if (rank(written, usual) == 0) {
        return Optional.of(new HalfOfDay<>(written, false));
      }
    }
    WallSpan best = null;
    int bestRank = 0;
    boolean rival = false;
    for (int start : from.readings()) {
      for (int end : to.readings()) {
        if (start >= end || end > WallSpan.MIDNIGHT) {
          continue;
        }
        WallSpan span = new WallSpan(start, end);
        int rank = rank(span, usual);
        int longer = best == null ? -1 : length(span) - length(best);
        if (best == null || rank < bestRank || (rank == bestRank && longer < 0)) {
          best = span;
          bestRank = rank;
          rival = false;
        } else if (rank == bestRank && longer == 0) {
          rival = true;
        }
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    boolean plain = best.fromSeconds() == from.seconds() && best.toSeconds() == to.seconds();
    boolean plainPassedOver = !plain && from.seconds() < to.seconds();
    return Optional.of(new HalfOfDay<>(best, rival || plainPassedOver));
  }

  static HalfOfDay<Integer> time(ClockTime time, WallSpan usual) {
    int[] readings = time.readings();
    int inside = 0;
    int found = readings[0];
    for (int reading : readings) {
      if (reading >= usual.fromSeconds() && reading <= usual.toSeconds() && inside++ == 0) {
        found = reading;
      }
    }
    return new HalfOfDay<>(found, found != readings[0] || inside > 1);
  }

  private static int length(WallSpan span) {
    return span.toSeconds() - span.fromSeconds();
  }

  private static int rank(WallSpan span, WallSpan usual) {
    if (span.fromSeconds() >= usual.fromSeconds() && span.toSeconds() <= usual.toSeconds()) {
      return 0;
    }
    return span.meets(usual) ? 1 : 2;
  }
}
