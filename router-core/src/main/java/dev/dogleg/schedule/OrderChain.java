package dev.dogleg.schedule;

/**
 * Least cost of driving an order of visits, from any point of it to the end of the day.
 *
 * <p>Maintainers: two functions per stop, break not yet taken and taken. {@code breakSlot} names a
 * place of the break in the order: slot {@code 2k} is after the service of the k-th visit, slot
 * {@code 2k+1} before the service of the one after it; {@link #ANY_SLOT} leaves it free, {@link
 * #NO_SLOT} takes none. Mutable, one thread.
 */
final class OrderChain {
  static final int ANY_SLOT = -2;
  static final int NO_SLOT = -4;
  static final long IMPOSSIBLE = Long.MAX_VALUE;

  private final DayModel day;
  private int[] order;
  private final OrderTerms terms;
  private final OrderBounds bounds;
  private final OrderFloor floors;
  private long costBelow;
  private int beam;
  private final MissLog stepLog = new MissLog();
  private final MissLog breakLog = new MissLog();
  private final StopStep step;
  private final StopStep breakStep;
  private final StopStep quietStep;
  private RunEnvelope open;
  private RunEnvelope taken;
  private RunEnvelope nextOpen;
  private RunEnvelope nextTaken;
  private final long scale;
  private boolean breakNeeded;

  private long bestCost;
  private int bestEnd;
  private RuleMiss miss;

  /** Chains over a day whose costs are {@code cost * scale + seconds}. */
  OrderChain(DayModel day, long scale) {
    this.day = day;
    this.scale = scale;
    this.terms = new OrderTerms(day);
    this.bounds = new OrderBounds(day, terms);
    this.floors = new OrderFloor(day);
    step = new StopStep(day, stepLog);
    breakStep = new StopStep(day, breakLog);
    quietStep = new StopStep(day);
    open = new RunEnvelope(day.waitPrice());
    taken = new RunEnvelope(day.waitPrice());
    nextOpen = new RunEnvelope(day.waitPrice());
    nextTaken = new RunEnvelope(day.waitPrice());
  }

  /**
   * Chooses the order; no limits, so that a miss is seen where it happens.
   *
   * @return false where a must rule or the tanks forbid it, which the runs do not ask
   */
  boolean choose(int[] visits) {
    order = visits;
    costBelow = IMPOSSIBLE;
    beam = 0;
    breakNeeded = day.hasBreak() && order.length > 1;
    return terms.choose(visits);
  }

  /**
   * Chooses the order and a limit.
   *
   * @param visits the order
   * @param limit a cost of this or more is of no interest
   * @return false where a glance shows that the order is impossible or costs that much
   */
  boolean choose(int[] visits, long limit) {
    boolean allowed = choose(visits);
    costBelow = limit;
    if (!allowed || !bounds.choose(visits) || bounds.wholeCost() >= limit) {
      return false;
    }
    floors.choose(visits, bounds, terms);
    return floor() < limit;
  }

  /** Keeps at most so many runs at each door from now on, of the order chosen with a limit. */
  void narrow(int widest) {
    beam = widest;
  }

  /** Times the rest of the order: leaving position {@code at} (-1: the start place) in a span. */
  boolean runFrom(int at, int earliest, int latest, int leaveBy, boolean breakTaken, int slot) {
    return runFrom(at, earliest, latest, leaveBy, breakTaken, slot, 0);
  }

  /** Likewise where a cost was spent before. */
  boolean runFrom(
      int at, int earliest, int latest, int leaveBy, boolean breakTaken, int slot, long spent) {
    open.clear();
    taken.clear();
    (breakTaken ? taken : open).add(earliest, latest, leaveBy, spent, 0);
    return onwards(at, slot);
  }

  /** Whether the rest can be driven after an arrival at position {@code at} at one second. */
  boolean spareFromArrival(int at, int arrive, boolean breakTaken, int slot) {
    open.clear();
    taken.clear();
    BreakAt here = slot >= 0 && slot == 2 * at - 1 ? BreakAt.ON_ARRIVAL : BreakAt.NOWHERE;
    boolean nowTaken = breakTaken || here != BreakAt.NOWHERE;
    int service = terms.service(at);
    RunEnvelope runs = nowTaken ? taken : open;
    quietStep.arrive(arrive, arrive, arrive, 0, order[at], here, service, runs, 0);
    return spare(at, slot);
  }

  /** Whether the rest can be driven where position {@code at} may be left from a second on. */
  boolean spareFromReady(int at, int ready, int leaveBy, boolean breakTaken, int slot) {
    open.clear();
    taken.clear();
    (breakTaken ? taken : open).add(ready, ready, leaveBy, 0, 0);
    return spare(at, slot);
  }

  private boolean spare(int at, int slot) {
    breakNeeded = slot != NO_SLOT;
    return onwards(at, slot);
  }

