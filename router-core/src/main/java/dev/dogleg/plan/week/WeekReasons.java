package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekNoRoom;
import dev.dogleg.plan.DayPlanner;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * Why a booking has no room on each of its van-days: the day engine is asked with the visits that
 * the plan has there and the one left out; and the smallest change that would make room.
 */
final class WeekReasons {
  private static final long DAY_EFFORT = 20_000_000;

  private final WeekModel model;
  private final boolean proven;
  private final BooleanSupplier stop;

  /**
   * Sets up.
   *
   * @param model the week
   * @param proven whether the plan is proven best
   * @param stop asked before each day is planned again; once true, what is left reads "not found"
   */
  WeekReasons(WeekModel model, boolean proven, BooleanSupplier stop) {
    this.model = model;
    this.proven = proven;
    this.stop = stop;
  }

  /** The reasons for a booking, where each van-day serves so many local bookings. */
  WeekNoRoom of(int number, int[][] locals) {
    WeekBooking booking = model.booking(number);
    List<WeekNoRoom.OnDay> days = new ArrayList<>();
    for (DayChoice choice : booking.choices()) {
      VanKind kind = model.kindOf(choice.day());
      List<Visit> asked = new ArrayList<>();
      for (int local : locals[choice.day()]) {
        asked.add(kind.visit(local));
      }
      asked.add(kind.visit(kind.local(number)).waiting(0));
      days.add(new WeekNoRoom.OnDay(choice.day(), onDay(choice.day(), asked, booking)));
    }
    boolean nowhere = days.stream().allMatch(on -> impossible(on.reason()));
    return new WeekNoRoom(
        booking.id(),
        days,
        nowhere ? new WeekChanges(model, locals, stop).smallest(booking) : Optional.empty());
  }

  private NoRoom onDay(int vanDay, List<Visit> asked, WeekBooking booking) {
    if (stop.getAsBoolean()) {
      return new NoRoom(booking.id(), NoRoom.Why.NOT_FOUND, "", 0, List.of());
    }
    WeekDay day = model.request().days().get(vanDay);
    DayPlan plan = DayPlanner.plan(model.request(day, asked, DAY_EFFORT));
    Optional<NoRoom> reason =
        plan.noRoom().stream().filter(r -> r.visitId().equals(booking.id())).findFirst();
    if (reason.isPresent() && impossible(reason.get())) {
      return reason.get();
    }
    boolean notWorth = proven && !booking.counted();
    NoRoom.Why why = notWorth ? NoRoom.Why.NOT_WORTH_IT : NoRoom.Why.NOT_FOUND;
    return new NoRoom(booking.id(), why, "", 0, List.of());
  }

  private static boolean impossible(NoRoom reason) {
    return reason.why() == NoRoom.Why.IMPOSSIBLE_ALONE
        || reason.why() == NoRoom.Why.IMPOSSIBLE_TOGETHER;
  }
}
