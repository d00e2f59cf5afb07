package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What of a person's order can be made at all; the rest is said and passed over. */
final class HandOrder {
  private final DayRequest request;
  private final FindingList found;

  private HandOrder(DayRequest request, FindingList found) {
    this.request = request;
    this.found = found;
  }

  /** The visits and water stops that can be made, each one reachable from the one before. */
  static List<Call> calls(
      DayRequest request, List<String> order, List<WaterSpot> water, FindingList found) {
    HandOrder hand = new HandOrder(request, found);
    List<Visit> visits = hand.known(order);
    List<Call> calls = new ArrayList<>();
    List<WaterSpot> spots = hand.makeable(water, visits);
    hand.water("", spots, calls);
    for (Visit visit : visits) {
      calls.add(new Call(visit, null));
      hand.water(visit.id(), spots, calls);
    }
    return hand.reachable(calls);
  }

  private List<Visit> known(List<String> order) {
    Map<String, Visit> byId = new HashMap<>();
    request.visits().forEach(visit -> byId.put(visit.id(), visit));
    Set<String> seen = new HashSet<>();
    List<Visit> visits = new ArrayList<>();
    for (String id : order) {
      if (!byId.containsKey(id)) {
        String text = "Visit " + id + " is not one of this day's visits and is passed over.";
        found.day("unknown-visit", id, 1, 0, text);
      } else if (!seen.add(id)) {
        found.day("visit-twice", id, 2, 1, "Visit " + id + " is named again and is made once.");
      } else {
        visits.add(byId.get(id));
      }
    }
    return visits;
  }

  private List<WaterSpot> makeable(List<WaterSpot> water, List<Visit> visits) {
    List<WaterSpot> spots = new ArrayList<>();
    for (WaterSpot spot : water) {
      String after = spot.afterVisitId();
      boolean made = after.isEmpty() || visits.stream().anyMatch(v -> v.id().equals(after));
      if (request.terms().water().isEmpty()) {
        String text = "This day plans no water; no water stop is timed.";
        found.day("water-not-planned", after, 1, 0, text);
      } else if (listed(spot).isEmpty()) {
        String text = "Place %d is no water place; no water stop is timed there.";
        found.day("water-place", after, 1, 0, text.formatted(spot.place()));
      } else if (!made) {
        String text = "A water stop is put after visit %s, which is not made; it is not timed.";
        found.day("water-door", after, 0, 1, text.formatted(after));
      } else {
        spots.add(spot);
      }
    }
    return spots;
  }

  private Optional<WaterPlace> listed(WaterSpot spot) {
    return request.terms().water().stream()
        .map(WaterTerms::places)
        .flatMap(List::stream)
        .filter(place -> place.place() == spot.place())
        .findFirst();
  }

  private void water(String after, List<WaterSpot> spots, List<Call> calls) {
    for (WaterSpot spot : spots) {
      if (spot.afterVisitId().equals(after)) {
        calls.add(new Call(null, listed(spot).orElseThrow()));
      }
    }
  }

  /** The calls a road leads to, one after the other. */
  private List<Call> reachable(List<Call> calls) {
    List<Call> reached = new ArrayList<>();
    int place = request.shift().startPlace();
    for (Call call : calls) {
      if (request.travel().reaches(place, call.place())) {
        reached.add(call);
        place = call.place();
      } else {
        String what = call.visit() == null ? "the water stop" : "visit " + call.visitId();
        String text = "No road leads from place %d to %s (place %d); it is passed over.";
        text = text.formatted(place, what, call.place());
        found.day("no-road", call.visitId(), 0, 1, text);
      }
    }
    return reached;
  }
}