  private boolean onwards(int at, int slot) {
    miss = null;
    breakLog.clear();
    boolean limited = costBelow != IMPOSSIBLE;
    for (int k = at; k + 1 < order.length; k++) {
      // Where waiting is free a start is known by its first second, and may slide: nothing to clip.
      if (limited && (k >= 0 || day.waitPrice() > 0)) {
        open.clip(floors.from(k, false), costBelow);
        taken.clip(floors.from(k, true), costBelow);
      }
      stepLog.clear();
      nextOpen.clear();
      nextTaken.clear();
      if (limited) {
        step.limit(bounds.readyBy(k + 1), costBelow - bounds.restCost(k + 1));
        breakStep.limit(bounds.readyBy(k + 1), costBelow - bounds.restCost(k + 1));
      } else {
        step.limit(Integer.MAX_VALUE, IMPOSSIBLE);
        breakStep.limit(Integer.MAX_VALUE, IMPOSSIBLE);
      }
      int i = k < 0 ? day.start() : order[k];
      int j = order[k + 1];
      all(step, open, i, j, BreakAt.NOWHERE, nextOpen, k, false);
      all(step, taken, i, j, BreakAt.NOWHERE, nextTaken, k, true);
      if (day.hasBreak() && k >= 0) {
        if (i < day.size() && (slot == ANY_SLOT || slot == 2 * k)) {
          all(breakStep, open, i, j, BreakAt.BEFORE_LEAVING, nextTaken, k, false);
        }
        if (j < day.size() && (slot == ANY_SLOT || slot == 2 * k + 1)) {
          all(breakStep, open, i, j, BreakAt.ON_ARRIVAL, nextTaken, k, false);
        }
      }
      swap();
      if (beam > 0) {
        open.keepCheapest(beam);
        taken.keepCheapest(beam);
      }
      if (open.size() + taken.size() == 0) {
        miss = stepLog.at(j < day.size() ? day.visit(j).id() : "");
        return false;
      }
    }
    return home();
  }

  private boolean home() {
    bestCost = IMPOSSIBLE;
    bestEnd = 0;
    int last = order[order.length - 1];
    stepLog.clear();
    for (int run = 0; run < taken.size(); run++) {
      step.toEnd(taken, run, last, day.latestEnd(), this::take);
    }
    for (int run = 0; run < open.size(); run++) {
      if (!breakNeeded) {
        step.toEnd(open, run, last, day.latestEnd(), this::take);
      } else {
        quietStep.toEnd(open, run, last, Math.min(day.latestEnd(), day.breakFrom()), this::take);
      }
    }
    if (bestCost == IMPOSSIBLE) {
      miss = !breakNeeded || taken.size() > 0 ? stepLog.at("") : breakLog.at("");
    }
    return bestCost != IMPOSSIBLE;
  }

  private void take(int end, long withoutTerms, int trail) {
    long cost = withoutTerms + terms.endPrice();
    long money = cost / scale;
    long bestMoney = bestCost / scale;
    boolean better =
        money < bestMoney
            || (money == bestMoney && (end < bestEnd || (end == bestEnd && cost < bestCost)));
    if (bestCost == IMPOSSIBLE || better) {
      bestCost = cost;
      bestEnd = end;
    }
  }

  private void all(
      StopStep by,
      RunEnvelope source,
      int i,
      int j,
      BreakAt breakAt,
      RunEnvelope target,
      int k,
      boolean breakTaken) {
    for (int run = 0; run < source.size(); run++) {
      by.linger(longestLinger(source, run, k, breakTaken));
      by.toVisit(source, run, i, j, breakAt, terms.service(k + 1), terms.price(k + 1), target, 0);
    }
  }

  /** Longest paid waiting at position {@code k} after which the limit can still be met. */
  private long longestLinger(RunEnvelope source, int run, int k, boolean breakTaken) {
    if (costBelow == IMPOSSIBLE || day.waitPrice() == 0) {
      return Long.MAX_VALUE;
    }
    if (k < 0) {
      return 0;
    }
    int b = source.unpaidUntil(run);
    long rest = floors.from(k, true).least(b, Integer.MAX_VALUE);
    if (!breakTaken) {
      rest = Math.min(rest, floors.from(k, false).least(b, Integer.MAX_VALUE));
    }
    return Math.max(0, costBelow - source.cost(run) - rest) / day.waitPrice();
  }

  private void swap() {
    RunEnvelope openBefore = open;
    RunEnvelope takenBefore = taken;
    open = nextOpen;
    taken = nextTaken;
    nextOpen = openBefore;
    nextTaken = takenBefore;
  }

  /** {@return a leaving of the start place at which the chosen order seems cheapest} */
  int hopefulStart() {
    return floors.from(-1, false).cheapest(day.from());
  }

  /** {@return a cost that the chosen order cannot be below} */
  long floor() {
    return floors.from(-1, false).least(day.from(), day.latestEnd());
  }

  /** {@return what the terms make of the chosen order} */
  OrderTerms terms() {
    return terms;
  }

  /** {@return cost of the last run, with its scale; only where it was possible} */
  long bestCost() {
    return bestCost;
  }

  /** {@return end of the last run; only where it was possible} */
  int bestEnd() {
    return bestEnd;
  }

  /** {@return why the last run was impossible} */
  RuleMiss miss() {
    return miss;
  }
}
