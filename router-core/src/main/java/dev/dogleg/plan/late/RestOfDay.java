package dev.dogleg.plan.late;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.time.TimeWindow;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Where a day stands: what was asked, what is done, where the van is and what time it is.
 *
 * @param day the whole day as it was asked, done visits included; windows hold only what may not
 *     slide (timed pills, people who are fixed), promises stand apart; the shift's start place is
 *     not used
 * @param promises at most one a visit
 * @param order ids of the day's visits in the order planned, each once; those that are missing come
 *     last
 * @param done ids of the visits made, in the order made
 * @param readySeconds where the last of {@code done} is still under way: when it will be ready,
 *     elapsed seconds; empty: it is ready
 * @param cancelled ids of visits that will not be made
 * @param place where the van stands, a number of the request's travel times
 * @param nowSeconds elapsed seconds since the day's local midnight, 0..{@link TimeWindow#DAY_END}
 * @param breakTaken whether the break was taken
 * @param waterUsed what was used since the tanks were last full and empty
 * @param waterStops water stops made, 0 or more
 * @param movable ids of visits that may go to another day
 */
public record RestOfDay(
    DayRequest day,
    List<Promise> promises,
    List<String> order,
    List<String> done,
    OptionalInt readySeconds,
    Set<String> cancelled,
    int place,
    int nowSeconds,
    boolean breakTaken,
    WaterUse waterUsed,
    int waterStops,
    Set<String> movable) {

  /** Most visits that may be left of a day. */
  public static final int MOST_LEFT = 60;

  /** Longest that a visit may still be under way. */
  public static final int MOST_UNDER_WAY_SECONDS = 21_600;

  /** Checks that all ids are the day's and the van stands at a known place. */
  public RestOfDay {
    Objects.requireNonNull(readySeconds, "readySeconds");
    Objects.requireNonNull(waterUsed, "waterUsed");
    promises = List.copyOf(promises);
    order = List.copyOf(order);
    done = List.copyOf(done);
    cancelled = Collections.unmodifiableSet(new TreeSet<>(cancelled));
    movable = Collections.unmodifiableSet(new TreeSet<>(movable));
    Set<String> ids = day.visits().stream().map(Visit::id).collect(Collectors.toSet());
    distinct(ids, order);
    distinct(ids, done);
    distinct(ids, promises.stream().map(Promise::visitId).toList());
    if (!ids.containsAll(cancelled) || !ids.containsAll(movable)) {
      throw new IllegalArgumentException("cancelled or movable names an unknown visit");
    }
    if (!Collections.disjoint(done, cancelled)) {
      throw new IllegalArgumentException("a visit is both done and cancelled");
    }
    if (place < 0 || place >= day.travel().size()) {
      throw new IllegalArgumentException("the van stands at an unknown place: " + place);
    }
    if (nowSeconds < 0 || nowSeconds > TimeWindow.DAY_END || waterStops < 0) {
      throw new IllegalArgumentException("out of range: " + nowSeconds + ", " + waterStops);
    }
    if (readySeconds.isPresent()
        && (done.isEmpty()
            || readySeconds.getAsInt() < nowSeconds
            || readySeconds.getAsInt() > nowSeconds + MOST_UNDER_WAY_SECONDS)) {
      throw new IllegalArgumentException("what is under way is ready now or within 6 hours");
    }
    if (ids.size() - done.size() - cancelled.size() > MOST_LEFT) {
      throw new IllegalArgumentException("more than " + MOST_LEFT + " visits are left");
    }
  }

  private static void distinct(Set<String> known, List<String> ids) {
    Set<String> seen = new HashSet<>();
    for (String id : ids) {
      if (!known.contains(id) || !seen.add(id)) {
        throw new IllegalArgumentException("unknown or named twice: " + id);
      }
    }
  }

  /** {@return visits still to be made, in the day's order} */
  List<Visit> left() {
    return day.visits().stream()
        .filter(visit -> !done.contains(visit.id()) && !cancelled.contains(visit.id()))
        .toList();
  }
}
