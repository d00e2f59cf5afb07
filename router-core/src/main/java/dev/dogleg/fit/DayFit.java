package dev.dogleg.fit;

import dev.dogleg.fit.Offer.DayChange;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.plan.RoomChanges;
import dev.dogleg.schedule.LegMemory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * Tier A on one van-day: all its visits stay, the newcomer is forced in.
 *
 * <p>Maintainers: for its reasons the day planner is asked with the newcomer on the waiting list,
 * so that they speak of it and of nobody else.
 */
final class DayFit {
  /** Above the cost of any day. */
  private static final long MUST_SIXTIETHS = 1L << 38;

  private final WeekRequest week;
  private final WeekDay day;
  private final LegMemory legs;
  private final PlannedVanDay before;
  private final DayChoice choice;
  private final DayRequest request;
  private final SolvedDay.Outcome outcome;

  private DayFit(
      WeekRequest week, WeekDay day, LegMemory legs, PlannedVanDay before, DayChoice choice) {
    this.week = week;
    this.day = day;
    this.legs = legs;
    this.before = before;
    this.choice = choice;
    request = asking(choice.visit().mustServe());
    outcome = SolvedDay.of(request, legs);
  }

  private DayRequest asking(Visit newcomer) {
    List<Visit> visits = new ArrayList<>(before.visits());
    visits.add(newcomer);
    return PlannedVanDay.request(week, day, visits);
  }

  /** With what is known of the day's legs, also of those after its end. */
  static DayFit of(
      WeekRequest week, WeekDay day, LegMemory legs, PlannedVanDay before, DayChoice choice) {
    return new DayFit(week, day, legs, before, choice);
  }

  int day() {
    return choice.day();
  }

  /** {@return whether the day serves the newcomer and all it had} */
  boolean fits() {
    return outcome.day().isPresent();
  }

  /** {@return what the newcomer costs the day, where it fits} */
  long extraCostSixtieths() {
    return outcome.day().orElseThrow().sumSixtieths()
        - before.sumSixtieths()
        + choice.extraSixtieths();
  }

  /** The offer, where it fits. */
  Offer offer() {
    SolvedDay solved = outcome.day().orElseThrow();
    DayPlan after = solved.plan();
    return new Offer(
        choice.day(),
        request,
        before.plan(),
        after,
        solved.proven(),
        DayOdds.toTell(request, after, choice.visit().id()),
        extraCostSixtieths(),
        doors(after),
        change(after));
  }

  private List<DoorChange> doors(DayPlan after) {
    Map<String, Integer> arrived = new HashMap<>();
    visits(before.plan()).forEach(stop -> arrived.put(stop.visitId(), stop.arriveSeconds()));
    Map<String, Integer> kept = DayOdds.kept(request, after);
    Set<String> promised = day.terms().odds().map(OddsTerms::promised).orElse(Set.of());
    return visits(after).stream()
        .map(
            stop ->
                new DoorChange(
                    stop.visitId(),
                    known(arrived, stop.visitId()),
                    stop.arriveSeconds(),
                    known(before.kept(), stop.visitId()),
                    kept.get(stop.visitId()),
                    promised.contains(stop.visitId())))
        .toList();
  }

  private static OptionalInt known(Map<String, Integer> values, String id) {
    Integer value = values.get(id);
    return value == null ? OptionalInt.empty() : OptionalInt.of(value);
  }

  private DayChange change(DayPlan after) {
    return new DayChange(
        more(after, PlannedStop::driveSeconds),
        more(after, PlannedStop::driveMetres),
        more(after, PlannedStop::waitSeconds),
        end(after) - end(before.plan()));
  }

  private int more(DayPlan after, ToIntFunction<PlannedStop> figure) {
    return after.stops().stream().mapToInt(figure).sum()
        - before.plan().stops().stream().mapToInt(figure).sum();
  }

  private static int end(DayPlan plan) {
    return plan.stops().isEmpty()
        ? plan.shift().hours().fromSeconds()
        : plan.stops().get(plan.stops().size() - 1).arriveSeconds();
  }

  /**
   * Why not, where it does not fit.
   *
   * @param why whether reason and smallest change are sought
   */
  NoDay noDay(boolean why) {
    if (!why || !outcome.neverFits()) {
      return new NoDay(choice.day(), outcome.neverFits(), Optional.empty(), Optional.empty());
    }
    NoRoom reason =
        DayPlanner.whyNot(
            asking(choice.visit().waiting(MUST_SIXTIETHS)), choice.visit().id(), legs);
    RoomChanges changes = new RoomChanges(week.prices(), week.seed(), () -> false);
    return new NoDay(
        choice.day(),
        true,
        Optional.of(reason),
        changes.smallest(
            choice.day(), day, before.visits(), choice.visit(), RoomChanges.MOST_MINUTES, legs));
  }

  private static List<PlannedStop> visits(DayPlan plan) {
    return plan.stops().stream().filter(stop -> stop.kind() == PlannedStop.Kind.VISIT).toList();
  }
}
