package dev.dogleg.audit;

import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekNoRoom;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Whether every booking that a week does not serve is named, once, counted, and truly explained.
 */
final class WeekLeftOutCheck {
  private final WeekRequest request;
  private final WeekPlan plan;
  private final WeekRows rows;
  private final WeekFindings found;

  WeekLeftOutCheck(WeekRequest request, WeekPlan plan, WeekRows rows, WeekFindings found) {
    this.request = request;
    this.plan = plan;
    this.rows = rows;
    this.found = found;
  }

  void check() {
    List<WeekBooking> open =
        request.bookings().stream().filter(b -> !rows.daysOf().containsKey(b.id())).toList();
    long counted = open.stream().filter(WeekBooking::counted).count();
    if (plan.leftOutCounted() != counted) {
      String text = "The week counts %d bookings left out; it leaves out %d.";
      text = text.formatted(plan.leftOutCounted(), counted);
      found.week("left-out-count", "", plan.leftOutCounted(), counted, text);
    }
    Set<String> named = new HashSet<>();
    WeekReasonCheck reasons = new WeekReasonCheck(plan, rows, found);
    String before = "";
    for (WeekNoRoom entry : plan.noRoom()) {
      if (listed(entry, named, before)) {
        reasons.check(rows.booking(entry.bookingId()), entry);
      }
      before = entry.bookingId();
    }
    for (WeekBooking booking : open) {
      if (!named.contains(booking.id())) {
        String text = "Booking " + booking.id() + " is neither served nor named as left out.";
        found.week("no-room-missing", booking.id(), 0, 1, text);
      }
    }
  }

  /** Whether an entry is one of a booking left out, named for the first time. */
  private boolean listed(WeekNoRoom entry, Set<String> named, String before) {
    String id = entry.bookingId();
    if (rows.booking(id) == null) {
      found.week("no-room-unknown", id, 1, 0, "Left out is " + id + ", no booking of this week.");
      return false;
    }
    if (!named.add(id)) {
      found.week("no-room-twice", id, 2, 1, "Booking " + id + " is named twice as left out.");
      return false;
    }
    if (rows.daysOf().containsKey(id)) {
      found.week("no-room-served", id, 1, 0, "Booking " + id + " is served and named as left out.");
      return false;
    }
    if (id.compareTo(before) < 0) {
      found.week("no-room-order", id, 1, 0, "Booking " + id + " stands after " + before + ".");
    }
    return true;
  }
}
