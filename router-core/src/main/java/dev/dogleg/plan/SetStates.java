package dev.dogleg.plan;

import java.util.Arrays;

/**
 * Numbers the states (set of visits served, last of them) of sets up to a size.
 *
 * <p>A set is the bits of an {@code int}. States of one set are neighbours, in the order of their
 * last visit. Immutable.
 */
final class SetStates {
  private final int most;
  private final int[] base;
  private final int size;

  /** States of sets of up to {@code most} of {@code n} visits, n at most 24. */
  SetStates(int n, int most) {
    this.most = most;
    base = new int[1 << n];
    int next = 0;
    for (int set = 0; set < base.length; set++) {
      int visits = Integer.bitCount(set);
      base[set] = visits <= most ? next : -1;
      next += visits <= most ? visits : 0;
    }
    size = next;
  }

  /** {@return number of states} */
  int size() {
    return size;
  }

  /** {@return whether a set is small enough} */
  boolean holds(int set) {
    return base[set] >= 0;
  }

  /** {@return whether a set may have another visit} */
  boolean grows(int set) {
    return Integer.bitCount(set) < most;
  }

  /** {@return number of a state} */
  int of(int set, int last) {
    return base[set] + Integer.bitCount(set & (1 << last) - 1);
  }

  /** {@return an array for all states} */
  int[] filled(int value) {
    int[] array = new int[size];
    Arrays.fill(array, value);
    return array;
  }
}
