package dev.dogleg.schedule;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomTerms;
import dev.dogleg.plan.SeededDays;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Every order of small days with terms, timed: the cheapest of each set is the oracle's. */
class OrdersWithTermsTest {
  private static final int SEEDS = Integer.getInteger("dogleg.terms.seeds", 200);
  private static final int FIRST = Integer.getInteger("dogleg.terms.first", 1);

  @Test
  void theCheapestOrderOfEachSetCostsWhatTryingEverySecondFinds() {
    for (int seed = FIRST; seed < FIRST + SEEDS; seed++) {
      DayRequest day = SeededDays.day(seed, 2 + seed % 3, 1, seed % 2 == 0);
      DayRequest request = RandomTerms.on(seed, day);
      long[] least = new long[1 << request.visits().size()];
      Arrays.fill(least, DayOracle.NEVER);
      least[0] = 0;
      orders(request, new ArrayList<>(), 0, least);
      long[] oracle = DayOracle.costsBySet(request);
      for (int set = 0; set < least.length; set++) {
        assertEquals(oracle[set], least[set], "seed " + seed + " set " + set);
      }
    }
  }

  private static void orders(DayRequest request, List<Integer> order, int set, long[] least) {
    for (int i = 0; i < request.visits().size(); i++) {
      if ((set >> i & 1) == 0) {
        order.add(i);
        TimedOrder timed = DayTiming.time(request, order);
        int with = set | 1 << i;
        if (timed.possible()) {
          least[with] = Math.min(least[with], timed.costSixtieths());
        }
        orders(request, order, with, least);
        order.remove(order.size() - 1);
      }
    }
  }
}
