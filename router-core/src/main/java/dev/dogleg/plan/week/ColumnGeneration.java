package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import java.util.function.BiFunction;
import java.util.stream.IntStream;

/**
 * Column generation without a list of all sets: prices and a whole-number bound for the whole week,
 * one objective and one limit, with subset-row cuts.
 *
 * <p>Maintainers: an LP over the columns known; then those of the pool that it overlooks; then days
 * found fast; then all days, which gives the bound. A column's cost is a guess until the LP uses it
 * and nothing cheaper is found.
 */
final class ColumnGeneration {
  private static final int COLUMNS_PER_KIND = 24;

  /** Sets are listed ahead by one in so many parts of the LP's cost. */
  private static final int FURTHER = 60;

  /** The same once there is a bound, so that the sets listed may serve for good. */
  private static final int MUCH_FURTHER = 28;

  private static final int CUTS_PER_ROUND = 20;

  /** Partial days of a whole pricing from which a quick one comes first. */
  private static final long QUICK_FROM = 20_000;

  /** Columns a quick pricing must bring for another one to follow at once. */
  private static final int WORTH_IT = 8;

  private static final int MOST_ROUNDS = 600;

  /** How far a bound of the number left out is kept above the next smaller number. */
  private static final double LEAST_OVER = 0.01;

  private static final double NEARLY = 1e-5;
  private static final double ROUGHLY = 0.02;

  private final MasterProblem problem;
  private final List<DayPricer> pricers;
  private final KnownSets known;
  private final boolean[] mayBeLeft;
  private final boolean counting;
  private final int limit;
  private final long enough;
  private final List<RowCut> cuts;
  private final TreeSet<Integer> columns;
  private final MasterLp lp;

  private final ChosenColumns chosen;
  private WeekBound best;
  private MasterLp.Answer last;

  /** Tells reduced costs at the prices of the last LP. */
  private WeekBound ruler;

  /** Columns of the last LP. */
  private int[] asked = new int[0];

  private long labels = Long.MAX_VALUE;
  private long made;
  private double near = NEARLY;

  /** Whether the bound of the number left out is to lie near the LP's own value. */
  private boolean sharp;

  /** Whether fast pricing found more than a few columns when it was asked last. */
  private boolean quickHelps = true;

  /**
   * Sets up.
   *
   * @param problem the week and the sets known; grows
   * @param pricers by kind of van-day
   * @param counting objective: counted bookings left out, else cost
   * @param limit most counted bookings left out
   * @param cuts cuts in force
   * @param start columns to begin with
   * @param wayOut price of exceeding the limit by one, dear
   * @param enough a bound of this or more ends the work
   */
  ColumnGeneration(
      MasterProblem problem,
      List<DayPricer> pricers,
      boolean counting,
      int limit,
      List<RowCut> cuts,
      int[] start,
      long wayOut,
      long enough) {
    this.problem = problem;
    this.pricers = pricers;
    this.counting = counting;
    this.limit = limit;
    this.enough = enough;
    this.cuts = new ArrayList<>(cuts);
    mayBeLeft = new boolean[problem.model().size()];
    lp = new MasterLp(problem, counting, mayBeLeft, limit, wayOut);
    chosen = new ChosenColumns(problem.pool(), problem.model().size());
    known = new KnownSets(problem.pool(), problem.model().kinds().size());
    columns = new TreeSet<>();
    Arrays.stream(start).forEach(columns::add);
  }

  private int[] sorted() {
    return columns.stream().mapToInt(Integer::intValue).toArray();
  }

  /** Prices days until the bound is near the LP's value. */
  void solveRoughly() {
    near = ROUGHLY;
    solve();
    near = NEARLY;
  }

  /** Prices days until the bound of the number left out is near the LP's value. */
  void solveSharply() {
    sharp = true;
    solve();
  }

  /** Prices out all days. */
  void solve() {
    boolean tooMany = false;
    boolean listed = pricers.stream().allMatch(DayPricer::listed);
    boolean plain = !listed && pricers.stream().allMatch(DayPricer::plain);
    for (int round = 0; round < MOST_ROUNDS && !problem.work().spent(); round++) {
      if (!askLp()) {
        return;
      }
      long[] limits = limits();
      if (overlooked(limits)) {
        continue;
      }
      pricers.parallelStream().forEach(pricer -> pricer.take(last.prices(), counting));
      if (plain) {
        if (!plainly(limits)) {
          return;
        }
        continue;
      }
      if (!listed && labels > QUICK_FROM && quickHelps && quickly(limits)) {
        continue;
      }
      quickHelps = true;
      if (!listed && (counting || tooMany)) {
        Next next = byLabels(limits);
        if (next == Next.AGAIN) {
          continue;
        }
        if (next == Next.DONE) {
          return;
        }
      }
      long further = counting ? 0 : further();
      List<DayPricer.Priced> priced =
          price(
              limits,
              (pricer, least) -> pricer.exactly(least, further, set -> settledCost(pricer, set)));
      tooMany = !priced.stream().allMatch(DayPricer.Priced::whole);
      bound(priced);
      if (enough() || (near > NEARLY && tight())) {
        return;
      }
      if (!take(priced) && !settle() && !(tooMany && !listed && !counting)) {
        return;
      }
    }
  }

