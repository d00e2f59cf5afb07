package dev.dogleg.model;

import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * One of the possibilities that a {@link When} joins by "or". Inside it everything holds at once,
 * and three limits stay apart.
 *
 * @param days weekdays it speaks of; empty: any day
 * @param arriveWithin the van is at the door within this span; an early van waits for its start
 * @param doneByWallSeconds wall-clock second at which the service must have ended; {@link
 *     WallSpan#OPEN} for no limit
 * @param vanWithin the van stands there only within one of these, its whole stay; sorted, apart, at
 *     least one
 * @param first whether it must be the first stop of the day
 */
public record WhenChoice(
    Set<DayOfWeek> days,
    WallSpan arriveWithin,
    int doneByWallSeconds,
    List<WallSpan> vanWithin,
    boolean first) {

  /** No limit at all. */
  public static final WhenChoice ANY =
      new WhenChoice(Set.of(), WallSpan.ALWAYS, WallSpan.OPEN, List.of(WallSpan.ALWAYS), false);

  /** Checks that the limits do not contradict each other. */
  public WhenChoice {
    Objects.requireNonNull(arriveWithin, "arriveWithin");
    days =
        days.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(days)); // day order
    vanWithin = List.copyOf(vanWithin);
    if (vanWithin.isEmpty()) {
      throw new IllegalArgumentException("the van may never stand there");
    }
    for (int w = 1; w < vanWithin.size(); w++) {
      if (vanWithin.get(w).fromSeconds() <= vanWithin.get(w - 1).toSeconds()) {
        throw new IllegalArgumentException("vanWithin must be sorted and apart: " + vanWithin);
      }
    }
    if (doneByWallSeconds != WallSpan.OPEN
        && (doneByWallSeconds < 0 || doneByWallSeconds > WallSpan.MIDNIGHT)) {
      throw new IllegalArgumentException("doneByWallSeconds out of range: " + doneByWallSeconds);
    }
    if (arriveWithin.fromSeconds() >= doneByWallSeconds) {
      throw new IllegalArgumentException("done before it may start");
    }
    WallSpan stay = new WallSpan(arriveWithin.fromSeconds(), doneByWallSeconds);
    if (vanWithin.stream().noneMatch(van -> van.meets(stay) && van.meets(arriveWithin))) {
      throw new IllegalArgumentException("the van may not stand there then");
    }
  }

  /**
   * Whether it speaks of a weekday.
   *
   * @param day the weekday
   * @return true where no weekdays are named too
   */
  public boolean on(DayOfWeek day) {
    return days.isEmpty() || days.contains(day);
  }

  /**
   * Whether another choice binds done-by, van and first in the same way.
   *
   * @param other the other choice
   * @return whether both may stand for one day
   */
  boolean agrees(WhenChoice other) {
    return doneByWallSeconds == other.doneByWallSeconds
        && vanWithin.equals(other.vanWithin)
        && first == other.first;
  }
}
