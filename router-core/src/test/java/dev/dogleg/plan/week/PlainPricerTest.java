package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.plan.week.SolomonFile.Node;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Pricing of plain van-days against every order of every set, tried out one by one; random prices
 * and cuts.
 */
class PlainPricerTest {
  private static final int DEPOT_CLOSES = 260;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 120);
  }

  /** Customers at random places with random windows, in the form of Solomon's files. */
  private static SolomonFile file(SplittableRandom random) {
    List<Node> nodes = new ArrayList<>();
    nodes.add(new Node(35, 35, 0, 0, DEPOT_CLOSES, 0));
    int customers = random.nextInt(5, 9);
    for (int c = 0; c < customers; c++) {
      int ready = random.nextInt(0, 180);
      int due = Math.min(DEPOT_CLOSES - 60, ready + random.nextInt(5, 150));
      nodes.add(
          new Node(
              random.nextInt(0, 70),
              random.nextInt(0, 70),
              random.nextInt(1, 30),
              Math.min(ready, due),
              due,
              random.nextInt(1, 20)));
    }
    return new SolomonFile("random", 3, random.nextInt(40, 90), nodes);
  }

  private static RowPrices prices(int n, SplittableRandom random) {
    long scale = RowPrices.COST_SCALE;
    long[] cover = new long[n];
    Arrays.setAll(cover, i -> random.nextLong(0, 60_000 * scale));
    List<RowCut> cuts = new ArrayList<>();
    for (int k = 0; k < 80; k++) {
      int[] three = random.ints(0, n).distinct().limit(3).sorted().toArray();
      RowCut cut = new RowCut(three[0], three[1], three[2]);
      if (!cuts.contains(cut) && random.nextBoolean()) {
        cuts.add(cut);
      }
    }
    long[] cut = new long[cuts.size()];
    Arrays.setAll(cut, k -> random.nextLong(0, 8_000 * scale));
    return new RowPrices(scale, cover, 0, cuts, cut);
  }

  /** Least cost of every set that can be served, by trying all orders from the file alone. */
  private static final class EveryOrder {
    private final SolomonFile file;
    private final Map<Integer, Long> least = new HashMap<>();

    EveryOrder(SolomonFile file) {
      this.file = file;
      go(0, 0, 0, 0, 0);
    }

    private void go(int here, int set, int clock, int load, long length) {
      if (set != 0 && clock + file.arcTenths(here, 0) <= DEPOT_CLOSES * SolomonFile.TENTHS) {
        least.merge(set, 60 * (length + file.arcTenths(here, 0)), Math::min);
      }
      for (int c = 1; c <= file.customers(); c++) {
        Node node = file.nodes().get(c);
        int begin = Math.max(clock + file.arcTenths(here, c), node.ready() * SolomonFile.TENTHS);
        if (((set >> (c - 1)) & 1) == 0
            && begin <= node.due() * SolomonFile.TENTHS
            && load + node.demand() <= file.capacity()) {
          go(
              c,
              set | (1 << (c - 1)),
              begin + node.service() * SolomonFile.TENTHS,
              load + node.demand(),
              length + file.arcTenths(here, c));
        }
      }
    }
  }

  private static long reduced(RowPrices prices, int set, long cost) {
    long reduced = prices.scale() * cost;
    for (int i = 0; i < prices.cover().length; i++) {
      reduced -= (set >> i & 1) == 0 ? 0 : prices.cover()[i];
    }
    for (int k = 0; k < prices.cut().length; k++) {
      boolean two = Long.bitCount(set & prices.cuts().get(k).mask()) >= 2;
      reduced += two ? prices.cut()[k] : 0;
    }
    return reduced;
  }

  private static int bits(int[] locals) {
    return Arrays.stream(locals).map(j -> 1 << j).sum();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void theLeastIsThatOfAllOrdersAndEverySetInTheRoomIsListedAtItsCost(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    SolomonFile file = file(random);
    VanKind kind = new WeekModel(SolomonWeeks.week(file, 1)).kinds().get(0);
    PlainDay day = PlainDay.of(kind, new DayLoad(kind)).orElseThrow();
    RowPrices prices = prices(kind.size(), random);
    Map<Integer, Long> all = new EveryOrder(file).least;
    long exact =
        all.entrySet().stream()
            .mapToLong(each -> reduced(prices, each.getKey(), each.getValue()))
            .min()
            .orElse(0);

    PlainPricer pricer = new PlainPricer(kind, day, 1_000_000, () -> false);
    pricer.take(prices, false);
    PlainPricer.Found found = pricer.price(0, false);
    assertTrue(found.whole(), "seed " + seed);
    assertTrue(found.least() <= Math.min(0, exact), "seed " + seed);
    if (exact < 0) {
      assertTrue(!found.days().isEmpty(), "seed " + seed);
    }

    long most = Math.max(exact, 0) + random.nextLong(0, 80_000 * prices.scale());
    ListedSets listed = pricer.within(most, Integer.MAX_VALUE / 2);
    Map<Integer, Long> costs = new HashMap<>();
    for (int s = 0; s < listed.size(); s++) {
      costs.put(bits(listed.set(s)), listed.cost(s));
    }
    Map<Integer, Long> expected = new HashMap<>();
    all.forEach(
        (set, cost) -> {
          if (reduced(prices, set, cost) <= most) {
            expected.put(set, cost);
          }
        });
    assertEquals(expected, costs, "seed " + seed);
  }
}
