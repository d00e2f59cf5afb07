package dev.dogleg.plan.week;

import dev.dogleg.schedule.OrderCost;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.ToLongFunction;
import java.util.stream.IntStream;

/** Finds sets of low reduced cost on one kind of van-day, without a list of all of them. */
final class DayPricer {
  /** Visits remembered to begin with, where few visits may be made on a day, and where many. */
  private static final int MUCH_MEMORY = 64;

  private static final int MEMORY = 8;
  private static final int FEW_VISITS = 64;
  private static final int MOST_DAYS = 24;
  private static final int LEARNING_ROUNDS = 12;
  private static final int MOST_TOLD = 6_000;
  private static final int MOST_SETS = 300_000;
  private static final int MOST_STEPS = 3_000_000;
  private static final int MOST_ROOM_STEPS = 8_000_000;
  private static final int MOST_FOUND = 100_000;

  /** Sets looked at for one that is within a room, about. */
  private static final int SETS_A_FOUND = 4;

  /** What an order may cost above the relaxed day where cost does not matter. */
  private static final long FAR = 1_000_000;

  private final VanKind kind;
  private final RelaxedDay day;
  private final RestGlance rough;
  private final RestGlance fine;
  private final RestGlance forCounts;
  private final NearVisits near;
  private final DayLoad load;
  private final RunStep step;
  private final StillOpen open;
  private final StopNeed stops;
  private final OrderCost exact;
  private final int mostLabels;
  private final BooleanSupplier stop;

  /** Where the van-day is a plain one; else null. */
  private final PlainPricer plain;

  private DayDuals duals;
  private ListedSets list;
  private RowPrices prices;

  /** What was swept last, with which prices and how far. */
  private ListedSets lastSwept;

  private RowPrices lastPrices;
  private long lastMost;
  private long steps;

  /**
   * A day that helps.
   *
   * @param locals its visits, rising
   * @param costSixtieths what it costs in some order, or at least, extra prices included
   * @param known what of the two
   * @param helps whether it is below the limit asked with
   */
  record Day(List<Integer> locals, long costSixtieths, ColumnPool.Known known, boolean helps) {}

  /**
   * What a search for cheap days found.
   *
   * @param whole whether no day is cheaper than {@code least}
   * @param least least reduced cost, at most the limit asked with
   * @param days cheap days, each visit once a day
   */
  record Priced(boolean whole, long least, List<Day> days) {}

  DayPricer(VanKind kind, int mostLabels, BooleanSupplier stop) {
    this.stop = stop;
    this.kind = kind;
    this.mostLabels = mostLabels;
    day = kind.relaxed();
    near = new NearVisits(day, day.n <= FEW_VISITS ? MUCH_MEMORY : MEMORY);
    load = new DayLoad(kind);
    step = new RunStep(kind);
    RestLegs legs = new RestLegs(day, step.terms());
    RestTanks tanks = new RestTanks(day, step, true);
    rough = RestGlance.rough(legs, step);
    fine = RestGlance.fine(legs, step, tanks);
    forCounts = RestGlance.counting(legs, step, tanks);
    open = new StillOpen(day, step);
    stops = new StopNeed(kind);
    exact = new OrderCost(kind.model());
    plain =
        PlainDay.of(kind, load)
            .map(plainDay -> new PlainPricer(kind, plainDay, mostLabels, stop))
            .orElse(null);
  }

  /** Takes prices; to be called before pricing. */
  void take(RowPrices newPrices, boolean counting) {
    prices = newPrices;
    duals = new DayDuals(kind, prices, counting);
    if (list != null) {
      return;
    }
    if (plain != null) {
      plain.take(prices, counting);
      return;
    }
    rough.forget();
    fine.forget();
    forCounts.forget();
    open.take(duals);
  }

  private RestGlance closely() {
    return duals.costScale == 0 ? forCounts : fine;
  }

