package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Lists of sets within a room against the sweep over all sets and against exact costs. */
class ListedSetsTest {
  private static final int ROOMS = 8;

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void aListHoldsAllSetsWithinItsRoomAndNoneDearerThanItIs(long seed) {
    WeekModel model =
        new WeekModel(
            CustomaryWeeks.week(seed, new CustomaryWeeks.Shape(22, 1, 1.15, true, 1L << 40)));
    SetCosts costs = new SetCosts(model, new WorkCount(Long.MAX_VALUE, () -> false));
    SplittableRandom random = new SplittableRandom(seed);
    long scale = RowPrices.COST_SCALE;
    long[] cover = random.longs(model.size(), scale * 100_000, scale * 300_000).toArray();
    RowPrices prices = new RowPrices(scale, cover, 0, List.of(), new long[0]);
    for (VanKind kind : model.kinds()) {
      ListedSets all = new SetSweep(kind, Integer.MAX_VALUE).run(() -> false).found();
      DayPricer pricer = new DayPricer(kind, Integer.MAX_VALUE / 4, () -> false);
      pricer.take(prices, false);
      long least = pricer.wholly(0).least();
      for (int k = 0; k < ROOMS; k++) {
        long most = least + ((scale * 200_000) >> k);
        ListedSets some = pricer.within(most, Integer.MAX_VALUE / 4);
        Map<BookingSet, Long> listed = new HashMap<>();
        for (int s = 0; s < some.size(); s++) {
          listed.put(BookingSet.of(some.set(s)), some.cost(s));
        }
        assertEquals(some.size(), listed.size(), "no set twice, seed " + seed);
        List<int[]> missing = new ArrayList<>();
        for (int s = 0; s < all.size(); s++) {
          Long cost = listed.get(BookingSet.of(all.set(s)));
          if (cost != null ? cost > all.cost(s) : reduced(pricer, all, s) <= most) {
            missing.add(all.set(s));
          }
        }
        // Fewer runs are joined where some are dropped: then only the exact cost can tell.
        for (int[] set : missing) {
          Long cost = listed.get(BookingSet.of(set));
          long exact = costs.least(kind, set, RelaxedDay.NEVER);
          String which = "seed " + seed + " kind " + kind.number() + " " + Arrays.toString(set);
          assertTrue(cost != null ? cost <= exact : pricer.reduced(set, exact) > most, which);
        }
      }
    }
  }

  private static long reduced(DayPricer pricer, ListedSets sets, int s) {
    return pricer.reduced(sets.set(s), sets.cost(s));
  }
}
