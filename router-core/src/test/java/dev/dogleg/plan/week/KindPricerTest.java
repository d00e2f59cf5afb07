package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.RandomWeeks;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KindPricerTest {
  static LongStream seeds() {
    return LongStream.rangeClosed(1, 300);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whatIsWithinTheRoomIsFoundAndNothingIsBelowTheLeast(long seed) {
    WeekRequest week = RandomWeeks.week(seed, 3 + (int) (seed % 6), 1, seed % 2 == 0);
    WeekModel model = new WeekModel(week);
    VanKind kind = model.kinds().get(0);
    SplittableRandom random = new SplittableRandom(seed);
    for (boolean counting : new boolean[] {false, true}) {
      long scale = counting ? RowPrices.COUNT_SCALE : RowPrices.COST_SCALE;
      long[] cover = new long[model.size()];
      Arrays.setAll(
          cover, i -> (long) ((random.nextDouble() - 0.1) * scale * (counting ? 1 : 20_000)));
      RowPrices prices = new RowPrices(scale, cover, 0, List.of(), new long[0]);
      RelaxedDay day = new RelaxedDay(kind, week.prices());
      SetSweep all = new SetSweep(kind, day, 1_000_000).run();
      Map<String, Long> reduced = new TreeMap<>();
      long least = 0;
      for (int k = 0; k < all.size(); k++) {
        long amount = counting ? 0 : all.cost(k) * scale;
        for (int local : all.set(k)) {
          amount -= cover[kind.booking(local)];
        }
        least = Math.min(least, amount);
        reduced.put(Arrays.toString(all.set(k)), amount);
      }
      KindPricer pricer = new KindPricer(kind, week.prices());
      for (int percent : new int[] {0, 50}) {
        long room = least / 100 * percent;
        KindPricer.Found found = pricer.look(prices, counting, 0, room, 100_000, 100_000);
        Map<String, Long> expected = new TreeMap<>(reduced);
        expected.values().removeIf(amount -> amount > room);
        Map<String, Long> actual = new TreeMap<>();
        for (int k = 0; k < found.sweep().size(); k++) {
          actual.put(Arrays.toString(found.sweep().set(k)), found.sweep().reduced(k));
        }
        assertEquals(expected, actual, "seed " + seed + " counting " + counting);
        assertTrue(found.least() <= least, "seed " + seed + " counting " + counting);
      }
    }
  }
}