  private PricedDay priced(RestGlance glance) {
    glance.remember(duals);
    return new PricedDay(day, step, duals, glance, open, near, load, stops);
  }

  /**
   * Cheap days, found fast; nothing is proven.
   *
   * @param limit only days below this reduced cost
   */
  Priced quickly(long limit) {
    if (plain != null) {
      return plainly(limit, true);
    }
    DayLabels days = new DayLabels(priced(rough), limit, true, mostLabels / 4, stop);
    days.run();
    steps += days.size();
    return new Priced(false, days.least(), helpful(days.cheapest(MOST_DAYS), limit));
  }

  /** Cheap days, and the proof that there is none below the least. */
  Priced wholly(long limit) {
    if (plain != null) {
      return plainly(limit, false);
    }
    for (int round = 0; ; round++) {
      DayLabels days = new DayLabels(priced(closely()), limit, false, mostLabels, stop);
      boolean whole = days.run();
      steps += days.size();
      List<FoundDay> all = days.cheapest(MOST_DAYS);
      boolean learnt = false;
      if (whole && round < LEARNING_ROUNDS && !all.isEmpty() && !all.get(0).isTrueDay()) {
        for (FoundDay day : all) {
          learnt |= near.learn(day.order());
        }
      }
      if (!learnt) {
        return new Priced(whole, days.least(), helpful(all, limit));
      }
    }
  }

  private Priced plainly(long limit, boolean quick) {
    PlainPricer.Found found = plain.price(limit, quick);
    List<Day> days = new ArrayList<>();
    for (FoundDay each : found.days()) {
      int[] locals = each.order().clone();
      Arrays.sort(locals);
      long cost = exact.of(each.order(), each.costSixtieths() + 1);
      if (cost < OrderCost.IMPOSSIBLE) {
        days.add(day(locals, cost + kind.extraSixtieths(locals), ColumnPool.Known.GUESS, true));
      }
    }
    return new Priced(found.whole(), found.least(), days);
  }

  /**
   * Leaves bookings out of what is found from now on; plain van-days only.
   *
   * @param gone for each booking whether no day may hold it
   */
  void leaveOut(boolean[] gone) {
    plain.leaveOut(gone);
  }

  /** {@return whether it is a plain van-day, whose labels tell all there is to tell} */
  boolean plain() {
    return plain != null;
  }

  /** True days, each at the exact cost of its order, that are below the limit even so. */
  private List<Day> helpful(List<FoundDay> found, long limit) {
    List<Day> days = new ArrayList<>();
    for (FoundDay day : found) {
      if (day.isTrueDay()) {
        int[] locals = day.order().clone();
        Arrays.sort(locals);
        long cost = exact.of(day.order(), mostHelpful(day, locals, limit));
        if (cost < OrderCost.IMPOSSIBLE) {
          days.add(day(locals, cost + kind.extraSixtieths(locals), ColumnPool.Known.GUESS, true));
        }
      }
    }
    return days;
  }

  /** A cost from which a day does not help. */
  private long mostHelpful(FoundDay day, int[] locals, long limit) {
    if (duals.costScale == 0) {
      return day.costSixtieths() + day.costSixtieths() / 4 + FAR;
    }
    return Math.floorDiv(limit - duals.reduced(set(locals), 0), duals.costScale)
        - kind.extraSixtieths(locals);
  }

  private long[] set(int[] locals) {
    long[] words = new long[near.words()];
    for (int j : locals) {
      words[j >>> 6] |= 1L << j;
    }
    return words;
  }

  private static Day day(int[] locals, long cost, ColumnPool.Known known, boolean helps) {
    return new Day(Arrays.stream(locals).boxed().toList(), cost, known, helps);
  }

