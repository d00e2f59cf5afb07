package dev.dogleg.plan.week;

import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;

/** Columns chosen for good, and what they bar: all others that serve one of their bookings. */
final class ChosenColumns {
  private final ColumnPool pool;
  private final boolean[] gone;
  private final Set<Integer> chosen = new HashSet<>();

  /** None yet, of a pool of so many bookings. */
  ChosenColumns(ColumnPool pool, int bookings) {
    this.pool = pool;
    gone = new boolean[bookings];
  }

  /** Chooses a column. */
  void add(int column) {
    chosen.add(column);
    for (int booking : pool.bookings(column)) {
      gone[booking] = true;
    }
  }

  boolean contains(int column) {
    return chosen.contains(column);
  }

  /** {@return whether a column serves a booking of one that is chosen, and is not chosen itself} */
  boolean bar(int column) {
    return !chosen.isEmpty()
        && !chosen.contains(column)
        && Arrays.stream(pool.bookings(column)).anyMatch(booking -> gone[booking]);
  }

  /** {@return for each booking whether a column chosen serves it} */
  boolean[] gone() {
    return gone.clone();
  }
}
