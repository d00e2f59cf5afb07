package dev.dogleg.audit;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekNoRoom;
import dev.dogleg.itinerary.WeekPlan;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether the reasons for a booking left out are those of its van-days and true, and the proof does
 * not forget a day on which it has room.
 */
final class WeekReasonCheck {
  private final WeekPlan plan;
  private final WeekRows rows;
  private final WeekFindings found;
  private final WeekChangeCheck changes;

  WeekReasonCheck(WeekPlan plan, WeekRows rows, WeekFindings found) {
    this.plan = plan;
    this.rows = rows;
    this.found = found;
    this.changes = new WeekChangeCheck(rows, found);
  }

  void check(WeekBooking booking, WeekNoRoom entry) {
    String id = booking.id();
    List<Integer> choices = booking.choices().stream().map(DayChoice::day).toList();
    List<Integer> said = entry.days().stream().map(WeekNoRoom.OnDay::day).toList();
    if (!choices.equals(said)) {
      String text = "Booking %s has choices on van-days %s; reasons are given for %s.";
      text = text.formatted(id, choices, said);
      found.week("reason-days", id, said.size(), choices.size(), text);
      return;
    }
    for (int c = 0; c < choices.size(); c++) {
      onDay(booking, booking.choices().get(c), entry.days().get(c).reason());
    }
    entry.change().ifPresent(change -> changes.check(booking, change));
  }

  private void onDay(WeekBooking booking, DayChoice choice, NoRoom reason) {
    int day = choice.day();
    if (!reason.visitId().equals(booking.id())) {
      String text = "The reason for booking %s speaks of %s.";
      text = text.formatted(booking.id(), reason.visitId());
      found.day(day, "reason-other-visit", booking.id(), 1, 0, text);
      return;
    }
    List<Visit> others = rows.visits(day).stream().map(Visit::mustServe).toList();
    if (others.size() >= DayRequest.MOST_VISITS) {
      return; // Said already: more visits than a day can be asked for.
    }
    List<Visit> asked = new ArrayList<>(others);
    asked.add(choice.visit());
    DayRequest request = rows.asked(day, asked);
    FindingList ofDay = new FindingList(request.shift().day());
    new ReasonCheck(request, ofDay).check(List.of(reason));
    found.addAll(day, ofDay.inOrder());
    room(booking, choice, request, ofDay.isEmpty());
  }

  /** A counted booking that has room on a day with all that is there refutes the count's proof. */
  private void room(WeekBooking booking, DayChoice choice, DayRequest request, boolean sound) {
    RoomTerms terms = RoomTerms.of(request);
    boolean claimed = plan.proof().leftOutBound() == plan.leftOutCounted();
    if (sound
        && claimed
        && booking.counted()
        && TogetherRoom.canTry(terms, request.visits().size())
        && TogetherRoom.exists(request, terms, request.visits())) {
      String text =
          "Booking %s is left out and has room here beside all that is served: fewer can be left out"
              + " than is said to be proven.";
      int bound = plan.proof().leftOutBound();
      text = text.formatted(booking.id());
      found.day(choice.day(), "proof-refuted", booking.id(), bound, bound - 1L, text);
    }
  }
}
