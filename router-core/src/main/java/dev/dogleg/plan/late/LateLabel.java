package dev.dogleg.plan.late;

import java.util.Arrays;

/**
 * The earliest way found to be ready at a last visit after some others, with what it breaks.
 *
 * <p>Immutable; one search compares many.
 */
final class LateLabel {
  final LateLabel before;
  final long served;
  final int visit;
  final boolean breakTaken;
  final int ready;
  final int leaveBy;
  final int stops;
  final int fresh;
  final int grey;

  /** Told times broken and seconds late, the number in the upper half. */
  final long told;

  /** Wishes broken and seconds late, likewise. */
  final long wish;

  /** Seconds late by visit; the last one is the break's. */
  final int[] late;

  LateLabel(
      LateLabel before,
      long served,
      int visit,
      boolean breakTaken,
      int ready,
      int leaveBy,
      int stops,
      int fresh,
      int grey,
      long told,
      long wish,
      int[] late) {
    this.before = before;
    this.served = served;
    this.visit = visit;
    this.breakTaken = breakTaken;
    this.ready = ready;
    this.leaveBy = leaveBy;
    this.stops = stops;
    this.fresh = fresh;
    this.grey = grey;
    this.told = told;
    this.wish = wish;
    this.late = late;
  }

  int breakLate() {
    return late[late.length - 1];
  }

  /** Less than 0 where this one breaks less, 0 where just as much. */
  int compareBroken(LateLabel other) {
    if (told != other.told) {
      return Long.compare(told, other.told);
    }
    return wish != other.wish
        ? Long.compare(wish, other.wish)
        : Integer.compare(breakLate(), other.breakLate());
  }

  /**
   * Whether another one with the same visits is of no use beside this one: whatever it can do this
   * one can do as early, and it breaks more, or just the same.
   */
  boolean makesUseless(LateLabel other) {
    if (ready > other.ready
        || leaveBy < other.leaveBy
        || stops > other.stops
        || fresh > other.fresh
        || grey > other.grey) {
      return false;
    }
    int broken = compareBroken(other);
    return broken < 0 || (broken == 0 && Arrays.equals(late, other.late));
  }

  /** How much is broken, with a number of visits left out. */
  Lateness lateness(int leftOut) {
    return new Lateness(
        leftOut,
        (int) (told >>> Integer.SIZE),
        (int) told,
        (int) (wish >>> Integer.SIZE),
        (int) wish,
        breakLate());
  }

  /** Visits in their order. */
  int[] order() {
    int length = 0;
    for (LateLabel one = this; one.before != null; one = one.before) {
      length++;
    }
    int[] order = new int[length];
    for (LateLabel one = this; one.before != null; one = one.before) {
      order[--length] = one.visit;
    }
    return order;
  }
}
