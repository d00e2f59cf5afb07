package dev.dogleg.plan;

import dev.dogleg.schedule.BreakAt;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.RunEnvelope;
import dev.dogleg.schedule.StopStep;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Whether one day can serve a set of visits, all of them: exact, cost no matter.
 *
 * <p>Maintainers: the same states as {@link DaySearch} on a day without prices; a run is then just
 * the earliest readiness and how long the van may stay.
 */
final class FitsTogether {
  private FitsTogether() {}

  /**
   * Asks.
   *
   * @param day the day
   * @param visit one visit
   * @param others the others
   * @param meter limit
   * @return true, false, or null where the meter was spent first
   */
  static Boolean all(DayModel day, int visit, List<Integer> others, WorkMeter meter) {
    int[] members = new int[others.size() + 1];
    members[0] = visit;
    for (int k = 0; k < others.size(); k++) {
      members[k + 1] = others.get(k);
    }
    StopStep step = new StopStep(day.free());
    step.limit(day.latestEnd(), Long.MAX_VALUE);
    VisitSets sets = new VisitSets(members.length);
    Map<Integer, RunEnvelope[]> level = new LinkedHashMap<>();
    RunEnvelope start = new RunEnvelope(0);
    start.add(day.from(), day.latestEnd(), day.latestEnd(), 0, -1);
    for (int j = 0; j < members.length; j++) {
      carry(step, members, start, day.start(), j, BreakAt.NOWHERE, sets.with(0, j), false, level);
    }
    for (int count = 1; count < members.length; count++) {
      Map<Integer, RunEnvelope[]> next = new LinkedHashMap<>();
      for (Map.Entry<Integer, RunEnvelope[]> entry : level.entrySet()) {
        if (meter.spent()) {
          return null;
        }
        meter.count(members.length);
        for (int i = 0; i < members.length; i++) {
          for (int j = 0; j < members.length; j++) {
            if (sets.holds(entry.getKey(), j) || day.first(members[j])) {
              continue;
            }
            int with = sets.with(entry.getKey(), j);
            RunEnvelope open = entry.getValue()[2 * i];
            RunEnvelope taken = entry.getValue()[2 * i + 1];
            if (open != null) {
              carry(step, members, open, members[i], j, BreakAt.NOWHERE, with, false, next);
              if (day.hasBreak()) {
                carry(step, members, open, members[i], j, BreakAt.BEFORE_LEAVING, with, true, next);
                carry(step, members, open, members[i], j, BreakAt.ON_ARRIVAL, with, true, next);
              }
            }
            if (taken != null) {
              carry(step, members, taken, members[i], j, BreakAt.NOWHERE, with, true, next);
            }
          }
        }
      }
      level = next;
    }
    return ends(step, day, members, level);
  }

  private static boolean ends(
      StopStep step, DayModel day, int[] members, Map<Integer, RunEnvelope[]> level) {
    boolean[] reached = {false};
    for (RunEnvelope[] runs : level.values()) {
      for (int k = 0; k < runs.length; k++) {
        boolean unbroken = k % 2 == 0 && day.hasBreak() && members.length > 1;
        int endBy = unbroken ? Math.min(day.latestEnd(), day.breakFrom()) : day.latestEnd();
        for (int run = 0; runs[k] != null && run < runs[k].size(); run++) {
          step.toEnd(runs[k], run, members[k / 2], endBy, (end, cost, trail) -> reached[0] = true);
        }
      }
    }
    return reached[0];
  }

  private static void carry(
      StopStep step,
      int[] members,
      RunEnvelope source,
      int i,
      int j,
      BreakAt breakAt,
      int with,
      boolean taken,
      Map<Integer, RunEnvelope[]> next) {
    RunEnvelope target = new RunEnvelope(0);
    for (int run = 0; run < source.size(); run++) {
      step.toVisit(source, run, i, members[j], breakAt, target, -1);
    }
    if (target.size() > 0) {
      RunEnvelope[] runs = next.computeIfAbsent(with, key -> new RunEnvelope[2 * members.length]);
      int at = 2 * j + (taken ? 1 : 0);
      if (runs[at] == null) {
        runs[at] = new RunEnvelope(0);
      }
      for (int run = 0; run < target.size(); run++) {
        runs[at].add(target.earliest(run), target.unpaidUntil(run), target.leaveBy(run), 0, -1);
      }
    }
  }
}
