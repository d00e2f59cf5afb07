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
import dev.dogleg.plan.RoomChanges;
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
 * <p>Maintainers: the newcomer stands on the waiting list at a price of 2^38, above the cost of any
 * day, so that it is served just where the booked visits leave room; where they do not, the day
 * planner's reason speaks of it and of nobody else.
 */
final class DayFit {
  private static final long MUST_SIXTIETHS = 1L << 38;

  private final WeekRequest week;
  private final WeekDay day;
  private final PlannedVanDay before;
  private final DayChoice choice;
  private final DayRequest request;
  private final SolvedDay solved;

  private DayFit(WeekRequest week, WeekDay day, PlannedVanDay before, DayChoice choice) {
    this.week = week;
    this.day = day;
    this.before = before;
    this.choice = choice;
    List<Visit> visits = new ArrayList<>(before.visits());
    visits.add(choice.visit().waiting(MUST_SIXTIETHS));
    request = PlannedVanDay.request(week, day, visits);
    solved = SolvedDay.of(request);
  }

  static DayFit of(WeekRequest week, WeekDay day, PlannedVanDay before, DayChoice choice) {
    return new DayFit(week, day, before, choice);
  }

  int day() {
    return choice.day();
  }

  /** {@return whether the day serves the newcomer and all it had} */
  boolean fits() {
    return solved.plan().noRoom().isEmpty();
  }

  /** {@return what the newcomer costs the day, where it fits} */
  long extraCostSixtieths() {
    return solved.sumSixtieths() - before.sumSixtieths() + choice.extraSixtieths();
  }

  /** The offer, where it fits. */
  Offer offer() {
    DayPlan after = solved.plan();
    return new Offer(
        choice.day(),
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
   * @param withChange whether the smallest change is sought
   */
  NoDay noDay(boolean withChange) {
    NoRoom reason =
        solved.plan().noRoom().stream()
            .filter(one -> one.visitId().equals(choice.visit().id()))
            .findFirst()
            .orElseGet(
                () -> new NoRoom(choice.visit().id(), NoRoom.Why.NOT_FOUND, "", 0, List.of()));
    NoDay plain = new NoDay(choice.day(), reason, Optional.empty());
    return withChange && plain.proven()
        ? new NoDay(
            choice.day(),
            reason,
            new RoomChanges(week.prices(), week.seed(), () -> false)
                .smallest(
                    choice.day(), day, before.visits(), choice.visit(), RoomChanges.MOST_MINUTES))
        : plain;
  }

  private static List<PlannedStop> visits(DayPlan plan) {
    return plan.stops().stream().filter(stop -> stop.kind() == PlannedStop.Kind.VISIT).toList();
  }
}
