package dev.dogleg.audit;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import java.util.ArrayList;
import java.util.List;

/**
 * Checks a plan against its request, rule by rule of {@code docs/TIMING.md} and, for the terms of
 * the day, of {@code docs/WEEK.md}; codes stand in {@code docs/FINDINGS.md}.
 *
 * <p>Stateless: every method may be called by any number of threads, and never throws for a bad
 * plan.
 */
public final class DayAudit {
  private DayAudit() {}

  /**
   * Everything at once: {@link #checkStops} and {@link #checkFigures}.
   *
   * @param request what was asked
   * @param plan the answer
   * @return every breach, in the order of the day, those on the whole day last; empty where the
   *     plan is sound
   */
  public static List<Finding> check(DayRequest request, DayPlan plan) {
    FindingList found = new FindingList(request.shift().day());
    if (!plan.shift().equals(request.shift())) {
      found.day("other-shift", "", 1, 0, "The plan is for another shift than the one asked for.");
    }
    found.addAll(checkStops(request, plan.stops()));
    found.addAll(checkFigures(request, plan));
    return found.inOrder();
  }

  /**
   * What a plan file holds: events, places, and the times of arrival, start and leaving. The other
   * figures of the events are not read.
   *
   * @param request what was asked
   * @param stops the events in order, possibly none
   * @return every breach of sequence, drives, limits, break, shift, water and must rules, in the
   *     order of the day
   */
  public static List<Finding> checkStops(DayRequest request, List<PlannedStop> stops) {
    FindingList found = new FindingList(request.shift().day());
    if (!stops.isEmpty()) {
      DayRows rows = new DayRows(request, stops);
      StructureCheck.check(rows, found);
      ClockCheck.check(rows, found);
      LimitCheck.check(rows, found);
      WaterCheck.check(rows, found);
      RuleCheck.check(rows, found);
    }
    return found.inOrder();
  }

  /**
   * Drive, length, waiting and spare of every event, worked out again from the times.
   *
   * @param request what was asked
   * @param stops the events in order, possibly none
   * @return every figure that is wrong; empty too where the sequence of events is unsound, which
   *     {@link #checkStops} tells
   */
  public static List<Finding> checkRowFigures(DayRequest request, List<PlannedStop> stops) {
    FindingList found = new FindingList(request.shift().day());
    DayRows rows = new DayRows(request, stops);
    if (sequenceSound(rows)) {
      RowFigureCheck.check(rows, found);
    }
    return found.inOrder();
  }

  /**
   * The figures of the events ({@link #checkRowFigures}) and of the day: cost, what is left out and
   * why, proof.
   *
   * @param request what was asked
   * @param plan the answer
   * @return every figure that is wrong, in the order of the day; the cost is not judged where the
   *     sequence of events is unsound or a road is missing, which {@link #checkStops} tells
   */
  public static List<Finding> checkFigures(DayRequest request, DayPlan plan) {
    FindingList found = new FindingList(request.shift().day());
    found.addAll(checkRowFigures(request, plan.stops()));
    DayRows rows = new DayRows(request, plan.stops());
    List<Visit> unserved = LeftOutCheck.unserved(rows);
    if (sequenceSound(rows) && drivesKnown(rows)) {
      CostCheck.check(rows, plan, unserved, found);
    }
    LeftOutCheck.check(request, plan, unserved, found);
    new ReasonCheck(request, found).check(plan.noRoom());
    ProofCheck.check(plan, found);
    return found.inOrder();
  }

  /** Whether drives, waiting, spare and cost of a sequence of events have a meaning. */
  static boolean sequenceSound(DayRows rows) {
    FindingList structure = new FindingList(rows.request().shift().day());
    if (!rows.all().isEmpty()) {
      StructureCheck.check(rows, structure);
    }
    return structure.inOrder().stream().allMatch(f -> TIMED_ANYWAY.contains(f.code()));
  }

  /** Breaches of the sequence that leave all figures defined. */
  private static final List<String> TIMED_ANYWAY =
      List.of("not-first", "stray-visit", "wrong-place");

  private static boolean drivesKnown(DayRows rows) {
    List<Row> driven = new ArrayList<>(rows.all());
    driven.removeIf(row -> !rows.driven(row));
    return driven.stream()
        .allMatch(row -> rows.hasRoad(row) && rows.get(row.index() - 1).leavesInRange());
  }
}
