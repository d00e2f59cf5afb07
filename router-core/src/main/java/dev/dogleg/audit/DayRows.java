package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The events of one plan joined with their request. Built once, then read only. */
final class DayRows {
  private final DayRequest request;
  private final ServedSeconds served;
  private final List<Row> rows = new ArrayList<>();

  DayRows(DayRequest request, List<PlannedStop> stops) {
    this.request = request;
    Map<String, Visit> byId = new HashMap<>();
    request.visits().forEach(visit -> byId.put(visit.id(), visit));
    this.served = new ServedSeconds(request.terms().rules());
    int place = 0;
    String before = null;
    for (int k = 0; k < stops.size(); k++) {
      boolean isVisit = stops.get(k).kind() == Kind.VISIT;
      place += isVisit ? 1 : 0;
      rows.add(row(stops, k, byId, place, before));
      before = isVisit ? stops.get(k).visitId() : before;
    }
  }

  private Row row(
      List<PlannedStop> stops, int k, Map<String, Visit> byId, int number, String before) {
    PlannedStop stop = stops.get(k);
    boolean named = stop.kind() == Kind.VISIT || stop.kind() == Kind.BREAK;
    Visit visit = named ? byId.get(stop.visitId()) : null;
    BreakAt side = sideOf(stops, k);
    boolean afterItsBreak = stop.kind() == Kind.VISIT && sideOf(stops, k - 1) == BreakAt.BEFORE;
    int length = 0;
    if (stop.kind() == Kind.BREAK) {
      length = request.shift().breakRule().map(BreakRule::lengthSeconds).orElse(0);
    } else if (stop.kind() == Kind.WATER) {
      length = waterPlace(stop).map(WaterPlace::seconds).orElse(0);
    } else if (visit != null) {
      length = served.of(visit, number, before);
    }
    boolean sameDoor = side == BreakAt.AFTER || afterItsBreak;
    return new Row(k, stop, visit, placeOf(stop, visit), sameDoor, side, length);
  }

  private static BreakAt sideOf(List<PlannedStop> stops, int k) {
    if (k < 0 || stops.get(k).kind() != Kind.BREAK) {
      return BreakAt.NONE;
    }
    if (isVisit(stops, k - 1, stops.get(k).visitId())) {
      return BreakAt.AFTER;
    }
    return isVisit(stops, k + 1, stops.get(k).visitId()) ? BreakAt.BEFORE : BreakAt.NONE;
  }

  private static boolean isVisit(List<PlannedStop> stops, int k, String id) {
    return k >= 0
        && k < stops.size()
        && stops.get(k).kind() == Kind.VISIT
        && stops.get(k).visitId().equals(id);
  }

  private int placeOf(PlannedStop stop, Visit visit) {
    if (visit != null) {
      return visit.place();
    }
    return switch (stop.kind()) {
      case LEAVE -> request.shift().startPlace();
      case HOME -> request.shift().endPlace();
      default -> stop.place() < request.travel().size() ? stop.place() : -1;
    };
  }

  /** The listed place at which a water stop is made; empty where it is not listed. */
  Optional<WaterPlace> waterPlace(PlannedStop stop) {
    return request.terms().water().stream()
        .flatMap(water -> water.places().stream())
        .filter(listed -> listed.place() == stop.place())
        .findFirst();
  }

  /** What the rules make of services. */
  ServedSeconds served() {
    return served;
  }

  DayRequest request() {
    return request;
  }

  List<Row> all() {
    return rows;
  }

  Row get(int index) {
    return rows.get(index);
  }

  Row last() {
    return rows.get(rows.size() - 1);
  }

  List<Row> of(Kind kind) {
    return rows.stream().filter(row -> row.is(kind)).toList();
  }

  /** Visits and water stops. */
  List<Row> calls() {
    return rows.stream().filter(row -> row.is(Kind.VISIT) || row.is(Kind.WATER)).toList();
  }

  /** Whether the row is reached by a drive from the row before. */
  boolean driven(Row row) {
    return row.index() > 0 && !row.is(Kind.LEAVE) && !row.atDoorOfRowBefore();
  }

  /** Whether a road leads to a driven row and both ends of the drive are known. */
  boolean hasRoad(Row row) {
    int from = get(row.index() - 1).place();
    return from >= 0 && row.place() >= 0 && request.travel().reaches(from, row.place());
  }

  /** Drive to a driven row at the actual leaving time of the row before; needs a road. */
  int driveSeconds(Row row) {
    Row before = get(row.index() - 1);
    return request.travel().driveSeconds(before.place(), row.place(), before.stop().leaveSeconds());
  }

  /** Length of the drive to a driven row; needs a road. */
  int driveMetres(Row row) {
    return request.travel().lengthMetres(get(row.index() - 1).place(), row.place());
  }

  /** The last event of the stay to which a visit belongs: its break after it, or itself. */
  Row lastOfStay(Row visit) {
    int next = visit.index() + 1;
    boolean breakFollows = next < rows.size() && get(next).breakAt() == BreakAt.AFTER;
    return breakFollows ? get(next) : visit;
  }
}
