package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekNoRoom.Change;
import dev.dogleg.itinerary.WeekNoRoom.ChangeKind;
import dev.dogleg.plan.SetDays;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.IntFunction;
import java.util.function.IntPredicate;

/**
 * The smallest single change that makes room for a booking left out, found by planning the day
 * again: a window or the day's end moved by whole minutes, up to four hours, else another booking
 * moved to another of its van-days.
 *
 * <p>Maintainers: more room at one end never takes a day away, so the least minutes are found by
 * halving. A day that the effort leaves open counts as none.
 */
final class WeekChanges {
  private static final int MOST_MINUTES = 240;
  private static final int MOST_VISITS = 16;
  private static final long SET_EFFORT = 1_000_000;

  private final WeekModel model;
  private final int[][] locals;
  private final BooleanSupplier stop;

  /** Minutes that a change of interest takes at the most. */
  private int most = MOST_MINUTES;

  /** Of a week in which each van-day serves so many local bookings; once stopped, there is none. */
  WeekChanges(WeekModel model, int[][] locals, BooleanSupplier stop) {
    this.model = model;
    this.locals = locals;
    this.stop = stop;
  }

  /**
   * The change.
   *
   * @param booking one that is left out and has room on none of its van-days as they are
   * @return the change of least minutes, the earliest van-day's of equal ones; else the first move
   *     that makes room; empty where none does
   */
  Optional<Change> smallest(WeekBooking booking) {
    Change best = null;
    for (DayChoice choice : booking.choices()) {
      for (Change change : timed(choice)) {
        if (best == null || change.seconds() < best.seconds()) {
          best = change;
        }
      }
    }
    return best != null ? Optional.of(best) : moved(booking);
  }

  private List<Change> timed(DayChoice choice) {
    List<Change> changes = new ArrayList<>();
    Visit visit = choice.visit();
    List<Visit> others = served(choice.day(), -1);
    WeekDay day = day(choice.day());
    add(changes, choice, ChangeKind.LATER_END, m -> fits(later(day, m), others, visit));
    for (TimeWindow window : visit.arriveWithin()) {
      int from = window.fromSeconds();
      int to = window.toSeconds();
      IntFunction<TimeWindow> earlier = m -> new TimeWindow(Math.max(0, from - 60 * m), to);
      IntFunction<TimeWindow> longer = m -> new TimeWindow(from, later(to, m));
      for (IntFunction<TimeWindow> wider : List.of(earlier, longer)) {
        if (!wider.apply(MOST_MINUTES).equals(window)) {
          add(
              changes,
              choice,
              ChangeKind.WIDER_WINDOW,
              m -> fits(day, others, visit.arriving(List.of(wider.apply(m)))));
        }
      }
    }
    return changes;
  }

  private void add(List<Change> changes, DayChoice choice, ChangeKind kind, IntPredicate fits) {
    if (most < 1 || !fits.test(most)) {
      return;
    }
    int low = 1;
    int high = most;
    while (low < high) {
      int middle = (low + high) / 2;
      if (fits.test(middle)) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    changes.add(new Change(kind, choice.day(), 60 * low, "", -1));
    most = low - 1;
  }

  private Optional<Change> moved(WeekBooking booking) {
    for (DayChoice choice : booking.choices()) {
      VanKind kind = model.kindOf(choice.day());
      for (int local : locals[choice.day()]) {
        if (!fits(day(choice.day()), served(choice.day(), local), choice.visit())) {
          continue;
        }
        WeekBooking other = model.booking(kind.booking(local));
        for (DayChoice there : other.choices()) {
          if (there.day() != choice.day()
              && fits(day(there.day()), served(there.day(), -1), there.visit())) {
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

  private boolean fits(WeekDay day, List<Visit> others, Visit one) {
    if (others.size() >= MOST_VISITS || stop.getAsBoolean()) {
      return false;
    }
    List<Visit> asked = new ArrayList<>(others);
    asked.add(one);
    DayRequest request = model.request(day, asked, SET_EFFORT);
    return new SetDays(DayModel.of(request)).best((1L << asked.size()) - 1, SET_EFFORT).isPresent();
  }

  private static WeekDay later(WeekDay day, int minutes) {
    DayShift shift = day.shift();
    TimeWindow hours = shift.hours();
    TimeWindow longer = new TimeWindow(hours.fromSeconds(), later(hours.toSeconds(), minutes));
    return new WeekDay(shift.during(longer), day.travel(), day.terms());
  }

  private static int later(int seconds, int minutes) {
    return Math.min(TimeWindow.DAY_END, seconds + 60 * minutes);
  }

  private WeekDay day(int vanDay) {
    return model.request().days().get(vanDay);
  }
}
