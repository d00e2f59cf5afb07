package dev.dogleg.plan.late;

import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.plan.late.LateChoice.Kind;
import dev.dogleg.plan.late.RestSolver.Solved;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Plans the rest of a day that runs late: keep the order, reorder, or move one visit to another
 * day.
 *
 * <p>Holds no state: any thread may use it.
 */
public final class LatePlanner {
  /** Being late over all told times is compared in steps of so many seconds. */
  private static final int LATE_STEP_SECONDS = 300;

  /** Another order is worth it where it saves so many sixtieths: ten minutes of driving. */
  private static final long WORTH_SIXTIETHS = 36_000;

  private final RestOfDay rest;
  private final RestRequest request;
  private final RestSolver solver;
  private final Set<String> all;

  private LatePlanner(RestOfDay rest, int widest) {
    this.rest = rest;
    request = new RestRequest(rest);
    solver = new RestSolver(request, widest);
    all = request.left().stream().map(Visit::id).collect(Collectors.toCollection(TreeSet::new));
  }

  /**
   * At most three choices.
   *
   * @param rest where the day stands
   * @return the recommended choice first; another order only where it is better than the planned
   *     one; a visit to another day only where that repairs something
   * @throws IllegalArgumentException where no road leads from where the van is to the end place
   */
  public static LateAnswer plan(RestOfDay rest) {
    return plan(rest, LateSearch.WIDEST);
  }

  /** Likewise, with a limit to how many labels of one size of sets are kept. */
  static LateAnswer plan(RestOfDay rest, int widest) {
    LatePlanner planner = new LatePlanner(rest, widest);
    return new LateAnswer(planner.choices(), planner.request.gone());
  }

  private List<LateChoice> choices() {
    Solved kept =
        solver
            .solve(all, true, Optional.empty())
            .orElseThrow(() -> new IllegalArgumentException("no road leads to the end place"));
    LateChoice keep = choice(Kind.KEEP, Optional.empty(), kept);
    List<LateChoice> choices = new ArrayList<>(List.of(keep));
    LateChoice best = keep;
    Optional<Solved> other = solver.solve(all, false, Optional.of(keep.lateness()));
    if (other.isPresent()) {
      LateChoice reorder = choice(Kind.REORDER, Optional.empty(), other.get());
      if (better(reorder, keep)) {
        choices.add(reorder);
        best = reorder;
      }
    }
    move(best).ifPresent(choices::add);
    LateChoice recommended = recommended(choices);
    choices.remove(recommended);
    choices.add(0, recommended.recommend());
    return choices;
  }

  private static boolean better(LateChoice one, LateChoice other) {
    int lateness = one.lateness().compareTo(other.lateness());
    return lateness < 0
        || (lateness == 0
            && one.costSixtieths() < other.costSixtieths()
            && !one.order().equals(other.order()));
  }

  private LateChoice choice(Kind kind, Optional<String> moved, Solved solved) {
    List<PromiseKept> promises = new ArrayList<>();
    for (PlannedStop stop : solved.plan().stops()) {
      if (stop.kind() == PlannedStop.Kind.VISIT) {
        Visit asked =
            solved.request().visits().stream()
                .filter(visit -> visit.id().equals(stop.visitId()))
                .findFirst()
                .orElseThrow();
        request.kept(asked, stop.arriveSeconds()).ifPresent(promises::add);
      }
    }
    DayShift whole = rest.day().shift();
    int end = solved.plan().stops().stream().mapToInt(PlannedStop::arriveSeconds).max().orElse(0);
    return new LateChoice(
        kind,
        moved,
        false,
        solved.request(),
        solved.plan(),
        solved.costSixtieths(),
        solved.lateness(),
        promises,
        solved.leftOut(),
        Math.max(0, end - whole.latestEndSeconds()),
        solved.proven());
  }

  /** The visit whose going to another day repairs most; untold ones before told ones. */
  private Optional<LateChoice> move(LateChoice best) {
    if (best.lateness().equals(Lateness.NONE) && best.beyondOvertimeSeconds() == 0) {
      return Optional.empty();
    }
    List<LateChoice> repairs = new ArrayList<>();
    for (String id : all) {
      if (rest.movable().contains(id)) {
        Set<String> others = new TreeSet<>(all);
        others.remove(id);
        solver
            .solve(others, false, Optional.of(best.lateness()))
            .map(solved -> choice(Kind.MOVE, Optional.of(id), solved))
            .filter(choice -> REPAIRED.compare(choice, best) < 0)
            .ifPresent(repairs::add);
      }
    }
    return repairs.stream()
        .min(
            REPAIRED
                .thenComparing(choice -> told(choice.moved().orElseThrow()))
                .thenComparingLong(choice -> choice.costSixtieths())
                .thenComparing(choice -> choice.moved().orElseThrow()));
  }

  private static final Comparator<LateChoice> REPAIRED =
      Comparator.comparing(LateChoice::lateness)
          .thenComparingInt(LateChoice::beyondOvertimeSeconds);

  private boolean told(String id) {
    return request.promise(id).filter(one -> one.kind() == Promise.Kind.TOLD).isPresent();
  }

  /**
   * The stated rule: the fewest left out, then the fewest told times broken, then the least late in
   * whole steps of five minutes, then the fewest wishes broken; of equals the planned order, unless
   * another one saves ten minutes of driving. A visit is moved only where that leaves fewer out, or
   * breaks at least two told times fewer: who is moved must be asked too.
   */
  private static LateChoice recommended(List<LateChoice> choices) {
    LateChoice best = choices.get(0);
    for (LateChoice one : choices) {
      boolean better;
      if (one.kind() == Kind.MOVE) {
        better = MOVED.compare(one, best) < 0;
      } else {
        int weight = WEIGHT.compare(one, best);
        boolean saves = one.costSixtieths() <= best.costSixtieths() - WORTH_SIXTIETHS;
        better = weight < 0 || (weight == 0 && saves);
      }
      best = better ? one : best;
    }
    return best;
  }

  private static final Comparator<LateChoice> MOVED =
      Comparator.<LateChoice>comparingInt(one -> one.lateness().leftOut())
          .thenComparingInt(one -> one.lateness().toldBroken() + (one.kind() == Kind.MOVE ? 1 : 0));

  private static final Comparator<LateChoice> WEIGHT =
      MOVED
          .thenComparingInt(
              one -> (one.lateness().toldLateSeconds() + LATE_STEP_SECONDS - 1) / LATE_STEP_SECONDS)
          .thenComparingInt(one -> one.lateness().wishesBroken());
}
