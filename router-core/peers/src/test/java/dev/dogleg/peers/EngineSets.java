package dev.dogleg.peers;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.SetDays;
import dev.dogleg.schedule.DayModel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Sets of a van-day with traffic: every set that {@link SteadySets#atLeast} lets pass, with the
 * cost that it has at least until somebody asks for the exact one, which the day engine finds
 * ({@link SetDays}, itself held against full enumeration elsewhere).
 */
final class EngineSets {
  private final int day;
  private final DayModel model;
  private final SetDays engine;
  private final long[] bitOf;
  private final long[] extra;
  private final DaySets could;
  private final boolean[] exact;

  EngineSets(WeekRequest week, int day) {
    this.day = day;
    List<Visit> visits = new ArrayList<>();
    List<Integer> numbers = new ArrayList<>();
    List<Long> prices = new ArrayList<>();
    for (int b = 0; b < week.bookings().size(); b++) {
      WeekBooking booking = week.bookings().get(b);
      for (DayChoice choice : booking.choices()) {
        if (choice.day() == day) {
          visits.add(choice.visit());
          numbers.add(b);
          prices.add(choice.extraSixtieths());
        }
      }
    }
    WeekDay on = week.days().get(day);
    model =
        DayModel.of(
            new DayRequest(on.shift(), visits, on.travel(), week.prices(), on.terms(), 1, 1));
    engine = new SetDays(model);
    bitOf = new long[model.size()];
    extra = new long[model.size()];
    for (int v = 0; v < bitOf.length; v++) {
      bitOf[v] = 1L << numbers.get(model.requestIndex(v));
      extra[v] = prices.get(model.requestIndex(v));
    }
    could = SteadySets.atLeast(week, day);
    exact = new boolean[could.size()];
  }

  /**
   * The sets as far as known: exact costs where asked for, else least ones; impossible ones out.
   */
  DaySets known() {
    int[] possible = new int[could.size()];
    int size = 0;
    for (int k = 0; k < possible.length; k++) {
      if (could.costs()[k] < Long.MAX_VALUE) {
        possible[size++] = k;
      }
    }
    long[] sets = Arrays.stream(possible, 0, size).mapToLong(k -> could.sets()[k]).toArray();
    long[] costs = Arrays.stream(possible, 0, size).mapToLong(k -> could.costs()[k]).toArray();
    return new DaySets(day, sets, costs);
  }

  /**
   * Finds the exact cost of a set.
   *
   * @param set one of the sets
   * @return false where it was known before
   */
  boolean makeExact(long set) {
    int k = 0;
    while (could.sets()[k] != set) {
      k++;
    }
    if (exact[k]) {
      return false;
    }
    exact[k] = true;
    long asked = 0;
    long prices = 0;
    for (int v = 0; v < bitOf.length; v++) {
      if ((set & bitOf[v]) != 0) {
        asked |= 1L << v;
        prices += extra[v];
      }
    }
    Optional<SetDays.Best> best = engine.best(asked, Long.MAX_VALUE / 4);
    long cost = best.map(SetDays.Best::costSixtieths).orElse(Long.MAX_VALUE - prices) + prices;
    if (cost < could.costs()[k] || best.map(b -> !b.proven()).orElse(false)) {
      throw new IllegalStateException("not a proven cost, or below what it costs at least");
    }
    could.costs()[k] = cost;
    return true;
  }
}
