package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomWeeks;
import java.util.Arrays;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class SetSweepTest {
  static LongStream seeds() {
    return LongStream.rangeClosed(1, 600);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void noSetThatTheOracleServesIsMissedOrBoundedTooDear(long seed) {
    boolean withTerms = seed % 4 != 0;
    WeekRequest week = RandomWeeks.week(seed, 3 + (int) (seed % 5), 1, withTerms);
    WeekModel model = new WeekModel(week);
    VanKind kind = model.kinds().get(0);
    int n = kind.size();
    SetSweep sweep = new SetSweep(kind, 100_000);
    sweep.run(() -> false);
    long[] bound = new long[1 << n];
    Arrays.fill(bound, Long.MAX_VALUE);
    for (int k = 0; k < sweep.size(); k++) {
      int bits = 0;
      for (int local : sweep.set(k)) {
        bits |= 1 << local;
      }
      bound[bits] = sweep.cost(k);
    }
    int[] all = new int[n];
    Arrays.setAll(all, k -> k);
    long[] exact = DayOracle.costsBySet(kind.request(all, 1));
    for (int set = 1; set < exact.length; set++) {
      if (exact[set] < DayOracle.NEVER) {
        long cost = exact[set];
        for (int k = 0; k < n; k++) {
          cost += (set >>> k & 1) * kind.extraSixtieths(k);
        }
        assertTrue(
            bound[set] <= cost,
            "seed " + seed + " set " + set + ": bound " + bound[set] + ", exact " + cost);
      }
    }
  }
}