  /**
   * Sets by their costs with all rules and tanks, and a better least: every set below the limit is
   * looked at.
   *
   * @param limit sets below this reduced cost help
   * @param further sets that much above are told too, for they may help soon
   * @param settled exact cost of a set that is known, extra prices included; else a negative number
   */
  Priced exactly(long limit, long further, ToLongFunction<int[]> settled) {
    Within within = within(limit - 1 + further);
    if (!within.whole() && further > 0) {
      within = within(limit - 1);
    }
    ListedSets found = within.sets();
    long[] reduced = new long[found.size()];
    long least = limit;
    for (int s = 0; s < reduced.length; s++) {
      int[] locals = found.set(s);
      long exactCost = settled.applyAsLong(locals);
      long cost = Math.max(exactCost, found.cost(s));
      reduced[s] = reduced(locals, cost);
      least = Math.min(least, reduced[s]);
    }
    List<Day> days =
        IntStream.range(0, reduced.length)
            .filter(s -> reduced[s] < limit + further)
            .boxed()
            .sorted(Comparator.comparingLong((Integer s) -> reduced[s]).thenComparingInt(s -> s))
            .limit(MOST_TOLD)
            .map(s -> day(found.set(s), found.cost(s), ColumnPool.Known.BOUND, reduced[s] < limit))
            .toList();
    return new Priced(within.whole(), least, days);
  }

  /** Sets with a reduced cost of at most so much, and whether there is no other. */
  private record Within(boolean whole, ListedSets sets) {}

  private Within within(long most) {
    if (list != null) {
      return new Within(true, list.upTo(duals, most));
    }
    if (plain != null) {
      ListedSets sets = plain.within(most, MOST_SETS);
      return new Within(sets != null, sets == null ? new ListedSets(near.words()) : sets);
    }
    Within within = swept(new SetSweep(kind, MOST_SETS, MOST_FOUND, keep(most)), most, MOST_STEPS);
    if (within.whole()) {
      lastSwept = within.sets();
      lastPrices = prices;
      lastMost = most;
    }
    return within;
  }

  private Within swept(SetSweep sweep, long most, long mostSteps) {
    sweep.run(() -> sweep.steps() > mostSteps || stop.getAsBoolean());
    steps += sweep.steps();
    // Of sets above the room the best order may be missing, so that they seem dearer than they are.
    return new Within(sweep.complete(), sweep.found().upTo(duals, most));
  }

  /**
   * Every set within a room.
   *
   * @param most greatest reduced cost of interest, in parts
   * @param mostSets sets looked at, after which it gives up
   * @return the sets, no dearer than they are; null where there are too many
   */
  ListedSets within(long most, int mostSets) {
    if (list != null) {
      ListedSets sets = list.upTo(duals, most);
      return sets.size() > mostSets / SETS_A_FOUND ? null : sets;
    }
    if (plain != null) {
      return plain.within(most, mostSets);
    }
    if (prices.equals(lastPrices) && most <= lastMost) {
      return lastSwept.upTo(duals, most);
    }
    Within within =
        swept(new SetSweep(kind, mostSets, Integer.MAX_VALUE, keep(most)), most, MOST_ROOM_STEPS);
    return within.whole() ? within.sets() : null;
  }

  /** Tells every set of the van-day, so that nothing has to be searched. */
  void list(ListedSets sets) {
    list = sets;
  }

  /** {@return whether every set is listed} */
  boolean listed() {
    return list != null;
  }

  private SetSweep.Keep keep(long most) {
    return new ReducedKeep(priced(closely()), most);
  }

  /** {@return reduced cost of a set of local numbers that costs so much, in parts} */
  long reduced(int[] locals, long cost) {
    return cost >= RelaxedDay.NEVER ? RelaxedDay.NEVER : duals.reduced(set(locals), cost);
  }

  /** {@return the kind of van-day priced} */
  VanKind kind() {
    return kind;
  }

  /** {@return partial days made since this was last asked} */
  long takeSteps() {
    long taken = steps + (plain == null ? 0 : plain.takeSteps());
    steps = 0;
    return taken;
  }
}
