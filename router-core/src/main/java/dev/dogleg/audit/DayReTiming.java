package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Gives times to a hand-edited order. It never refuses: what cannot be done is left out of the
 * timing and said, what breaks a limit is timed and said.
 *
 * <p>Timing: the start place is left when the shift starts, every door as soon as it is served (and
 * the break taken), except that the van lingers where the next door's {@code vanWithin} would else
 * be broken and lingering breaks nothing.
 */
public final class DayReTiming {
  private final DayRequest request;
  private final TravelTimes travel;
  private final BreakRule rule;
  private final FindingList found;

  private DayReTiming(DayRequest request) {
    this.request = request;
    this.travel = request.travel();
    this.rule = request.shift().breakRule().orElse(null);
    this.found = new FindingList(request.shift().day());
  }

  /**
   * Times one order.
   *
   * @param request the day
   * @param order visit ids in the order to make them; unknown and repeated ones are said and passed
   *     over
   * @param breakSpot where the break is taken; empty for no break
   * @return times and breaches
   */
  public static ReTimedDay retime(
      DayRequest request, List<String> order, Optional<BreakSpot> breakSpot) {
    return new DayReTiming(request).time(order, breakSpot);
  }

  private ReTimedDay time(List<String> order, Optional<BreakSpot> breakSpot) {
    List<Visit> visits = reachable(known(order));
    Optional<BreakSpot> spot = breakSpot.filter(s -> canTake(s, visits));
    List<PlannedStop> stops = List.of();
    if (!visits.isEmpty()) {
      stops = new ReTimedRows(request, rule).of(visits, spot);
    }
    for (Finding breach : DayAudit.checkStops(request, stops)) {
      if (breach.code().equals("home-missing")) {
        String text = "No road leads from the last visit to the end place; no end is timed.";
        found.add("no-road", breach.stop(), breach.visitId(), 0, 1, text);
      } else {
        found.addAll(List.of(breach));
      }
    }
    return new ReTimedDay(withFigures(stops), found.inOrder());
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

  private boolean canTake(BreakSpot spot, List<Visit> visits) {
    String id = spot.visitId();
    if (rule == null) {
      found.day("break-not-needed", id, 1, 0, "This shift has no break; none is timed.");
      return false;
    }
    if (visits.stream().noneMatch(visit -> visit.id().equals(id))) {
      String text = "The break is put at visit " + id + ", which is not made; none is timed.";
      found.day("break-door", id, 0, 1, text);
      return false;
    }
    return true;
  }

  /** The visits a road leads to, one after the other. */
  private List<Visit> reachable(List<Visit> visits) {
    List<Visit> reached = new ArrayList<>();
    int place = request.shift().startPlace();
    for (Visit visit : visits) {
      if (travel.reaches(place, visit.place())) {
        reached.add(visit);
        place = visit.place();
      } else {
        String text = "No road leads from place %d to visit %s (place %d); it is passed over.";
        text = text.formatted(place, visit.id(), visit.place());
        found.day("no-road", visit.id(), 0, 1, text);
      }
    }
    return reached;
  }

  private List<PlannedStop> withFigures(List<PlannedStop> stops) {
    DayRows rows = new DayRows(request, stops);
    boolean spareKnown = DayAudit.sequenceSound(rows);
    SpareTimes spare = new SpareTimes(rows);
    List<PlannedStop> full = new ArrayList<>();
    for (Row row : rows.all()) {
      PlannedStop stop = row.stop();
      RowFigures figures = RowFigures.of(rows, row);
      full.add(
          new PlannedStop(
              stop.kind(),
              stop.place(),
              stop.visitId(),
              stop.arriveSeconds(),
              stop.startSeconds(),
              stop.leaveSeconds(),
              figures.driveSeconds(),
              figures.driveMetres(),
              Math.toIntExact(figures.waitSeconds()),
              spareKnown ? spare.of(row).orElse(0) : 0));
    }
    return full;
  }
}
