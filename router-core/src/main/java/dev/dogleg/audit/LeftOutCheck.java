package dev.dogleg.audit;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.Visit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Whether every visit that is not made is named, once, and counted. */
final class LeftOutCheck {
  private LeftOutCheck() {}

  /** {@return the visits of a request that no event of a plan makes, in request order} */
  static List<Visit> unserved(DayRows rows) {
    Set<String> served =
        rows.of(dev.dogleg.itinerary.PlannedStop.Kind.VISIT).stream()
            .map(row -> row.stop().visitId())
            .collect(Collectors.toSet());
    return rows.request().visits().stream().filter(visit -> !served.contains(visit.id())).toList();
  }

  static void check(DayRequest request, DayPlan plan, List<Visit> unserved, FindingList found) {
    Map<String, Visit> known = new HashMap<>();
    request.visits().forEach(visit -> known.put(visit.id(), visit));
    Map<String, Visit> open = new HashMap<>();
    unserved.forEach(visit -> open.put(visit.id(), visit));
    long booked = unserved.stream().filter(Visit::booked).count();
    if (plan.leftOutBooked() != booked) {
      found.day(
          "left-out-count",
          "",
          plan.leftOutBooked(),
          booked,
          "The plan counts %d booked visits left out; it leaves out %d."
              .formatted(plan.leftOutBooked(), booked));
    }
    Set<String> named = new HashSet<>();
    String before = "";
    for (NoRoom entry : plan.noRoom()) {
      String id = entry.visitId();
      if (!known.containsKey(id)) {
        found.day("no-room-unknown", id, 1, 0, "Left out is " + id + ", no visit of this day.");
      } else if (!named.add(id)) {
        found.day("no-room-twice", id, 2, 1, "Visit " + id + " is named twice as left out.");
      } else if (!open.containsKey(id)) {
        found.day("no-room-served", id, 1, 0, "Visit " + id + " is made and named as left out.");
      } else if (id.compareTo(before) < 0) {
        found.day("no-room-order", id, 1, 0, "Visit " + id + " stands after " + before + ".");
      }
      before = id;
    }
    for (Visit visit : unserved) {
      if (!named.contains(visit.id())) {
        String text = "Visit " + visit.id() + " is neither made nor named as left out.";
        found.day("no-room-missing", visit.id(), 0, 1, text);
      }
    }
  }
}
