package dev.dogleg.plan;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.plan.late.LateAnswer;
import dev.dogleg.plan.late.LateChoice;
import dev.dogleg.plan.late.LatePlanner;
import dev.dogleg.plan.late.Promise;
import dev.dogleg.plan.late.RestOfDay;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/** Times rests of late days and writes the table into docs/BENCHMARKS.md: one command, a minute. */
public final class LateLedger {
  private static final int SEEDS = 20;
  private static final int DONE = 2;

  private LateLedger() {}

  /**
   * Runs.
   *
   * @param args none
   * @throws Exception where the page cannot be written
   */
  public static void main(String[] args) throws Exception {
    StringBuilder text = new StringBuilder();
    text.append("Command: `java -cp router-core/target/classes:router-core/target/test-classes")
        .append(" -Ddogleg.root=. dev.dogleg.plan.LateLedger`\n")
        .append(
            "`LatePlanner.plan`, all choices, as a library call. Days of `CustomaryDays.told` (")
        .append("every owner told an hour), seeds 0..")
        .append(SEEDS - 1)
        .append(", two doors done, every third visit may move, warm (after two rounds). ")
        .append(BenchmarkPage.machine())
        .append("\n\n| doors left | late by | told times broken, keep / best order | proven |")
        .append(" median ms | slowest ms | target ms |\n|---|---|---|---|---|---|---|\n");
    for (int left : new int[] {4, 7, 10, 12}) {
      for (int minutes : new int[] {30, 60, 120}) {
        row(text, left, minutes);
      }
    }
    BenchmarkPage.write("Running late", text.toString());
    System.out.println(text);
  }

  private static void row(StringBuilder text, int left, int minutes) {
    RestOfDay[] rests = new RestOfDay[SEEDS];
    for (int seed = 0; seed < SEEDS; seed++) {
      rests[seed] = rest(CustomaryDays.told(seed, left + DONE, 60), 60 * minutes);
    }
    double[] millis = new double[SEEDS];
    int kept = 0;
    int best = 0;
    int proven = 0;
    int choices = 0;
    for (int round = 0; round < 3; round++) {
      kept = 0;
      best = 0;
      proven = 0;
      choices = 0;
      for (int seed = 0; seed < SEEDS; seed++) {
        long start = PublishedResults.processorNanos();
        LateAnswer answer = LatePlanner.plan(rests[seed]);
        millis[seed] = (PublishedResults.processorNanos() - start) / 1e6;
        int least = Integer.MAX_VALUE;
        for (LateChoice choice : answer.choices()) {
          choices++;
          proven += choice.proven() ? 1 : 0;
          if (choice.kind() != LateChoice.Kind.MOVE) {
            least = Math.min(least, choice.lateness().toldBroken());
          }
          kept += choice.kind() == LateChoice.Kind.KEEP ? choice.lateness().toldBroken() : 0;
        }
        best += least;
      }
    }
    Arrays.sort(millis);
    text.append(
        "| %d | %d min | %d / %d | %d of %d | %.1f | %.1f | %s |\n"
            .formatted(
                left,
                minutes,
                kept,
                best,
                proven,
                choices,
                millis[SEEDS / 2],
                millis[SEEDS - 1],
                left <= 10 ? "300" : "-"));
  }

  /** The day planned, its first doors done, and everything so much later than planned. */
  private static RestOfDay rest(DayRequest day, int lateSeconds) {
    DayPlan plan = DayPlanner.plan(day);
    List<PlannedStop> visits =
        plan.stops().stream().filter(stop -> stop.kind() == PlannedStop.Kind.VISIT).toList();
    PlannedStop last = visits.get(DONE - 1);
    List<String> order = visits.stream().map(PlannedStop::visitId).toList();
    Set<String> movable = new TreeSet<>();
    for (int k = DONE; k < order.size(); k += 3) {
      movable.add(order.get(k));
    }
    DayRequest open =
        new DayRequest(
            day.shift(),
            day.visits().stream().map(visit -> visit.arriving(Visit.ANY_TIME)).toList(),
            day.travel(),
            day.prices(),
            day.seed(),
            day.effort());
    return new RestOfDay(
        open,
        day.visits().stream()
            .map(visit -> new Promise(visit.id(), Promise.Kind.TOLD, visit.arriveWithin()))
            .toList(),
        order,
        order.subList(0, DONE),
        OptionalInt.empty(),
        Set.of(),
        last.place(),
        last.leaveSeconds() + lateSeconds,
        false,
        WaterUse.NONE,
        0,
        movable);
  }
}
