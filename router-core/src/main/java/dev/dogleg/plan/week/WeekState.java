package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A week under way: an order for each van-day, and who is in none. One thread. */
final class WeekState {
  private final WeekModel model;
  private final KnownOrders.Known[] day;
  private final int[] vanOf;
  private int left;
  private long leftCost;

  /** Nobody served. */
  WeekState(WeekModel model, KnownOrders.Known[] homes) {
    this.model = model;
    day = homes.clone();
    vanOf = new int[model.size()];
    Arrays.fill(vanOf, -1);
    for (int i = 0; i < vanOf.length; i++) {
      left += model.counted(i) ? 1 : 0;
      leftCost += model.leftOutSixtieths(i);
    }
  }

  WeekState(WeekState other) {
    model = other.model;
    day = other.day.clone();
    vanOf = other.vanOf.clone();
    left = other.left;
    leftCost = other.leftCost;
  }

  KnownOrders.Known day(int van) {
    return day[van];
  }

  void set(int van, KnownOrders.Known next) {
    day[van] = next;
  }

  boolean served(int booking) {
    return vanOf[booking] >= 0;
  }

  /** {@return the van-day that serves a booking; -1: none} */
  int vanOf(int booking) {
    return vanOf[booking];
  }

  /** Notes which van-day serves a booking, -1: none. */
  void mark(int booking, int van) {
    int more = (van < 0 ? 1 : 0) - (vanOf[booking] < 0 ? 1 : 0);
    left += model.counted(booking) ? more : 0;
    leftCost += more * model.leftOutSixtieths(booking);
    vanOf[booking] = van;
  }

  /** {@return number of counted bookings left out} */
  int left() {
    return left;
  }

  /** {@return cost of all days as known now, and of what is left out} */
  long cost() {
    long cost = leftCost;
    for (KnownOrders.Known each : day) {
      cost += each.cost();
    }
    return cost;
  }

  /** {@return whether no day was found to be impossible} */
  boolean possible() {
    for (KnownOrders.Known each : day) {
      if (!each.possible()) {
        return false;
      }
    }
    return true;
  }

  /** {@return the week as it is chosen} */
  WeekChoice choice() {
    List<WeekChoice.ChosenSet> sets = new ArrayList<>();
    for (int van = 0; van < day.length; van++) {
      int[] locals = day[van].order().clone();
      Arrays.sort(locals);
      if (locals.length > 0) {
        sets.add(
            new WeekChoice.ChosenSet(model.kindOf(van), Arrays.stream(locals).boxed().toList()));
      }
    }
    return new WeekChoice(sets, left, cost());
  }
}
