package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.plan.DayPlanner;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;

/** A week of one van-day, planned as the day that it is. */
final class OneVanDay {
  private static final int MOST_SERVED = 16;

  private OneVanDay() {}

  /**
   * The best choice for a week of one van-day.
   *
   * @param model the week
   * @param costs exact costs of sets
   * @param effort limit in solver steps
   * @param stop asked now and then
   * @return the choice; empty where there are more van-days, where prices of choices are not those
   *     of a day, or where the day engine did not prove its plan
   */
  static Optional<WeekChoice> proven(
      WeekModel model, SetCosts costs, long effort, BooleanSupplier stop) {
    // The day engine knows no price of promises.
    if (model.request().days().size() != 1 || model.kinds().get(0).pricesPromises()) {
      return Optional.empty();
    }
    VanKind kind = model.kinds().get(0);
    List<Visit> asked = new ArrayList<>();
    for (int local = 0; local < kind.size(); local++) {
      WeekBooking booking = model.booking(kind.booking(local));
      DayChoice choice = booking.choices().get(0);
      long worth = booking.leftOutSixtieths() - choice.extraSixtieths();
      if (booking.counted() ? choice.extraSixtieths() != 0 : worth < 0) {
        return Optional.empty();
      }
      asked.add(booking.counted() ? choice.visit() : choice.visit().waiting(worth));
    }
    DayPlan plan =
        DayPlanner.plan(model.request(model.request().days().get(0), asked, effort), stop);
    Set<String> served = new HashSet<>();
    plan.stops().stream()
        .filter(visit -> visit.kind() == PlannedStop.Kind.VISIT)
        .forEach(visit -> served.add(visit.visitId()));
    if (plan.proof().kind() != Proof.Kind.PROVEN_BEST || served.size() > MOST_SERVED) {
      return Optional.empty();
    }
    // Whom the day leaves out of its booked visits, it chose by other prices.
    boolean dearLeft =
        IntStream.range(0, kind.size())
            .filter(local -> !served.contains(asked.get(local).id()))
            .mapToObj(local -> model.booking(kind.booking(local)))
            .anyMatch(booking -> booking.counted() && booking.leftOutSixtieths() > 0);
    if (dearLeft) {
      return Optional.empty();
    }
    List<Integer> locals = new ArrayList<>();
    for (int local = 0; local < kind.size(); local++) {
      if (served.contains(asked.get(local).id())) {
        locals.add(local);
      }
    }
    return Optional.of(
        WeekChoice.of(
            model,
            costs,
            locals.isEmpty() ? List.of() : List.of(new WeekChoice.ChosenSet(kind, locals))));
  }
}
