package dev.dogleg.plan.zone;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.plan.zone.ZoneDayPlan.Week;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.function.IntConsumer;

/**
 * Finds the weekdays for zones by branch and bound over whole planned weeks.
 *
 * <p>Maintainers: a part of the search keeps for each zone the days that are <i>open</i> (at least
 * as many as it may have) and among them those that are <i>kept</i>. Its week is planned with all
 * open days free of charge, which is cheaper than any assignment inside. If that week uses no more
 * days of a zone than it may have, the assignment of the days used costs just as much and the part
 * is done; else it is cut in two by one zone and one of the days used: kept, or not open. A week
 * with the same open days is planned once.
 */
public final class ZoneDayPlanner {
  private final ZoneWeek problem;
  private final int mostWeeks;
  private final IntConsumer progress;
  private final int[] size;
  private final Map<List<Set<DayOfWeek>>, Week> planned = new HashMap<>();
  private final PriorityQueue<Part> open =
      new PriorityQueue<>(
          Comparator.comparingInt((Part part) -> part.leftOut)
              .thenComparingLong(part -> part.sixtieths)
              .thenComparingInt(part -> part.number));
  private int parts;
  private Week best;

  /** Some of the assignments, and what none of them is below. */
  private record Part(
      List<Set<DayOfWeek>> openDays,
      List<Set<DayOfWeek>> kept,
      int leftOut,
      long sixtieths,
      int number) {}

  private ZoneDayPlanner(ZoneWeek problem, int mostWeeks, IntConsumer progress) {
    this.problem = problem;
    this.mostWeeks = mostWeeks;
    this.progress = progress;
    size = problem.zones().stream().mapToInt(zone -> zone.now().size()).toArray();
  }

  /**
   * Plans.
   *
   * @param problem what is asked
   * @param mostWeeks so many weeks are planned at most, 2 or more
   * @param progress told the number of weeks planned so far
   * @return the answer
   */
  public static ZoneDayPlan plan(ZoneWeek problem, int mostWeeks, IntConsumer progress) {
    if (mostWeeks < 2) {
      throw new IllegalArgumentException("mostWeeks must be 2 or more, was " + mostWeeks);
    }
    return new ZoneDayPlanner(problem, mostWeeks, progress).search();
  }

  private ZoneDayPlan search() {
    Week now = week(problem.now());
    best = now;
    List<Set<DayOfWeek>> all = problem.zones().stream().map(ZoneDays::possible).toList();
    List<Set<DayOfWeek>> none = problem.zones().stream().map(zone -> Set.<DayOfWeek>of()).toList();
    Week free = week(all);
    add(all, none, free.plan().proof().leftOutBound(), free.plan().proof().costBound());
    int doneLeftOut = Integer.MAX_VALUE;
    long doneSixtieths = Long.MAX_VALUE;
    while (!open.isEmpty() && planned.size() + 2 <= mostWeeks) {
      Part part = open.remove();
      if (!below(part.leftOut, part.sixtieths)) {
        break;
      }
      Week relaxed = week(part.openDays);
      WeekPlan plan = relaxed.plan();
      int leftOut = plan.proof().leftOutBound();
      long sixtieths = plan.proof().costBound();
      if (!below(leftOut, sixtieths)) {
        continue;
      }
      List<Map<DayOfWeek, Integer>> used = used(relaxed);
      consider(week(rounded(part, used)));
      int zone = overfull(part, used);
      if (zone >= 0) {
        cut(part, zone, used.get(zone), leftOut, sixtieths);
      } else if (below(leftOut, sixtieths)
          && (leftOut < doneLeftOut || (leftOut == doneLeftOut && sixtieths < doneSixtieths))) {
        // Its week was not proven: the part is done, its bound stays.
        doneLeftOut = leftOut;
        doneSixtieths = sixtieths;
      }
    }
    return answer(now, free, doneLeftOut, doneSixtieths);
  }

  private ZoneDayPlan answer(Week now, Week free, int doneLeftOut, long doneSixtieths) {
    int leftOut = best.plan().leftOutCounted();
    long sixtieths = best.plan().costSixtieths();
    if (doneLeftOut < leftOut || (doneLeftOut == leftOut && doneSixtieths < sixtieths)) {
      leftOut = doneLeftOut;
      sixtieths = doneSixtieths;
    }
    Part least = open.peek();
    if (least != null
        && (least.leftOut < leftOut || (least.leftOut == leftOut && least.sixtieths < sixtieths))) {
      leftOut = least.leftOut;
      sixtieths = least.sixtieths;
    }
    boolean proven =
        leftOut == best.plan().leftOutCounted() && sixtieths == best.plan().costSixtieths();
    return new ZoneDayPlan(now, best, free, proven, leftOut, sixtieths, planned.size());
  }

  private void add(
      List<Set<DayOfWeek>> days, List<Set<DayOfWeek>> kept, int leftOut, long sixtieths) {
    open.add(new Part(days, kept, leftOut, sixtieths, parts++));
  }

