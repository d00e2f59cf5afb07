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

/**
 * The spare of an event by trying every arrival and every leaving second, backwards from the end:
 * no halving, no intervals.
 */
final class SecondBySecondSpare {
  private static final int SECONDS = 500;

  private final DayRequest request;
  private final List<PlannedStop> stops;
  private final IntUnaryOperator letter;
  private final BreakRule rule;
  private final int latestEnd;
  private final Map<Integer, boolean[]> known = new TreeMap<>();

  /** {@code letter} tells an event's kind as in {@link SecondBySecond}. */
  SecondBySecondSpare(DayRequest request, List<PlannedStop> stops, IntUnaryOperator letter) {
    this.request = request;
    this.stops = stops;
    this.letter = letter;
    this.rule = request.shift().breakRule().orElse(null);
    this.latestEnd = request.shift().hours().toSeconds() + request.shift().overtimeSeconds();
  }

  /** The spare of one event of a sound plan. */
  int of(int k) {
    // mayLeave[t]: leaving the door (or start place) of the event at t, the rest can be done.
    int largest = -1;
    int arrive = stops.get(k).arriveSeconds();
    char kind = (char) letter.applyAsInt(k);
    if (kind == 'H') {
      return latestEnd - arrive;
    }
    int stayFirst = kind == 'V' && letter.applyAsInt(k - 1) == 'b' ? k - 1 : k;
    int stayLast = lastOfStay(stayFirst);
    boolean[] mayLeave = mayLeave(stayLast);
    for (int t = arrive; t < SECONDS; t++) {
      if (kind == 'L' ? mayLeave[t] : mayArrive(stayFirst, t, mayLeave)) {
        largest = t;
      }
    }
    return largest - arrive;
  }

  private int lastOfStay(int first) {
    boolean two = letter.applyAsInt(first) == 'b' || letter.applyAsInt(first + 1) == 'a';
    return two ? first + 1 : first;
  }

  private boolean[] mayLeave(int k) {
    boolean[] may = known.get(k);
    if (may == null) {
      may = workOut(k);
      known.put(k, may);
    }
    return may;
  }

  private boolean[] workOut(int k) {
    boolean[] may = new boolean[SECONDS];
    boolean[] onward = null;
    if (letter.applyAsInt(k + 1) != 'H') {
      onward = mayLeave(lastOfStay(k + 1));
    }
    for (int t = 0; t < SECONDS; t++) {
      int from = stops.get(k).place();
      int arrive = t + request.travel().driveSeconds(from, stops.get(k + 1).place(), t);
      may[t] = onward == null ? arrive <= latestEnd : mayArrive(k + 1, arrive, onward);
    }
    return may;
  }

  /** Whether a stay that begins with event k may begin at t; a break after a visit counts alone. */
  private boolean mayArrive(int k, int t, boolean[] mayLeave) {
    char first = (char) letter.applyAsInt(k);
    Visit visit = null;
    for (Visit known : request.visits()) {
      visit = known.id().equals(stops.get(k).visitId()) ? known : visit;
    }
    int now = t;
    int stayFrom = t;
    if (first == 'a') {
      stayFrom = stops.get(k - 1).arriveSeconds();
    } else {
      if (first == 'b') {
        now = takeBreak(now);
      }
      now = serve(visit, t, now);
      if (first == 'V' && letter.applyAsInt(k + 1) == 'a') {
        now = takeBreak(now);
      }
    }
    now = first == 'a' ? takeBreak(now) : now;
    for (TimeWindow van : visit.vanWithin()) {
      for (int leave = now; leave < SECONDS; leave++) {
        if (van.holds(stayFrom) && van.holds(leave) && mayLeave[leave]) {
          return true;
        }
      }
    }
    return false;
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
  private static int serve(Visit visit, int arrive, int now) {
    for (int t = now; t < SECONDS; t++) {
      for (TimeWindow window : visit.arriveWithin()) {
        if (arrive <= window.toSeconds() && t >= window.fromSeconds()) {
          int end = t + visit.serviceSeconds();
          return end <= visit.doneBySeconds() ? end : SECONDS;
        }
      }
    }
    return SECONDS;
  }
}
