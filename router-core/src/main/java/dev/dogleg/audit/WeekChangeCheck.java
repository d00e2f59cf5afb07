package dev.dogleg.audit;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekNoRoom.Change;
import dev.dogleg.itinerary.WeekNoRoom.ChangeKind;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether the change said to make room for a booking has its form, and, where a day is small enough
 * to try everything, makes room without turning anybody of the days that it touches away.
 */
final class WeekChangeCheck {
  private final WeekRows rows;
  private final WeekFindings found;

  WeekChangeCheck(WeekRows rows, WeekFindings found) {
    this.rows = rows;
    this.found = found;
  }

  void check(WeekBooking booking, Change change) {
    Optional<DayChoice> choice = WeekRows.choice(booking, change.day());
    if (choice.isEmpty() || !formed(change)) {
      String text = "The change said to make room for booking %s is none: %s.";
      text = text.formatted(booking.id(), change);
      found.week("change-form", booking.id(), 1, 0, text);
      return;
    }
    boolean refuted =
        switch (change.kind()) {
          case WIDER_WINDOW -> !wider(choice.get(), change.seconds());
          case LATER_END ->
              noRoom(change.day(), others(change.day(), ""), choice.get(), later(change));
          case MOVE_OTHER -> !moves(choice.get(), change);
        };
    if (refuted) {
      String text = "The change said to make room for booking %s on this van-day does not: %s.";
      text = text.formatted(booking.id(), change);
      found.day(change.day(), "change-untrue", booking.id(), 1, 0, text);
    }
  }

  private boolean formed(Change change) {
    if (change.kind() != ChangeKind.MOVE_OTHER) {
      return change.seconds() > 0 && change.otherId().isEmpty() && change.toDay() == -1;
    }
    WeekBooking other = rows.booking(change.otherId());
    return change.seconds() == 0
        && other != null
        && rows.served(change.day()).contains(change.otherId())
        && change.toDay() != change.day()
        && WeekRows.choice(other, change.toDay()).isPresent();
  }

  /** Whether one of the windows, longer at one of its ends, makes room. */
  private boolean wider(DayChoice choice, int seconds) {
    Visit visit = choice.visit();
    List<TimeWindow> windows = visit.arriveWithin();
    for (int w = 0; w < windows.size(); w++) {
      TimeWindow window = windows.get(w);
      int from = Math.max(0, window.fromSeconds() - seconds);
      int to = (int) Math.min(TimeWindow.DAY_END, (long) window.toSeconds() + seconds);
      TimeWindow earlier = new TimeWindow(from, window.toSeconds());
      TimeWindow later = new TimeWindow(window.fromSeconds(), to);
      for (TimeWindow moved : List.of(earlier, later)) {
        // The other windows made no room as they are: the moved one alone is enough to ask about.
        Visit other = visit.arriving(List.of(moved));
        DayChoice with = new DayChoice(choice.day(), other, 0);
        if (!noRoom(choice.day(), others(choice.day(), ""), with, shift(choice.day()))) {
          return true;
        }
      }
    }
    return false;
  }

  private boolean moves(DayChoice choice, Change change) {
    WeekBooking other = rows.booking(change.otherId());
    DayChoice there = WeekRows.choice(other, change.toDay()).orElseThrow();
    List<Visit> left = others(change.day(), change.otherId());
    return !noRoom(change.day(), left, choice, shift(change.day()))
        && !noRoom(change.toDay(), others(change.toDay(), ""), there, shift(change.toDay()));
  }

  private List<Visit> others(int day, String without) {
    return rows.visits(day).stream().filter(visit -> !visit.id().equals(without)).toList();
  }

  private DayShift shift(int day) {
    return rows.asked(day, List.of()).shift();
  }

  private DayShift later(Change change) {
    DayShift shift = shift(change.day());
    long to = (long) shift.hours().toSeconds() + change.seconds();
    TimeWindow hours =
        new TimeWindow(shift.hours().fromSeconds(), (int) Math.min(TimeWindow.DAY_END, to));
    return shift.during(hours);
  }

  /** Whether it is sure that a day does not serve one more; false too where it is too large. */
  private boolean noRoom(int day, List<Visit> others, DayChoice choice, DayShift shift) {
    List<Visit> all = new ArrayList<>(others);
    all.add(choice.visit());
    if (all.size() > DayRequest.MOST_VISITS
        || others.stream().anyMatch(visit -> visit.id().equals(choice.visit().id()))) {
      return false;
    }
    DayRequest request = rows.asked(day, all).on(shift);
    RoomTerms terms = RoomTerms.of(request);
    return TogetherRoom.canTry(terms, all.size()) && !TogetherRoom.exists(request, terms, all);
  }
}
