package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekNoRoom.Change;
import dev.dogleg.itinerary.WeekNoRoom.ChangeKind;
import dev.dogleg.plan.RoomChanges;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/**
 * The smallest single change that makes room for a booking left out, found by planning the day
 * again: a window or the day's end moved by whole minutes, up to four hours, else another booking
 * moved to another of its van-days.
 */
final class WeekChanges {
  private final WeekModel model;
  private final int[][] locals;
  private final RoomChanges room;

  /** Of a week in which each van-day serves so many local bookings; once stopped, there is none. */
  WeekChanges(WeekModel model, int[][] locals, BooleanSupplier stop) {
    this.model = model;
    this.locals = locals;
    room = new RoomChanges(model.request().prices(), model.request().seed(), stop);
  }

  /**
   * The change.
   *
   * @param booking one that is left out and has room on none of its van-days as they are
   * @return the change of least minutes, the earliest van-day's of equal ones; else the first move
   *     that makes room; empty where none does
   */
  Optional<Change> smallest(WeekBooking booking) {
    Optional<Change> best = Optional.empty();
    for (DayChoice choice : booking.choices()) {
      // Only fewer minutes than those of an earlier van-day are of interest.
      int most = best.map(change -> change.seconds() / 60 - 1).orElse(RoomChanges.MOST_MINUTES);
      Optional<Change> here =
          room.smallest(
              choice.day(), day(choice.day()), served(choice.day(), -1), choice.visit(), most);
      best = here.isPresent() ? here : best;
    }
    return best.isPresent() ? best : moved(booking);
  }

  private Optional<Change> moved(WeekBooking booking) {
    for (DayChoice choice : booking.choices()) {
      VanKind kind = model.kindOf(choice.day());
      for (int local : locals[choice.day()]) {
        if (!room.fits(day(choice.day()), served(choice.day(), local), choice.visit())) {
          continue;
        }
        WeekBooking other = model.booking(kind.booking(local));
        for (DayChoice there : other.choices()) {
          if (there.day() != choice.day()
              && room.fits(day(there.day()), served(there.day(), -1), there.visit())) {
            return Optional.of(
                new Change(ChangeKind.MOVE_OTHER, choice.day(), 0, other.id(), there.day()));
          }
        }
      }
    }
    return Optional.empty();
  }

  /** What a van-day serves, but for one local booking. */
  private List<Visit> served(int vanDay, int without) {
    List<Visit> visits = new ArrayList<>();
    for (int local : locals[vanDay]) {
      if (local != without) {
        visits.add(model.kindOf(vanDay).visit(local));
      }
    }
    return visits;
  }

  private WeekDay day(int vanDay) {
    return model.request().days().get(vanDay);
  }
}
