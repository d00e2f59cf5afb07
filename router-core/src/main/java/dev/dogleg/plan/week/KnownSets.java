package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** The columns of a growing pool by what they serve. */
final class KnownSets {
  private final ColumnPool pool;
  private final List<Map<BookingSet, Integer>> known = new ArrayList<>();
  private int met;

  /** Those of a pool, of so many kinds of van-days. */
  KnownSets(ColumnPool pool, int kinds) {
    this.pool = pool;
    for (int kind = 0; kind < kinds; kind++) {
      known.add(new HashMap<>());
    }
  }

  /** Meets the columns that came into the pool since; to be called where nobody looks meanwhile. */
  void meet() {
    for (; met < pool.size(); met++) {
      known.get(pool.kind(met)).put(BookingSet.of(pool.bookings(met)), met);
    }
  }

  /**
   * {@return the column of a kind that serves just a set, of those met; null where there is none}
   */
  Integer column(int kind, BookingSet set) {
    return known.get(kind).get(set);
  }
}
