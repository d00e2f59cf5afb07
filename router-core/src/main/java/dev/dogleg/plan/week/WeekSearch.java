package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/**
 * Finds a good week fast: cheapest insertion, then ruin and recreate.
 *
 * <p>Maintainers: some bookings near a chance one are taken out and put back, with those left out,
 * in one of a few orders, each where it costs least, now and then blinking at a place (Christiaens
 * and Vanden Berghe 2020, Transportation Science 54:417-433); a somewhat dearer week is taken with
 * a chance that cools. Orders are timed on the relaxed day; a week is called the best only after
 * the day engine has told the exact costs of its days. All chance comes from the seed.
 */
final class WeekSearch {
  private static final double FIRST_HEAT = 0.02;
  private static final double LAST_HEAT = 0.0002;
  private static final int BLINK = 100;

  private final WeekModel model;
  private final List<KnownOrders> orders = new ArrayList<>();
  private final int[] kindOf;
  private final int[][] near;
  private final SplittableRandom random;
  private final WorkCount work;
  private final SetCosts costs;

  /** A week under way. */
  private final class Week {
    private final KnownOrders.Known[] day = new KnownOrders.Known[kindOf.length];
    private final boolean[] served = new boolean[model.size()];
    private int left;
    private long cost;

    Week() {
      Arrays.fill(day, orders.isEmpty() ? null : orders.get(0).home());
      for (int i = 0; i < served.length; i++) {
        left += model.counted(i) ? 1 : 0;
        cost += model.leftOutSixtieths(i);
      }
    }

    Week(Week other) {
      System.arraycopy(other.day, 0, day, 0, day.length);
      System.arraycopy(other.served, 0, served, 0, served.length);
      left = other.left;
      cost = other.cost;
    }

    void set(int van, KnownOrders.Known next) {
      cost += next.cost() - day[van].cost();
      day[van] = next;
    }

    void mark(int booking, boolean now) {
      if (served[booking] != now) {
        served[booking] = now;
        left += model.counted(booking) ? (now ? -1 : 1) : 0;
        cost += now ? -model.leftOutSixtieths(booking) : model.leftOutSixtieths(booking);
      }
    }
  }

  WeekSearch(WeekModel model, SetCosts costs, long seed, WorkCount work) {
    this.model = model;
    this.costs = costs;
    this.work = work;
    this.random = new SplittableRandom(seed);
    kindOf = new int[model.request().days().size()];
    for (VanKind kind : model.kinds()) {
      orders.add(new KnownOrders(kind, work));
      kind.vanDays().forEach(van -> kindOf[van] = kind.number());
    }
    near = new int[model.size()][];
    for (int i = 0; i < near.length; i++) {
      near[i] = nearest(i);
    }
  }

  private int[] nearest(int i) {
    int[] far = new int[model.size()];
    for (int j = 0; j < far.length; j++) {
      far[j] = Integer.MAX_VALUE;
      for (VanKind kind : model.kinds()) {
        if (kind.local(i) >= 0 && kind.local(j) >= 0) {
          int a = kind.visit(kind.local(i)).place();
          int b = kind.visit(kind.local(j)).place();
          if (kind.day().travel().reaches(a, b)) {
            far[j] = kind.day().travel().leastDriveSeconds(a, b);
          }
          break;
        }
      }
    }
    return java.util.stream.IntStream.range(0, far.length)
        .boxed()
        .sorted(Comparator.comparingInt((Integer j) -> far[j]).thenComparingInt(j -> j))
        .mapToInt(Integer::intValue)
        .toArray();
  }

  /**
   * Searches.
   *
   * @param rounds most rounds
   * @param progress told of each better week
   * @return the best week found
   */
  WeekChoice run(int rounds, Consumer<WeekChoice> progress) {
    Week now = new Week();
    Week best = new Week(now);
    recreate(now, false);
    while (!settle(now)) {
      now = new Week(best);
      recreate(now, false);
    }
    best = new Week(now);
    progress.accept(choice(best));
    double heat = FIRST_HEAT;
    double cooling = Math.pow(LAST_HEAT / FIRST_HEAT, 1.0 / Math.max(1, rounds));
    for (int round = 0; round < rounds && !work.spent(); round++) {
      heat *= cooling;
      Week tried = new Week(now);
      ruin(tried);
      recreate(tried, true);
      double slack = -Math.log(1 - random.nextDouble()) * heat * Math.max(1, now.cost);
      if (tried.left < now.left || (tried.left == now.left && tried.cost < now.cost + slack)) {
        now = tried;
      }
      if (better(now, best)) {
        if (!settle(now)) {
          now = new Week(best);
        } else if (better(now, best)) {
          best = new Week(now);
          progress.accept(choice(best));
        }
      }
    }
    return choice(best);
  }

