package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.RandomWeeks;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Pricing by labels against the exact cost of every set, rules, water and balance included. */
class DayLabelsTest {
  private static final int MOST_LABELS = 1_000_000;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 150);
  }

  private static RowPrices prices(WeekModel model, SplittableRandom random, boolean counting) {
    long scale = counting ? RowPrices.COUNT_SCALE : RowPrices.COST_SCALE;
    long[] cover = new long[model.size()];
    for (int i = 0; i < cover.length; i++) {
      long most = counting ? scale : scale * 400_000;
      cover[i] = random.nextLong(-most / 8, most);
    }
    List<RowCut> cuts = new ArrayList<>();
    for (int k = 0; k < 6 && cover.length > 2; k++) {
      int[] three = random.ints(0, cover.length).distinct().limit(3).sorted().toArray();
      RowCut cut = new RowCut(three[0], three[1], three[2]);
      if (!cuts.contains(cut)) {
        cuts.add(cut);
      }
    }
    long[] cut = new long[cuts.size()];
    Arrays.setAll(cut, k -> random.nextLong(0, counting ? scale / 2 : scale * 100_000));
    return new RowPrices(scale, cover, 0, cuts, cut);
  }

  private static Map<BookingSet, Long> exact(VanKind kind, SetCosts costs) {
    Map<BookingSet, Long> all = new HashMap<>();
    for (int set = 1; set < 1 << kind.size(); set++) {
      int bits = set;
      int[] locals = IntStream.range(0, kind.size()).filter(j -> (bits >> j & 1) != 0).toArray();
      long cost = costs.of(kind, locals);
      if (cost < RelaxedDay.NEVER) {
        int[] bookings = Arrays.stream(locals).map(kind::booking).toArray();
        all.put(BookingSet.of(bookings), cost);
      }
    }
    return all;
  }

  private static int[] bookings(VanKind kind, int set) {
    return IntStream.range(0, kind.size())
        .filter(j -> (set >> j & 1) != 0)
        .map(kind::booking)
        .toArray();
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void noDayIsCheaperThanTheLeastAndNoSetWithinTheRoomIsMissing(long seed) {
    WeekRequest week = RandomWeeks.week(seed, 4 + (int) (seed % 4), 2, seed % 3 > 0);
    WeekModel model = new WeekModel(week);
    WorkCount work = new WorkCount(Long.MAX_VALUE, () -> false);
    SetCosts costs = new SetCosts(model, work);
    SplittableRandom random = new SplittableRandom(seed);
    ColumnPool none = new ColumnPool(model.size());
    MasterProblem problem = new MasterProblem(model, none, costs, work);
    for (boolean counting : new boolean[] {true, false}) {
      RowPrices prices = prices(model, random, counting);
      long[] least = new long[model.kinds().size()];
      long[] exactLeast = new long[model.kinds().size()];
      List<DayPricer> pricers = new ArrayList<>();
      for (VanKind kind : model.kinds()) {
        DayPricer pricer = new DayPricer(kind, MOST_LABELS, () -> false);
        pricer.take(prices, counting);
        DayPricer.Priced priced = pricer.wholly(0);
        assertTrue(priced.whole(), "seed " + seed);
        least[kind.number()] = priced.least();
        DayPricer.Priced exactly = pricer.exactly(0, 0, set -> -1);
        assertTrue(exactly.whole(), "seed " + seed);
        exactLeast[kind.number()] = exactly.least();
        pricers.add(pricer);
      }
      WeekBound bound =
          WeekBound.from(problem, new boolean[model.size()], counting, 0, prices, least);
      WeekBound closer =
          WeekBound.from(problem, new boolean[model.size()], counting, 0, prices, exactLeast);
      for (VanKind kind : model.kinds()) {
        ColumnPool pool = new ColumnPool(model.size());
        Map<BookingSet, Long> known = exact(kind, costs);
        for (int set = 1; set < 1 << kind.size(); set++) {
          int[] members = bookings(kind, set);
          Long cost = known.get(BookingSet.of(members));
          if (cost != null) {
            int column = pool.add(kind.number(), members, cost, ColumnPool.Known.EXACT);
            String which = "seed " + seed + " kind " + kind.number() + Arrays.toString(members);
            assertTrue(bound.excess(pool, column) >= 0, which);
            assertTrue(closer.excess(pool, column) >= 0, which);
          }
        }
        if (!counting) {
          isListed(problem, bound, pricers, pool, random.nextLong(0, 400_000), seed);
        }
      }
    }
  }

  /** Every set of one kind within a room is listed, at no more than it costs. */
  private static void isListed(
      MasterProblem problem,
      WeekBound bound,
      List<DayPricer> pricers,
      ColumnPool exact,
      long room,
      long seed) {
    long most = bound.value() + room;
    ColumnPool listed = new RoomSweep(problem, bound, most, Integer.MAX_VALUE).run(pricers);
    Map<List<Object>, Long> costs = new HashMap<>();
    for (int column = 0; column < listed.size(); column++) {
      costs.put(
          List.of(listed.kind(column), BookingSet.of(listed.bookings(column))),
          listed.cost(column));
    }
    assertEquals(listed.size(), costs.size(), "no set is listed twice, seed " + seed);
    long parts = most * bound.prices().scale() - bound.scaled();
    for (int column = 0; column < exact.size(); column++) {
      if (!bound.over(exact, column, parts)) {
        Long cost = costs.get(List.of(exact.kind(column), BookingSet.of(exact.bookings(column))));
        String which = "seed " + seed + " " + Arrays.toString(exact.bookings(column));
        assertTrue(cost != null && cost <= exact.cost(column), which);
      }
    }
  }
}