  private boolean askLp() {
    dropIdle();
    asked = sorted();
    last = lp.solve(asked, List.copyOf(cuts));
    problem.work().count(10L * asked.length);
    if (last.usable()) {
      ruler = bound(new long[pricers.size()]);
    }
    return last.usable();
  }

  /** Prices days fast, without a bound, beside the columns chosen; whether the LP has an answer. */
  boolean solveQuickly() {
    pricers.forEach(pricer -> pricer.leaveOut(chosen.gone()));
    boolean more = true;
    for (int round = 0; more && round < MOST_ROUNDS && !problem.work().spent(); round++) {
      if (!askLp()) {
        return false;
      }
      long[] limits = limits();
      more = overlooked(limits);
      if (!more) {
        pricers.parallelStream().forEach(pricer -> pricer.take(last.prices(), counting));
        more = take(price(limits, DayPricer::quickly));
      }
    }
    return !more;
  }

  /** Chooses a column for good: whatever else serves one of its bookings goes. */
  void choose(int column) {
    chosen.add(column);
    columns.removeIf(chosen::bar);
  }

  /** {@return whether a column was chosen for good} */
  boolean isChosen(int column) {
    return chosen.contains(column);
  }

  /** What to do after days were searched by labels. */
  private enum Next {
    AGAIN,
    LOOK_CLOSER,
    DONE
  }

  private Next byLabels(long[] limits) {
    List<DayPricer.Priced> priced = price(limits, DayPricer::wholly);
    labels = made;
    bound(priced);
    if (enough()) {
      return Next.DONE;
    }
    if (take(priced)) {
      return Next.AGAIN;
    }
    if (sharp || tight()) {
      return settle() ? Next.AGAIN : Next.DONE;
    }
    return Next.LOOK_CLOSER;
  }

  /** Prices fast, unless it found hardly anything the time before; whether it found something. */
  private boolean quickly(long[] limits) {
    int before = columns.size();
    boolean any = take(price(limits, DayPricer::quickly));
    quickHelps = columns.size() - before >= WORTH_IT;
    return any;
  }

  /** Prices plain van-days by labels alone; whether there is more to do. */
  private boolean plainly(long[] limits) {
    if (take(price(limits, DayPricer::quickly))) {
      return true;
    }
    List<DayPricer.Priced> priced = price(limits, DayPricer::wholly);
    bound(priced);
    return !enough() && (take(priced) || settle());
  }

  private WeekBound bound(long[] least) {
    return WeekBound.from(problem, mayBeLeft, counting, limit, last.prices(), least);
  }

  private void bound(List<DayPricer.Priced> priced) {
    if (priced.stream().allMatch(DayPricer.Priced::whole)) {
      long[] least = priced.stream().mapToLong(p -> Math.min(0, p.least())).toArray();
      WeekBound bound = bound(least);
      if (best == null || bound.scaled() > best.scaled()) {
        best = bound;
      }
    }
  }

  /** Whether the bound is so near the LP's own value that no closer look can raise it. */
  private boolean tight() {
    double below = sharp ? 2 * LEAST_OVER : last.value() * near;
    return best != null && (double) best.scaled() / best.prices().scale() >= last.value() - below;
  }

  private boolean enough() {
    return best != null
        && (best.value() >= enough
            || (counting && !sharp && best.value() >= rounded(last.value())));
  }

  /** Takes columns far from use out of the LP; the pool keeps them. */
  private void dropIdle() {
    if (last != null && last.usable()) {
      for (int column : IdleColumns.of(problem, sorted(), ruler)) {
        if (!chosen.contains(column)) {
          columns.remove(column);
        }
      }
    }
  }

  /** For each kind the reduced cost below which a day helps the LP. */
  private long[] limits() {
    long[] limits = new long[pricers.size()];
    long margin = Math.max(1, last.prices().scale() >> 12);
    for (int column : asked) {
      int kind = problem.pool().kind(column);
      limits[kind] = Math.min(limits[kind], ruler.reducedCost(column));
    }
    long slack = counting ? slack() : 0;
    for (int kind = 0; kind < limits.length; kind++) {
      limits[kind] -= margin + slack;
    }
    return limits;
  }

  private static long rounded(double value) {
    return (long) Math.ceil(value - 1e-6);
  }

