package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Gives times to a hand-edited order. It never refuses: what cannot be done is left out of the
 * timing and said, what breaks a limit is timed and said.
 *
 * <p>Timing: the start place is left when the shift starts, every door as soon as it is served (and
 * the break taken), except that the van lingers where the next door's {@code vanWithin} would else
 * be broken and lingering breaks nothing. Services are as long as the rules make them in that
 * order.
 */
public final class DayReTiming {
  private final DayRequest request;
  private final BreakRule rule;
  private final FindingList found;

  private DayReTiming(DayRequest request) {
    this.request = request;
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
    return retime(request, order, breakSpot, List.of());
  }

  /**
   * Times one order with water stops.
   *
   * @param request the day
   * @param order visit ids in the order to make them; unknown and repeated ones are said and passed
   *     over
   * @param breakSpot where the break is taken; empty for no break
   * @param water where water stops are made: they stay where the person put them, those after one
   *     visit in the order given
   * @return times and breaches
   */
  public static ReTimedDay retime(
      DayRequest request,
      List<String> order,
      Optional<BreakSpot> breakSpot,
      List<WaterSpot> water) {
    return new DayReTiming(request).time(order, breakSpot, water);
  }

  private ReTimedDay time(
      List<String> order, Optional<BreakSpot> breakSpot, List<WaterSpot> water) {
    List<Call> calls = HandOrder.calls(request, order, water, found);
    Optional<BreakSpot> spot = breakSpot.filter(s -> canTake(s, calls));
    List<PlannedStop> stops = List.of();
    if (calls.stream().anyMatch(call -> call.visit() != null)) {
      stops = new ReTimedRows(request, rule).of(calls, spot);
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

  private boolean canTake(BreakSpot spot, List<Call> calls) {
    String id = spot.visitId();
    if (rule == null) {
      found.day("break-not-needed", id, 1, 0, "This shift has no break; none is timed.");
      return false;
    }
    if (calls.stream().noneMatch(call -> call.visitId().equals(id))) {
      String text = "The break is put at visit " + id + ", which is not made; none is timed.";
      found.day("break-door", id, 0, 1, text);
      return false;
    }
    return true;
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
