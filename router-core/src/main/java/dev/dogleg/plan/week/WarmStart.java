package dev.dogleg.plan.week;

import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/**
 * Plans one week with a newcomer from what a {@link WarmWeek} keeps: whether there is one at all,
 * then the best within a gap above the bound, then within a wider one.
 */
final class WarmStart {
  /** The first gap holds so many kept sets, each further one so many times as many. */
  private static final int FIRST_SETS = 4_000;

  private static final int MORE = 4;
  private static final int GAPS = 4;

  /** A set with the newcomer is looked for above the least by this part of the bound first. */
  private static final int FIRST_LOOK = 64;

  private final WarmWeek warm;
  private final WeekModel model;
  private final WorkCount work;
  private final SetCosts costs;
  private final BooleanSupplier stop;
  private final int newcomer;

  WarmStart(WarmWeek warm, WeekRequest request, String newcomerId, BooleanSupplier stop) {
    this.warm = warm;
    this.stop = stop;
    model = new WeekModel(request);
    work = new WorkCount(request.effort(), stop);
    costs = new SetCosts(model, work);
    newcomer =
        IntStream.range(0, model.size())
            .filter(i -> model.booking(i).id().equals(newcomerId))
            .findFirst()
            .orElseThrow();
  }

  /** The plan; empty where it came to no end. */
  Optional<WeekPlan> plan(Map<String, Integer> known) {
    WeekChoice start = choice(known);
    MasterProblem seen = new MasterProblem(model, new ColumnPool(model.size()), costs, work);
    PricedProof proof = new PricedProof(seen, start, stop, (best, left, cost) -> {}, () -> start);
    WarmLists lists = new WarmLists(warm, model, proof.pricers(), newcomer);
    long bound = warm.bound().scaled();
    if (!lists.find(Math.max(1, bound / FIRST_LOOK), bound)) {
      return Optional.empty();
    }
    lists.fill(seen.pool());
    int[] first = IntStream.range(0, seen.pool().size()).toArray();
    if (start.leftOutCounted() > 0 && proof.leavesOut(first)) {
      return Optional.of(said(proof.standing()));
    }
    WeekBound base = lists.bound(seen);
    int sets = FIRST_SETS;
    for (int round = 0; round < GAPS && !work.spent(); round++) {
      long gap = gap(warm.roomOf(sets), proof.standing().best(), base);
      if (!lists.reach(gap)) {
        return Optional.empty();
      }
      long top = Math.floorDiv(base.scaled() + gap, base.prices().scale());
      if (proof.over(base, top, lists.lists(gap), first)) {
        return Optional.of(said(proof.standing()));
      }
      if (gap >= warm.reach()) {
        return Optional.empty();
      }
      sets *= MORE;
    }
    return Optional.empty();
  }

  /** The gap up to the best week known, where the lists reach so far or nearly so. */
  private long gap(long usual, WeekChoice best, WeekBound base) {
    if (best.leftOutCounted() == 0) {
      long whole = best.costSixtieths() * base.prices().scale() - base.scaled();
      if (whole <= Math.min(warm.reach(), usual + usual / 2)) {
        return whole;
      }
    }
    return usual;
  }

  private WeekPlan said(ProofStanding standing) {
    boolean best = standing.proven();
    Proof said =
        new Proof(
            best ? Proof.Kind.PROVEN_BEST : Proof.Kind.WORK_LIMIT,
            standing.leftOutBound(),
            Math.max(0, standing.costBound()),
            work.steps());
    return WeekAssembly.plan(model, standing.best(), said, new WeekReasons(model, best, stop));
  }

  private WeekChoice choice(Map<String, Integer> known) {
    Map<Integer, List<Integer>> byDay = new TreeMap<>();
    for (int i = 0; i < model.size(); i++) {
      Integer day = known.get(model.booking(i).id());
      if (day != null) {
        byDay.computeIfAbsent(day, key -> new ArrayList<>()).add(model.kindOf(day).local(i));
      }
    }
    List<WeekChoice.ChosenSet> sets = new ArrayList<>();
    byDay.forEach((day, locals) -> sets.add(new WeekChoice.ChosenSet(model.kindOf(day), locals)));
    return WeekChoice.of(model, costs, sets);
  }
}
