package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;

/**
 * The spare of an event by trying every arrival and every leaving second, backwards from the end:
 * no halving, no intervals.
 */
final class SecondBySecondSpare {
  private static final int SECONDS = 500;

  private final DayRequest request;
  private final List<PlannedStop> stops;
  private final IntUnaryOperator letter;
  private final int[] length;
  private final BreakRule rule;
  private final int latestEnd;
  private final Map<Integer, int[]> known = new TreeMap<>();

  /**
   * {@code letter} and {@code length} tell an event's kind and seconds as {@link SecondBySecond}.
   */
  SecondBySecondSpare(
      DayRequest request,
      List<PlannedStop> stops,
      IntUnaryOperator letter,
      IntUnaryOperator length) {
    this.length = IntStream.range(0, stops.size()).map(length).toArray();
    this.request = request;
    this.stops = stops;
    this.letter = letter;
    this.rule = request.shift().breakRule().orElse(null);
    this.latestEnd = request.shift().hours().toSeconds() + request.shift().overtimeSeconds();
  }

  /** The spare of one event of a sound plan. */
  int of(int k) {
    int largest = -1;
    int arrive = stops.get(k).arriveSeconds();
    char kind = (char) letter.applyAsInt(k);
    if (kind == 'H') {
      return latestEnd - arrive;
    }
    int stayFirst = kind == 'V' && letter.applyAsInt(k - 1) == 'b' ? k - 1 : k;
    int stayLast = lastOfStay(stayFirst);
    int[] leave = firstLeaving(stayLast);
    for (int t = arrive; t < SECONDS; t++) {
      if (kind == 'L' ? leave[t] == t : mayArrive(stayFirst, t, leave)) {
        largest = t;
      }
    }
    return largest - arrive;
  }

  private int lastOfStay(int first) {
    boolean two = letter.applyAsInt(first) == 'b' || letter.applyAsInt(first + 1) == 'a';
    return two ? first + 1 : first;
  }

  /** By second, the first one from it on at which the event's door may be left for the rest. */
  private int[] firstLeaving(int k) {
    int[] first = known.get(k);
    if (first == null) {
      first = workOut(k);
      known.put(k, first);
    }
    return first;
  }

  private int[] workOut(int k) {
    int[] first = new int[SECONDS + 1];
    int[] onward = null;
    if (letter.applyAsInt(k + 1) != 'H') {
      onward = firstLeaving(lastOfStay(k + 1));
    }
    first[SECONDS] = SECONDS;
    for (int t = SECONDS - 1; t >= 0; t--) {
      int from = stops.get(k).place();
      int arrive = t + request.travel().driveSeconds(from, stops.get(k + 1).place(), t);
      boolean may = onward == null ? arrive <= latestEnd : mayArrive(k + 1, arrive, onward);
      first[t] = may ? t : first[t + 1];
    }
    return first;
  }

  /** Whether a stay that begins with event k may begin at t; a break after a visit counts alone. */
  private boolean mayArrive(int k, int t, int[] firstLeaving) {
    char first = (char) letter.applyAsInt(k);
    Visit visit = null;
    for (Visit known : request.visits()) {
      visit = known.id().equals(stops.get(k).visitId()) ? known : visit;
    }
    int now = t;
    int stayFrom = t;
    if (first == 'W') {
      return at(firstLeaving, t + length[k]) < SECONDS;
    }
    if (first == 'a') {
      stayFrom = stops.get(k - 1).arriveSeconds();
    } else {
      if (first == 'b') {
        now = takeBreak(now);
      }
      now = serve(visit, t, now, length[first == 'b' ? k + 1 : k]);
      if (first == 'V' && letter.applyAsInt(k + 1) == 'a') {
        now = takeBreak(now);
      }
    }
    now = first == 'a' ? takeBreak(now) : now;
    for (TimeWindow van : visit.vanWithin()) {
      int leave = at(firstLeaving, Math.max(now, van.fromSeconds()));
      if (van.holds(stayFrom) && van.holds(leave) && leave < SECONDS) {
        return true;
      }
    }
    return false;
  }

  private static int at(int[] firstLeaving, int t) {
    return firstLeaving[Math.min(SECONDS, t)];
  }

  /** The end of a break taken as early as possible; {@code SECONDS} where it is not possible. */
  private int takeBreak(int now) {
    for (int t = now; t < SECONDS; t++) {
      if (rule.startWithin().holds(t)) {
        return t + rule.lengthSeconds();
      }
    }
    return SECONDS;
  }

  /** The end of a service; {@code SECONDS} where it is not possible. */
  private static int serve(Visit visit, int arrive, int now, int seconds) {
    for (int t = now; t < SECONDS; t++) {
      for (TimeWindow window : visit.arriveWithin()) {
        if (arrive <= window.toSeconds() && t >= window.fromSeconds()) {
          int end = t + seconds;
          return end <= visit.doneBySeconds() ? end : SECONDS;
        }
      }
    }
    return SECONDS;
  }
}
