package dev.dogleg.plan;

import dev.dogleg.schedule.BreakAt;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.RunEnvelope;
import dev.dogleg.schedule.StopStep;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

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
    if (!day.steps().free() || day.steps().water()) {
      return underTerms(day.part(IntStream.of(members).sorted().toArray()).free(), meter);
    }
    StopStep step = new StopStep(day.free());
    int[] need = needs(day, members);
    int all = IntStream.of(need).sum();
    if (day.from() + all > day.latestEnd()) {
      return false;
    }
    VisitSets sets = new VisitSets(members.length);
    Map<Integer, RunEnvelope[]> level = new LinkedHashMap<>();
    RunEnvelope start = new RunEnvelope(0);
    start.add(day.from(), day.latestEnd(), day.latestEnd(), 0, -1);
    for (int j = 0; j < members.length; j++) {
      step.limit(latestReady(day, sets, sets.with(0, j), need), Long.MAX_VALUE);
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
            step.limit(latestReady(day, sets, with, need), Long.MAX_VALUE);
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

  /** The whole search, for any day that serves every visit, where rules or tanks bind. */
  private static Boolean underTerms(DayModel part, WorkMeter meter) {
    DayValue value = new DayValue(part, true);
    LeastLegs legs = new LeastLegs(part);
    CompletionBound bound =
        part.size() > SubsetBound.MOST
            ? new NearestBound(part, value, legs)
            : new SubsetBound(part, value, legs, 0, meter);
    if (bound.ofDay() >= DayValue.BOOKED) {
      return false;
    }
    DaySearch search = new DaySearch(part, value, bound, DayValue.BOOKED, 0, meter);
    search.run();
    return search.found() ? Boolean.TRUE : search.complete() ? Boolean.FALSE : null;
  }

  /** Service and shortest leg in of each member; the shortest leg home with the last entry. */
  private static int[] needs(DayModel day, int[] members) {
    int[] need = new int[members.length + 1];
    need[members.length] = Integer.MAX_VALUE / 4;
    for (int k = 0; k < members.length; k++) {
      int j = members[k];
      int shortest = day.reaches(day.start(), j) ? day.leastDrive(day.start(), j) : day.latestEnd();
      for (int i : members) {
        if (i != j && day.reaches(i, j)) {
          shortest = Math.min(shortest, day.leastDrive(i, j));
        }
      }
      need[k] = day.service(j) + shortest;
      if (day.reaches(j, day.end())) {
        need[members.length] = Math.min(need[members.length], day.leastDrive(j, day.end()));
      }
    }
    return need;
  }

  /** Last readiness after which the members not yet served still fit before the latest end. */
  private static int latestReady(DayModel day, VisitSets sets, int set, int[] need) {
    int latest = day.latestEnd() - need[need.length - 1];
    for (int k = 0; k < need.length - 1; k++) {
      latest -= sets.holds(set, k) ? 0 : need[k];
    }
    return latest;
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
