package dev.dogleg.plan.week;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Consumer;

/**
 * Finds a good week fast: cheapest insertion, then ruin and recreate, and small changes in between.
 *
 * <p>Maintainers: slack induction by string removals ({@link WeekRuin}, {@link WeekRecreate}); in
 * each round a few {@link WeekMoves} follow, which mostly ask what was asked before. A somewhat
 * worse week is taken with a chance that cools (simulated annealing); there a counted booking left
 * out counts for a few times what serving one costs, so that the way to a better week may lead by
 * one that serves fewer. What is best asks the number left out first. Costs are estimates; a week
 * is called the best only after the day engine has told the costs of its days. All chance comes
 * from the seed.
 */
final class WeekSearch {
  /** Chances, in shares of what serving one booking costs: at first and at last. */
  private static final double FIRST_HEAT = 1;

  private static final double LAST_HEAT = 0.05;

  /** Chances at first where the search goes on from its best week, in turn. */
  private static final double[] AGAIN_HEAT = {1, 0.4, 0.2};

  /** What a counted booking left out counts for, likewise. */
  private static final double LEFT_OUT = 3;

  private static final int MOVES_A_ROUND = 400;

  /** Cheaper weeks are settled so many times in a search at the most. */
  private static final int SETTLED = 200;

  /** Sets of weeks dearer than the best by this part are not kept. */
  private static final int KEPT_ABOVE = 25;

  /** So many times a first week is mended where the day engine finds a day impossible. */
  private static final int MENDED = 30;

  private final SearchDays days;
  private final SplittableRandom random;
  private final WorkCount work;
  private final WeekRecreate recreate;
  private final WeekMoves moves;
  private final WeekRuin ruin;
  private long counted;
  private int again;
  private WeekState now;
  private WeekState best;

  /** Better than the best by estimate. */
  private WeekState hopeful;

  WeekSearch(WeekModel model, SetCosts costs, long seed, WorkCount work) {
    this.work = work;
    random = new SplittableRandom(seed);
    days = new SearchDays(model, costs);
    recreate = new WeekRecreate(days, random);
    moves = new WeekMoves(days, random);
    ruin = new WeekRuin(days, random);
  }

  /**
   * Searches.
   *
   * @param rounds most rounds
   * @param progress told of each better week
   * @return the best week found
   */
  WeekChoice run(int rounds, Consumer<WeekChoice> progress) {
    first();
    progress.accept(best.choice());
    return cool(FIRST_HEAT, rounds, progress);
  }

  /**
   * Goes on from the best week found so far.
   *
   * @param rounds most rounds
   * @param progress told of each better week
   * @return the best week found
   */
  WeekChoice goOn(int rounds, Consumer<WeekChoice> progress) {
    now = new WeekState(best);
    return cool(AGAIN_HEAT[again++ % AGAIN_HEAT.length], rounds, progress);
  }

  private WeekChoice cool(double firstHeat, int rounds, Consumer<WeekChoice> progress) {
    double heat = firstHeat;
    double cooling = Math.pow(LAST_HEAT / firstHeat, 1.0 / Math.max(1, rounds));
    int pause = Math.max(1, rounds / SETTLED);
    int settled = 0;
    boolean more = days.model().size() > 0;
    for (int round = 0; round < rounds && more; round++) {
      heat *= cooling;
      round(heat);
      count();
      more = !work.spent();
      boolean fewer = hopeful != null && hopeful.left() < best.left();
      if (hopeful != null && (fewer || round - settled >= pause || round == rounds - 1 || !more)) {
        settled = round;
        settleHopeful(progress);
      }
    }
    return best.choice();
  }

  private void first() {
    now = days.nobodyServed();
    recreate.first(now);
    for (int mended = 0; !settle(now); mended++) {
      dropImpossible(now);
      if (mended < MENDED && !work.spent()) {
        recreate.first(now);
      }
    }
    keep(now);
    best = new WeekState(now);
  }

  private void dropImpossible(WeekState week) {
    for (int van = 0; van < days.size(); van++) {
      KnownOrders known = days.of(van);
      if (!week.day(van).possible()) {
        for (int local : week.day(van).order()) {
          week.mark(known.kind().booking(local), -1);
        }
        week.set(van, known.home());
      }
    }
  }

  private void round(double heat) {
    long cost = now.cost();
    double one = (double) Math.max(1, cost) / Math.max(1, days.model().size() - now.left());
    long leftOut = (long) (LEFT_OUT * one);
    WeekState tried = new WeekState(now);
    ruin.ruin(tried);
    recreate.recreate(tried);
    recreate.absent(tried);
    long more = tried.cost() - cost + leftOut * (tried.left() - now.left());
    if (tried.left() < now.left() || more < slack(heat * one)) {
      now = tried;
      improve(now);
      note();
    }
    for (int k = 0; k < MOVES_A_ROUND; k++) {
      if (moves.move(now, slack(heat * one), leftOut)) {
        note();
      }
    }
    if (now.left() <= best.left() && now.cost() < best.cost() + best.cost() / KEPT_ABOVE) {
      keep(now);
    }
  }

  private double slack(double heat) {
    return -Math.log(1 - random.nextDouble()) * heat;
  }

  /** Remembers the week at hand if it seems better than every other. */
  private void note() {
    WeekState bar = hopeful == null ? best : hopeful;
    if (now.left() < bar.left() || (now.left() == bar.left() && now.cost() < bar.cost())) {
      improve(now);
      hopeful = new WeekState(now);
    }
  }

  private void settleHopeful(Consumer<WeekChoice> progress) {
    if (settle(hopeful) && better(hopeful, best)) {
      best = hopeful;
      keep(best);
      progress.accept(best.choice());
    }
    hopeful = null;
    if (!now.possible()) {
      now = new WeekState(best);
    }
  }

  private void count() {
    long steps = days.steps();
    work.count(1 + MOVES_A_ROUND + steps - counted);
    counted = steps;
  }

  private static boolean better(WeekState week, WeekState other) {
    return week.left() < other.left()
        || (week.left() == other.left() && week.cost() < other.cost());
  }

  private void improve(WeekState week) {
    for (int van = 0; van < days.size(); van++) {
      days.of(van).improve(week.day(van));
    }
  }

  private void keep(WeekState week) {
    for (int van = 0; van < days.size(); van++) {
      days.of(van).keep(week.day(van));
    }
  }

  /** Asks exact costs of all days; false where one turns out to be impossible. */
  private boolean settle(WeekState week) {
    boolean possible = true;
    for (int van = 0; van < days.size(); van++) {
      possible &= days.of(van).settle(week.day(van));
    }
    return possible;
  }

  /** {@return the count of its work} */
  WorkCount work() {
    return work;
  }

  /** {@return orders known, by kind} */
  List<KnownOrders> orders() {
    return days.orders();
  }
}
