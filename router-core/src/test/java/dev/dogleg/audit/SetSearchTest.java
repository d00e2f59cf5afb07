package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomWeeks;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The audit's cost of each set, and its bounds, against an oracle that shares nothing with it. */
class SetSearchTest {
  private static final long PLENTY = 1_000_000_000L;

  /** A van-day, and how the audit looks at its sets. */
  private record Looked(DayRequest day, WorkLeft work, SetSweep sweep, SetSearch search) {
    static Looked at(DayRequest day, long steps) {
      WorkLeft work = new WorkLeft(steps);
      RoomTerms terms = RoomTerms.of(day);
      DaySeconds seconds = new DaySeconds(day);
      LeastDay least = new LeastDay(day, terms, seconds);
      SetSweep sweep = new SetSweep(day, least, work);
      return new Looked(day, work, sweep, new SetSearch(day, terms, seconds, least, work));
    }

    /** What no day of each set goes below, by set. */
    Map<Long, Long> bounds() {
      Map<Long, Long> bounds = new HashMap<>();
      while (!sweep.done() && !work.spent()) {
        sweep.next(bounds::put);
      }
      return bounds;
    }
  }

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  private static DayRequest day(long seed) {
    return RandomWeeks.week(seed, 4 + (int) (seed % 2), 1, seed % 4 > 0).asking(0);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void everySetCostsWhatTheOracleSays(long seed) {
    DayRequest day = day(seed);
    Looked looked = Looked.at(day, PLENTY);
    long[] right = DayOracle.costsBySet(day);
    List<String> wrong = new ArrayList<>();
    for (int set = 1; set < right.length; set++) {
      long cost = right[set] < DayOracle.NEVER ? right[set] : DaySeconds.NEVER;
      long found = looked.search.least(set, DaySeconds.NEVER);
      if (found != cost) {
        wrong.add("set " + set + " costs " + cost + ", found " + found);
      }
      if (cost < DaySeconds.NEVER
          && (looked.search.least(set, cost + 1) != cost
              || looked.search.least(set, cost) != DaySeconds.NEVER)) {
        wrong.add("set " + set + " of " + cost + " is not told from what costs as much");
      }
    }
    assertEquals(List.of(), wrong, "seed " + seed);
  }

  /** No set that a day can serve is passed over, and none is said to cost more than it does. */
  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void noBoundIsAboveTheCost(long seed) {
    DayRequest day = day(seed);
    Map<Long, Long> bounds = Looked.at(day, PLENTY).bounds();
    long[] right = DayOracle.costsBySet(day);
    List<String> wrong = new ArrayList<>();
    for (int set = 1; set < right.length; set++) {
      Long bound = bounds.get((long) set);
      if (right[set] < DayOracle.NEVER && (bound == null || bound > right[set])) {
        wrong.add("set " + set + " costs " + right[set] + ", bound " + bound);
      }
    }
    assertEquals(List.of(), wrong, "seed " + seed);
  }

  /**
   * The bounds are good for something: most sets that no day serves are seen, most cost is told.
   */
  @Test
  void boundsAreOfUse() {
    long told = 0;
    long costs = 0;
    int passedOver = 0;
    int impossible = 0;
    for (long seed = 1; seed <= 60; seed++) {
      DayRequest day = day(seed);
      Map<Long, Long> bounds = Looked.at(day, PLENTY).bounds();
      long[] right = DayOracle.costsBySet(day);
      for (int set = 1; set < right.length; set++) {
        if (right[set] < DayOracle.NEVER) {
          told += bounds.get((long) set);
          costs += right[set];
        } else {
          impossible++;
          passedOver += bounds.containsKey((long) set) ? 0 : 1;
        }
      }
    }
    String seen = told + " of " + costs + ", " + passedOver + " of " + impossible;
    assertTrue(told > costs / 3 && passedOver > impossible / 3, seen);
  }

  /** Spent work is said, whatever was found by then. */
  @Test
  void spentWorkIsSaid() {
    DayRequest day = day(8);
    Looked looked = Looked.at(day, 10);
    looked.bounds();
    assertTrue(looked.work.spent());
    looked = Looked.at(day, 10);
    looked.search.least(3, DaySeconds.NEVER);
    assertTrue(looked.work.spent());
  }
}