  /**
   * What a van-day may be short of the LP's price: the number left out is whole, so a bound just
   * above the next smaller number is as good as the LP's own.
   */
  private long slack() {
    double over = sharp ? LEAST_OVER : last.value() - (rounded(last.value()) - 1) - LEAST_OVER;
    int vanDays = problem.model().request().days().size();
    return over <= 0 ? 0 : (long) (over / vanDays * last.prices().scale());
  }

  private long settledCost(DayPricer pricer, int[] locals) {
    int[] bookings = Arrays.stream(locals).map(pricer.kind()::booking).toArray();
    Integer column = known.column(pricer.kind().number(), BookingSet.of(bookings));
    return column != null && problem.pool().isExact(column) ? problem.pool().cost(column) : -1;
  }

  /** How far above its limit a van-day's sets are listed ahead, in parts. */
  private long further() {
    double share = last.value() / (near > NEARLY && best != null ? MUCH_FURTHER : FURTHER);
    return (long) (share * last.prices().scale());
  }

  /** Adds columns of the pool that help; whether there were any. */
  private boolean overlooked(long[] limits) {
    ColumnPool pool = problem.pool();
    List<List<Integer>> byKind = new ArrayList<>();
    for (int kind = 0; kind < limits.length; kind++) {
      byKind.add(new ArrayList<>());
    }
    long[] reduced = new long[pool.size()];
    for (int column = 0; column < reduced.length; column++) {
      reduced[column] = ruler.reducedCost(column);
      if (reduced[column] < limits[pool.kind(column)]
          && !columns.contains(column)
          && !chosen.bar(column)) {
        byKind.get(pool.kind(column)).add(column);
      }
    }
    boolean any = false;
    for (List<Integer> candidates : byKind) {
      candidates.sort(Comparator.comparingLong((Integer c) -> reduced[c]).thenComparingInt(c -> c));
      any |= columns.addAll(candidates.subList(0, Math.min(COLUMNS_PER_KIND, candidates.size())));
    }
    return any;
  }

  private List<DayPricer.Priced> price(
      long[] limits, BiFunction<DayPricer, Long, DayPricer.Priced> way) {
    // Kinds are priced side by side, and only look at what is known.
    known.meet();
    List<DayPricer.Priced> priced =
        IntStream.range(0, pricers.size())
            .parallel()
            .mapToObj(kind -> way.apply(pricers.get(kind), limits[kind]))
            .toList();
    made = pricers.stream().mapToLong(DayPricer::takeSteps).sum();
    problem.work().count(made);
    return priced;
  }

  /** Adds what was found; whether any of it is new. */
  private boolean take(List<DayPricer.Priced> priced) {
    boolean any = false;
    for (int number = 0; number < priced.size(); number++) {
      VanKind kind = problem.model().kinds().get(number);
      int added = 0;
      for (DayPricer.Day day : priced.get(number).days()) {
        int[] bookings = day.locals().stream().mapToInt(kind::booking).sorted().toArray();
        BookingSet set = BookingSet.of(bookings);
        known.meet();
        Integer old = known.column(number, set);
        if (old != null && day.helps()) {
          // Its order costs more than it must; its exact cost is asked once the LP uses it.
          any |= problem.pool().lower(old, day.costSixtieths(), day.known());
        }
        if (old == null) {
          int column = problem.pool().add(number, bookings, day.costSixtieths(), day.known());
          if (day.helps() && added < COLUMNS_PER_KIND) {
            columns.add(column);
            added++;
            any = true;
          }
        }
      }
    }
    return any;
  }

  /** Asks the exact cost of the columns in use; whether any changed. */
  private boolean settle() {
    boolean changed = problem.settleUsed(asked, last.use(), counting);
    columns.removeIf(column -> !problem.possible(column));
    return changed;
  }

  /** Adds violated cuts and solves again, until none is found or nothing is left to do. */
  void cut(int mostRounds) {
    for (int round = 0;
        round < mostRounds && last != null && last.usable() && !last.isWhole();
        round++) {
      List<RowCut> found = SubsetRows.violated(problem, asked, last.use(), cuts, CUTS_PER_ROUND);
      if (found.isEmpty() || problem.work().spent() || best == null || best.value() >= enough) {
        return;
      }
      cuts.clear();
      cuts.addAll(last.prices().pricedCuts());
      cuts.addAll(found);
      solve();
    }
  }

  /** {@return best whole-number bound so far; null where there is none} */
  WeekBound bound() {
    return best;
  }

  /** {@return columns the LP knows, rising} */
  int[] columns() {
    return sorted();
  }

  /** {@return answer of the last LP, which was asked about {@link #asked}} */
  MasterLp.Answer answer() {
    return last;
  }

  /** {@return columns of the last LP} */
  int[] asked() {
    return asked;
  }

  List<RowCut> cuts() {
    return List.copyOf(cuts);
  }
}
