package dev.dogleg.audit;

import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import java.util.ArrayList;
import java.util.List;

/**
 * A place that the van calls at in a hand-edited order: a visit, or a water stop.
 *
 * @param visit the visit, or null
 * @param water the water place, or null
 */
record Call(Visit visit, WaterPlace water) {
  int place() {
    return visit != null ? visit.place() : water.place();
  }

  String visitId() {
    return visit != null ? visit.id() : "";
  }

  /** What binds the van there, each visit served as the rules say for its place in the order. */
  static List<Door> doors(List<Call> calls, ServedSeconds served) {
    List<Door> doors = new ArrayList<>();
    int number = 0;
    String before = null;
    for (Call call : calls) {
      if (call.visit == null) {
        doors.add(Door.free(call.water.place(), call.water.seconds()));
      } else {
        number++;
        doors.add(Door.of(call.visit, served.of(call.visit, number, before)));
        before = call.visit.id();
      }
    }
    return doors;
  }
}