  private boolean below(int leftOut, long sixtieths) {
    return leftOut != best.plan().leftOutCounted()
        ? leftOut < best.plan().leftOutCounted()
        : sixtieths < best.plan().costSixtieths();
  }

  private void consider(Week week) {
    if (week.betterThan(best)) {
      best = week;
    }
  }

  private Week week(List<Set<DayOfWeek>> days) {
    Week known = planned.get(days);
    if (known == null) {
      var request = problem.with(days);
      known = new Week(days, request, WeekPlanner.plan(request));
      planned.put(days, known);
      progress.accept(planned.size());
    }
    return known;
  }

  /**
   * How many visits of each zone a week makes on each of its open days. One that lies in several
   * zones counts where the day counts already, else in the first that is open.
   */
  private List<Map<DayOfWeek, Integer>> used(Week week) {
    List<Map<DayOfWeek, Integer>> used = new ArrayList<>();
    problem.zones().forEach(zone -> used.add(new EnumMap<>(DayOfWeek.class)));
    for (boolean several : new boolean[] {false, true}) {
      for (int day = 0; day < week.plan().days().size(); day++) {
        DayOfWeek weekday = problem.weekday(day);
        for (PlannedStop stop : week.plan().days().get(day).stops()) {
          List<Integer> zones =
              stop.kind() == PlannedStop.Kind.VISIT
                  ? problem.binding(stop.visitId(), day).stream()
                      .filter(zone -> week.days().get(zone).contains(weekday))
                      .toList()
                  : List.of();
          if (!zones.isEmpty() && (zones.size() > 1) == several) {
            int counted =
                zones.stream()
                    .filter(zone -> used.get(zone).containsKey(weekday))
                    .findFirst()
                    .orElse(zones.get(0));
            used.get(counted).merge(weekday, 1, Integer::sum);
          }
        }
      }
    }
    return used;
  }

  /** The zone whose days are most too many, the first of equals; -1 where none has too many. */
  private int overfull(Part part, List<Map<DayOfWeek, Integer>> used) {
    int worst = -1;
    int most = 0;
    for (int zone = 0; zone < size.length; zone++) {
      Set<DayOfWeek> needed = EnumSet.noneOf(DayOfWeek.class);
      needed.addAll(used.get(zone).keySet());
      needed.addAll(part.kept.get(zone));
      if (needed.size() - size[zone] > most) {
        most = needed.size() - size[zone];
        worst = zone;
      }
    }
    return worst;
  }

  /** An assignment of the part: kept days, those used most, those of now, the earliest. */
  private List<Set<DayOfWeek>> rounded(Part part, List<Map<DayOfWeek, Integer>> used) {
    List<Set<DayOfWeek>> days = new ArrayList<>();
    for (int zone = 0; zone < size.length; zone++) {
      int number = zone;
      Set<DayOfWeek> chosen = EnumSet.noneOf(DayOfWeek.class);
      part.openDays.get(zone).stream()
          .sorted(
              Comparator.comparing((DayOfWeek day) -> !part.kept.get(number).contains(day))
                  .thenComparing(day -> -used.get(number).getOrDefault(day, 0))
                  .thenComparing(day -> !problem.zones().get(number).now().contains(day))
                  .thenComparing(Comparator.naturalOrder()))
          .limit(size[zone])
          .forEach(chosen::add);
      days.add(chosen);
    }
    return days;
  }

  /** Two parts: the day of a zone that most visits use is one of its days, or is none. */
  private void cut(Part part, int zone, Map<DayOfWeek, Integer> used, int leftOut, long sixtieths) {
    DayOfWeek day =
        used.entrySet().stream()
            .filter(entry -> !part.kept.get(zone).contains(entry.getKey()))
            .max(
                Map.Entry.<DayOfWeek, Integer>comparingByValue()
                    .thenComparing(Map.Entry.<DayOfWeek, Integer>comparingByKey().reversed()))
            .orElseThrow()
            .getKey();
    Set<DayOfWeek> kept = with(part.kept.get(zone), day);
    boolean full = kept.size() == size[zone];
    add(
        full ? put(part.openDays, zone, kept) : part.openDays,
        put(part.kept, zone, kept),
        leftOut,
        sixtieths);
    Set<DayOfWeek> left = EnumSet.noneOf(DayOfWeek.class);
    left.addAll(part.openDays.get(zone));
    left.remove(day);
    add(
        put(part.openDays, zone, left),
        left.size() == size[zone] ? put(part.kept, zone, left) : part.kept,
        leftOut,
        sixtieths);
  }

  private static Set<DayOfWeek> with(Set<DayOfWeek> days, DayOfWeek day) {
    Set<DayOfWeek> more = EnumSet.of(day);
    more.addAll(days);
    return more;
  }

  private static List<Set<DayOfWeek>> put(
      List<Set<DayOfWeek>> days, int zone, Set<DayOfWeek> some) {
    List<Set<DayOfWeek>> put = new ArrayList<>(days);
    put.set(zone, some);
    return List.copyOf(put);
  }
}
