package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.oracle.WeekOracle;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The audit's cost of each set against an oracle that shares nothing with it. */
class SetCostsTest {
  private static final long PLENTY = 1_000_000_000L;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 60);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void everySetCostsWhatTheOracleSays(long seed) {
    DayRequest day = WeekOracle.askedOf(RandomWeeks.week(seed, 4, 1, seed % 4 > 0), 0);
    SetCosts.Tried tried = new SetCosts(day).upTo(PLENTY);
    assertTrue(tried.all());
    assertEquals(expected(day, Integer.MAX_VALUE), new TreeMap<>(tried.bySet()), "seed " + seed);
  }

  /** Spent work leaves the sizes that were tried wholly, and says how far they go. */
  @Test
  void whatWasNotTriedIsNotClaimed() {
    int partly = 0;
    for (int seed = 1; seed <= 20; seed++) {
      DayRequest day = WeekOracle.askedOf(RandomWeeks.week(seed, 5, 1, false), 0);
      SetCosts whole = new SetCosts(day);
      whole.upTo(PLENTY);
      SetCosts.Tried tried = new SetCosts(day).upTo(whole.work() / 2);
      assertFalse(tried.all(), "seed " + seed);
      assertEquals(expected(day, tried.size()), new TreeMap<>(tried.bySet()), "seed " + seed);
      partly += tried.size() > 0 ? 1 : 0;
    }
    assertTrue(partly > 10, partly + " of 20 tried in part");
  }

  private static Map<Long, Long> expected(DayRequest day, int most) {
    Map<Long, Long> expected = new TreeMap<>();
    long[] costs = DayOracle.costsBySet(day);
    for (int set = 1; set < costs.length; set++) {
      if (costs[set] < DayOracle.NEVER && Integer.bitCount(set) <= most) {
        expected.put((long) set, costs[set]);
      }
    }
    return expected;
  }
}
