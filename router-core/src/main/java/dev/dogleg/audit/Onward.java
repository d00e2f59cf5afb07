package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToLongFunction;

/**
 * Which leaving times are possible door after door, as early as the limits let them be.
 *
 * <p>Maintainers: inside one span of {@code vanWithin} a later arrival never ends earlier (windows
 * and break only push forward, drives are first in, first out), and a served door may be left at
 * any later second of that span. So one interval per span says all, and none means that the day
 * cannot go on.
 */
final class Onward {
  /** An arrival that does not happen. */
  static final long NEVER = Long.MAX_VALUE;

  private final TravelTimes travel;
  private final BreakRule rule;

  /** Onward with a break rule, which may be null where no break is ever asked for. */
  Onward(TravelTimes travel, BreakRule rule) {
    this.travel = travel;
    this.rule = rule;
  }

  /** Leaving times of a door that is reached at some second not before {@code arriveSeconds}. */
  List<Span> afterArrival(Door door, BreakAt at, int arriveSeconds) {
    return leaving(door, at, from -> Math.max(from, arriveSeconds));
  }

  /** Leaving times of a door to which the van drives from a place it may leave at given times. */
  List<Span> afterDrive(List<Span> left, int place, Door door, BreakAt at) {
    return leaving(door, at, from -> earliestArrival(left, place, door.place(), from));
  }

  /** Leaving times after a break that starts at or after a second, inside one stay. */
  List<Span> afterBreak(int startSeconds, TimeWindow stay) {
    int start = Math.max(startSeconds, rule.startWithin().fromSeconds());
    int end = start + rule.lengthSeconds();
    boolean fits = start <= rule.startWithin().toSeconds() && end <= stay.toSeconds();
    return fits ? List.of(new Span(end, stay.toSeconds())) : List.of();
  }

  private List<Span> leaving(Door door, BreakAt at, IntToLongFunction arrivalNotBefore) {
    List<Span> spans = new ArrayList<>();
    for (TimeWindow van : door.vanWithin()) {
      long arrive = arrivalNotBefore.applyAsLong(van.fromSeconds());
      if (arrive > van.toSeconds()) {
        continue;
      }
      Stay stay = Stay.earliest(door, at, rule, Math.toIntExact(arrive));
      if (stay.inTime(door, rule) && stay.readySeconds() <= van.toSeconds()) {
        spans.add(new Span(stay.readySeconds(), van.toSeconds()));
      }
    }
    return spans;
  }

  /**
   * The earliest arrival at or after a second.
   *
   * @return elapsed seconds, or {@link #NEVER}
   */
  long earliestArrival(List<Span> left, int from, int to, int notBefore) {
    long best = NEVER;
    if (!travel.reaches(from, to)) {
      return best;
    }
    for (Span span : left) {
      if (arrival(from, to, span.toSeconds()) < notBefore) {
        continue;
      }
      int low = span.fromSeconds();
      int high = span.toSeconds();
      while (low < high) {
        int middle = low + (high - low) / 2;
        if (arrival(from, to, middle) >= notBefore) {
          high = middle;
        } else {
          low = middle + 1;
        }
      }
      best = Math.min(best, arrival(from, to, low));
    }
    return best;
  }

  private long arrival(int from, int to, int leave) {
    return leave + (long) travel.driveSeconds(from, to, leave);
  }
}
