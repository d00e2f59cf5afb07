package dev.dogleg.plan.late;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.plan.late.LateSearch.Candidate;
import dev.dogleg.plan.late.RestRequest.Widths;
import dev.dogleg.schedule.DayTiming;
import dev.dogleg.schedule.TimedOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Solves one rest of a day: first the least lateness, then the least cost with it.
 *
 * <p>One thread.
 */
final class RestSolver {
  /** Most ways to be so late whose cost is looked at. */
  private static final int MOST_WAYS = 32;

  private static final Set<NoRoom.Why> IMPOSSIBLE =
      Set.of(NoRoom.Why.IMPOSSIBLE_ALONE, NoRoom.Why.IMPOSSIBLE_TOGETHER);

  private final RestRequest rest;
  private final int widest;

  RestSolver(RestRequest rest, int widest) {
    this.rest = rest;
    this.widest = widest;
  }

  /**
   * A solved rest.
   *
   * @param request what the plan answers
   * @param plan the plan
   * @param costSixtieths its cost, with the prices of waiting-list visits that have no second left
   *     and so do not even stand in the request
   * @param lateness what it breaks
   * @param leftOut booked visits without room, each with its reason
   * @param proven whether nothing is less, in the order of {@code docs/LATE.md}
   */
  record Solved(
      DayRequest request,
      DayPlan plan,
      long costSixtieths,
      Lateness lateness,
      List<NoRoom> leftOut,
      boolean proven) {}

  /**
   * Solves.
   *
   * @param ids visits asked for besides the anchor
   * @param keepOrder whether the planned order stays
   * @param known a lateness that can be had; more is of no interest
   * @return the rest; empty where none was found that is not above {@code known}
   */
  Optional<Solved> solve(Set<String> ids, boolean keepOrder, Optional<Lateness> known) {
    if (known.filter(Lateness.NONE::equals).isPresent()) {
      DayRequest strict = rest.request(ids, Widths.AS_PROMISED, keepOrder);
      DayPlan plan = DayPlanner.plan(strict);
      if (plan.leftOutBooked() == 0) {
        return Optional.of(solved(ids, strict, plan, Lateness.NONE));
      }
    }
    LateSearch.Found found = LateSearch.of(rest, ids, keepOrder, known, widest);
    Solved best = null;
    int looked = 0;
    for (Candidate way : found.candidates()) {
      if (looked++ == MOST_WAYS) {
        break;
      }
      Solved one = cheapest(ids, way, keepOrder, found.lateness());
      if (best == null || one.costSixtieths < best.costSixtieths) {
        best = one;
      }
    }
    if (best == null) {
      return Optional.empty();
    }
    boolean proven = best.proven && found.complete() && found.candidates().size() <= MOST_WAYS;
    List<NoRoom> leftOut = new Reasons(best).list(ids, keepOrder);
    return Optional.of(
        new Solved(best.request, best.plan, best.costSixtieths, best.lateness, leftOut, proven));
  }

  private Solved solved(Set<String> ids, DayRequest request, DayPlan plan, Lateness lateness) {
    Set<String> asked =
        request.visits().stream().map(Visit::id).collect(Collectors.toCollection(TreeSet::new));
    long missing =
        rest.left().stream()
            .filter(visit -> ids.contains(visit.id()) && !asked.contains(visit.id()))
            .mapToLong(Visit::leftOutSixtieths)
            .sum();
    boolean proven = plan.proof().kind() == Proof.Kind.PROVEN_BEST;
    long cost = plan.costSixtieths() + missing;
    return new Solved(request, plan, cost, lateness, List.of(), proven);
  }

  private Solved cheapest(Set<String> ids, Candidate way, boolean keepOrder, Lateness lateness) {
    Set<String> asked = new TreeSet<>(way.booked());
    rest.left().stream()
        .filter(visit -> !visit.booked() && ids.contains(visit.id()))
        .forEach(visit -> asked.add(visit.id()));
    DayRequest request = rest.request(asked, way.widths(), keepOrder);
    DayPlan plan = DayPlanner.plan(request);
    if (plan.leftOutBooked() > 0) {
      plan = timed(request, way.order(), plan.noRoom());
    }
    return solved(ids, request, plan, lateness);
  }

  /** Where the planner's effort was spent too soon: the order that the search knows. */
  private static DayPlan timed(DayRequest request, List<String> order, List<NoRoom> reasons) {
    List<String> ids = request.visits().stream().map(Visit::id).toList();
    TimedOrder timed = DayTiming.time(request, order.stream().map(ids::indexOf).toList());
    long cost = timed.costSixtieths();
    List<NoRoom> noRoom = new ArrayList<>();
    for (Visit visit : request.visits()) {
      if (!order.contains(visit.id())) {
        cost += visit.leftOutSixtieths();
        // What is impossible is so beside any plan; the rest of what was said is not.
        noRoom.add(
            reasons.stream()
                .filter(one -> one.visitId().equals(visit.id()))
                .filter(one -> IMPOSSIBLE.contains(one.why()))
                .findFirst()
                .orElse(new NoRoom(visit.id(), NoRoom.Why.NOT_FOUND, "", 0, List.of())));
      }
    }
    noRoom.sort((one, other) -> one.visitId().compareTo(other.visitId()));
    Proof proof = new Proof(Proof.Kind.WORK_LIMIT, 0, 0, 0);
    return new DayPlan(request.shift(), timed.stops(), noRoom, 0, cost, proof);
  }

  /** Why visits have no room even where every promise gives way. */
  private final class Reasons {
    private final Set<String> served;

    Reasons(Solved solved) {
      served =
          solved.plan.stops().stream()
              .map(stop -> stop.visitId())
              .filter(id -> !id.isEmpty())
              .collect(Collectors.toCollection(TreeSet::new));
    }

    List<NoRoom> list(Set<String> ids, boolean keepOrder) {
      return rest.left().stream()
          .filter(visit -> visit.booked() && ids.contains(visit.id()))
          .filter(visit -> !served.contains(visit.id()))
          .map(visit -> reason(visit.id(), keepOrder))
          .sorted((one, other) -> one.visitId().compareTo(other.visitId()))
          .toList();
    }

    private NoRoom reason(String id, boolean keepOrder) {
      Set<String> asked = new TreeSet<>(served);
      asked.add(id);
      DayRequest all = rest.request(asked, rest.open(), keepOrder);
      List<Visit> visits =
          all.visits().stream().map(one -> one.id().equals(id) ? one.waiting(0) : one).toList();
      DayRequest request = all.asking(visits);
      // Whom the limits leave no second for does not even stand in the request.
      return DayPlanner.plan(request).noRoom().stream()
          .filter(one -> one.visitId().equals(id))
          .findFirst()
          .orElse(new NoRoom(id, NoRoom.Why.IMPOSSIBLE_ALONE, "arrive-within", 0, List.of()));
    }
  }
}
