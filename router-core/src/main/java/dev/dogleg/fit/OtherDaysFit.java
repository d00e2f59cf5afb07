package dev.dogleg.fit;

import dev.dogleg.fit.FitAnswer.Verdict;
import dev.dogleg.fit.WeekOffer.Move;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.WarmWeek;
import dev.dogleg.plan.week.WeekPlanner;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;

/**
 * Tier B: the week's own model with the newcomer forced in, told and fixed visits on their van-day.
 *
 * <p>Everybody who is planned counts, and so does the newcomer: the newcomer fits just where nobody
 * is left out. Bookings that the plan does not have are not asked.
 */
final class OtherDaysFit {
  private final WeekRequest week;
  private final List<WeekDay> asked;
  private final Map<String, Integer> placed;
  private final Set<String> fixed;
  private final List<PlannedVanDay> before;
  private final Optional<WarmWeek> warm;

  /** With what is kept of the planned week; empty where it is planned from scratch. */
  OtherDaysFit(
      WeekRequest week,
      List<WeekDay> asked,
      Map<String, Integer> placed,
      Set<String> fixed,
      List<PlannedVanDay> before,
      Optional<WarmWeek> warm) {
    this.warm = warm;
    this.week = week;
    this.asked = asked;
    this.placed = placed;
    this.fixed = fixed;
    this.before = before;
  }

  /**
   * Solves.
   *
   * @param question the question
   * @param best van-day of the best offer of tier A; empty where there is none
   */
  WeekOffer solve(FitQuestion question, OptionalInt best) {
    WeekRequest request = request(question);
    WeekPlan plan = fromWarm(question, request, best).orElseGet(() -> WeekPlanner.plan(request));
    return offer(question, request, plan);
  }

  private Optional<WeekPlan> fromWarm(FitQuestion question, WeekRequest request, OptionalInt best) {
    Map<String, Integer> known = new HashMap<>(placed);
    best.ifPresent(day -> known.put(question.newcomer().id(), day));
    return warm.flatMap(kept -> kept.with(request, question.newcomer().id(), known, () -> false));
  }

  /** What is kept of the planned week, so that tier B need not begin from scratch. */
  static Optional<WarmWeek> warm(
      WeekRequest week, Map<String, Integer> placed, Set<String> fixed, long effort) {
    WeekRequest planned =
        new WeekRequest(
            week.days(), planned(week, placed, fixed), week.prices(), week.seed(), effort);
    return WarmWeek.of(planned, () -> false);
  }

  private WeekOffer offer(FitQuestion question, WeekRequest request, WeekPlan plan) {
    boolean proven = plan.proof().kind() == Proof.Kind.PROVEN_BEST;
    if (plan.leftOutCounted() > 0) {
      boolean none = proven || plan.proof().leftOutBound() > 0;
      return new WeekOffer(
          none ? Verdict.NEVER_FITS : Verdict.NOT_FOUND,
          request,
          plan,
          none,
          OptionalInt.empty(),
          0,
          List.of());
    }
    Map<String, Integer> now = new TreeMap<>();
    for (int day = 0; day < plan.days().size(); day++) {
      for (PlannedStop stop : plan.days().get(day).stops()) {
        if (stop.kind() == PlannedStop.Kind.VISIT) {
          now.put(stop.visitId(), day);
        }
      }
    }
    List<Move> moved = new ArrayList<>();
    now.forEach(
        (id, day) -> {
          Integer was = placed.get(id);
          if (was != null && !was.equals(day)) {
            moved.add(new Move(id, was, day));
          }
        });
    return new WeekOffer(
        Verdict.FITS,
        request,
        plan,
        proven,
        OptionalInt.of(now.get(question.newcomer().id())),
        plan.costSixtieths() - costBefore(),
        moved);
  }

  /** The planned bookings and the newcomer, all to be served. */
  private WeekRequest request(FitQuestion question) {
    List<WeekBooking> bookings = planned(week, placed, fixed);
    bookings.add(forced(question.newcomer().id(), question.newcomer().choices()));
    return new WeekRequest(asked, bookings, week.prices(), week.seed(), question.otherDaysEffort());
  }

  private static List<WeekBooking> planned(
      WeekRequest week, Map<String, Integer> placed, Set<String> fixed) {
    List<WeekBooking> bookings = new ArrayList<>();
    for (WeekBooking booking : week.bookings()) {
      Integer day = placed.get(booking.id());
      if (day != null) {
        bookings.add(
            forced(
                booking.id(),
                fixed.contains(booking.id())
                    ? List.of(FitWeek.on(booking, day).orElseThrow())
                    : booking.choices()));
      }
    }
    return bookings;
  }

  private static WeekBooking forced(String id, List<DayChoice> choices) {
    List<DayChoice> booked =
        choices.stream()
            .map(
                choice ->
                    new DayChoice(
                        choice.day(), choice.visit().mustServe(), choice.extraSixtieths()))
            .toList();
    return new WeekBooking(id, true, 0, booked);
  }

  private long costBefore() {
    long cost = before.stream().mapToLong(PlannedVanDay::sumSixtieths).sum();
    for (WeekBooking booking : week.bookings()) {
      Integer day = placed.get(booking.id());
      cost += day == null ? 0 : FitWeek.on(booking, day).orElseThrow().extraSixtieths();
    }
    return cost;
  }
}