  private static boolean better(Week week, Week other) {
    return week.left < other.left || (week.left == other.left && week.cost < other.cost);
  }

  /** Asks exact costs of all days; false where one turns out to be impossible. */
  private boolean settle(Week week) {
    boolean possible = true;
    for (int van = 0; van < week.day.length; van++) {
      KnownOrders.Known day = week.day[van];
      if (!day.exact()) {
        KnownOrders known = orders.get(kindOf[van]);
        int[] locals = day.order().clone();
        Arrays.sort(locals);
        long exact = costs.of(known.kind(), locals);
        if (exact >= RelaxedDay.NEVER) {
          known.forbid(day);
          possible = false;
        } else {
          week.set(van, known.settle(day, exact));
        }
      }
    }
    return possible;
  }

  private void ruin(Week week) {
    boolean[] removed = new boolean[model.size()];
    int most = Math.max(2, Math.min(10, model.size() / 3));
    int many = 2 + random.nextInt(most);
    int centre = random.nextInt(model.size());
    for (int k = 0; k < near[centre].length && many > 0; k++) {
      int i = near[centre][k];
      if (week.served[i] && random.nextInt(5) > 0) {
        removed[i] = true;
        many--;
      }
    }
    for (int van = 0; van < week.day.length; van++) {
      KnownOrders.Known shorter = orders.get(kindOf[van]).without(week.day[van], removed);
      if (!shorter.possible()) {
        // Fewer visits of the same order may miss a break or a window; then the day starts anew.
        for (int local : week.day[van].order()) {
          removed[orders.get(kindOf[van]).kind().booking(local)] = true;
        }
        shorter = orders.get(kindOf[van]).home();
      }
      week.set(van, shorter);
    }
    for (int i = 0; i < removed.length; i++) {
      if (removed[i]) {
        week.mark(i, false);
      }
    }
  }

  private void recreate(Week week, boolean chance) {
    List<Integer> open = new ArrayList<>();
    for (int i = 0; i < model.size(); i++) {
      if (!week.served[i]) {
        open.add(i);
      }
    }
    long[] key = keys(chance ? random.nextInt(4) : 1);
    open.sort(
        Comparator.comparing((Integer i) -> !model.counted(i))
            .thenComparingLong(i -> key[i])
            .thenComparingInt(i -> i));
    for (int i : open) {
      insert(week, i, chance);
    }
  }

  private long[] keys(int way) {
    long[] key = new long[model.size()];
    int sign = way == 2 ? -1 : 1;
    for (int i = 0; i < key.length; i++) {
      key[i] = way == 0 || way == 3 ? random.nextInt() : sign * (long) service(i);
    }
    return key;
  }

  private int service(int booking) {
    return model.booking(booking).choices().isEmpty()
        ? 0
        : model.booking(booking).choices().get(0).visit().serviceSeconds();
  }

  private void insert(Week week, int booking, boolean chance) {
    int bestVan = -1;
    KnownOrders.Known best = null;
    long least = model.counted(booking) ? RelaxedDay.NEVER : model.leftOutSixtieths(booking);
    for (int van = 0; van < week.day.length; van++) {
      KnownOrders known = orders.get(kindOf[van]);
      int local = known.kind().local(booking);
      if (local < 0 || (chance && random.nextInt(BLINK) == 0) || seenBefore(week, van)) {
        continue;
      }
      KnownOrders.Known with = known.with(week.day[van], local);
      if (with.possible() && with.cost() - week.day[van].cost() < least) {
        least = with.cost() - week.day[van].cost();
        bestVan = van;
        best = with;
      }
    }
    if (bestVan >= 0) {
      week.set(bestVan, best);
      week.mark(booking, true);
    }
  }

  /** Whether an earlier van-day of the same kind looks just the same. */
  private boolean seenBefore(Week week, int van) {
    for (int other = 0; other < van; other++) {
      if (kindOf[other] == kindOf[van] && week.day[other].order().length == 0) {
        return week.day[van].order().length == 0;
      }
    }
    return false;
  }

  private WeekChoice choice(Week week) {
    List<WeekChoice.ChosenSet> sets = new ArrayList<>();
    for (int van = 0; van < week.day.length; van++) {
      int[] locals = week.day[van].order().clone();
      Arrays.sort(locals);
      if (locals.length > 0) {
        sets.add(
            new WeekChoice.ChosenSet(
                model.kinds().get(kindOf[van]), Arrays.stream(locals).boxed().toList()));
      }
    }
    return new WeekChoice(sets, week.left, week.cost);
  }

  /** {@return orders known, by kind} */
  List<KnownOrders> orders() {
    return orders;
  }
}
