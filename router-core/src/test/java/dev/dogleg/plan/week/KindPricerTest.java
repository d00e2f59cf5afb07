package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.DayOracle;
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
    WeekRequest week = RandomWeeks.week(seed, 3 + (int) (seed % 4), 1, seed % 2 == 0);
    WeekModel model = new WeekModel(week);
    VanKind kind = model.kinds().get(0);
    SplittableRandom random = new SplittableRandom(seed);
    for (boolean counting : new boolean[] {false, true}) {
      long scale = counting ? RowPrices.COUNT_SCALE : RowPrices.COST_SCALE;
      long[] cover = new long[model.size()];
      Arrays.setAll(
          cover, i -> (long) ((random.nextDouble() - 0.1) * scale * (counting ? 1 : 20_000)));
      RowPrices prices = new RowPrices(scale, cover, 0, List.of(), new long[0]);
      int[] everything = new int[kind.size()];
      Arrays.setAll(everything, k -> k);
      long[] exact = DayOracle.costsBySet(kind.request(everything, 1));
      Map<String, Long> reduced = new TreeMap<>();
      long least = 0;
      for (int set = 1; set < exact.length; set++) {
        if (exact[set] < DayOracle.NEVER) {
          int bits = set;
          int[] members = Arrays.stream(everything).filter(k -> (bits >>> k & 1) != 0).toArray();
          long amount = counting ? 0 : exact[set] * scale;
          for (int local : members) {
            amount += counting ? 0 : kind.extraSixtieths(local) * scale;
            amount -= cover[kind.booking(local)];
          }
          least = Math.min(least, amount);
          reduced.put(Arrays.toString(members), amount);
        }
      }
      KindPricer pricer = new KindPricer(kind, week.prices());
      for (int percent : new int[] {0, 50}) {
        long room = least / 100 * percent;
        KindPricer.Found found = pricer.look(prices, counting, 0, room, 100_000, 100_000);
        Map<String, Long> actual = new TreeMap<>();
        for (int k = 0; k < found.sweep().size(); k++) {
          actual.put(Arrays.toString(found.sweep().set(k)), found.sweep().reduced(k));
        }
        reduced.forEach(
            (set, amount) -> {
              if (amount <= room) {
                assertTrue(
                    actual.getOrDefault(set, Long.MAX_VALUE) <= amount,
                    "seed " + seed + " counting " + counting + " set " + set);
              }
            });
        assertTrue(found.least() <= least, "seed " + seed + " counting " + counting);
      }
    }
  }
}
