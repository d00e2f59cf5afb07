package dev.dogleg.plan;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.Proof;
import java.util.Arrays;
import java.util.function.IntFunction;

/** Times proven days and writes the table into docs/BENCHMARKS.md: one command, a few minutes. */
public final class DayLedger {
  private static final int SEEDS = 20;

  private DayLedger() {}

  /**
   * Runs.
   *
   * @param args none
   * @throws Exception where the page cannot be written
   */
  public static void main(String[] args) throws Exception {
    StringBuilder text = new StringBuilder();
    text.append("Command: `java -cp router-core/target/classes:router-core/target/test-classes")
        .append(" -Ddogleg.root=. dev.dogleg.plan.DayLedger`\n")
        .append("Days of `CustomaryDays`, seeds 0..")
        .append(SEEDS - 1)
        .append(": starter prices, six traffic bands, break on. Warm: after two rounds over all. ")
        .append(BenchmarkPage.machine())
        .append("\n\n| visits | windows | proven | median ms | slowest ms | target ms |\n")
        .append("|---|---|---|---|---|---|\n");
    row(text, 7, "none", 40, "1", seed -> CustomaryDays.day(seed, 7, 0));
    row(text, 12, "none", 6, "20", seed -> CustomaryDays.day(seed, 12, 0));
    row(text, 16, "none", 3, "300", seed -> CustomaryDays.day(seed, 16, 0));
    row(text, 25, "all told 60 min", 1, "-", seed -> CustomaryDays.told(seed, 25, 60));
    row(text, 25, "all told 120 min", 1, "-", seed -> CustomaryDays.told(seed, 25, 120));
    row(text, 25, "80 % of 2 to 4 h", 1, "-", seed -> CustomaryDays.day(seed, 25, 80));
    text.append(
            "\nDays with more visits than room (`CustomaryDays.crowded`, seeds 1..3, cold):\n\n")
        .append(
            "| visits | left out | proven | reasons true | slowest s |\n|---|---|---|---|---|\n");
    for (int n : new int[] {12, 14, 16, 20}) {
      crowded(text, n);
    }
    BenchmarkPage.write("Day", text.toString());
    System.out.println(text);
  }

  private static void row(
      StringBuilder text,
      int n,
      String windows,
      int rounds,
      String target,
      IntFunction<DayRequest> days) {
    double[] millis = new double[SEEDS];
    int proven = 0;
    for (int round = 0; round < rounds; round++) {
      proven = 0;
      for (int seed = 0; seed < SEEDS; seed++) {
        DayRequest request = days.apply(seed);
        long start = PublishedResults.processorNanos();
        DayPlan plan = DayPlanner.plan(request);
        millis[seed] = (PublishedResults.processorNanos() - start) / 1e6;
        proven += plan.proof().kind() == Proof.Kind.PROVEN_BEST ? 1 : 0;
      }
    }
    Arrays.sort(millis);
    text.append(
        "| %d | %s | %d of %d | %.2f | %.2f | %s |\n"
            .formatted(n, windows, proven, SEEDS, millis[SEEDS / 2], millis[SEEDS - 1], target));
  }

  private static void crowded(StringBuilder text, int n) {
    StringBuilder leftOut = new StringBuilder();
    int proven = 0;
    int reasons = 0;
    int told = 0;
    double slowest = 0;
    for (int seed = 1; seed <= 3; seed++) {
      DayRequest request = CustomaryDays.crowded(seed, n);
      long start = PublishedResults.processorNanos();
      DayPlan plan = DayPlanner.plan(request);
      slowest = Math.max(slowest, (PublishedResults.processorNanos() - start) / 1e9);
      leftOut.append(seed == 1 ? "" : ", ").append(plan.leftOutBooked());
      proven += plan.proof().kind() == Proof.Kind.PROVEN_BEST ? 1 : 0;
      reasons += plan.noRoom().size();
      told += (int) plan.noRoom().stream().filter(r -> r.why() != NoRoom.Why.NOT_FOUND).count();
    }
    text.append(
        "| %d | %s | %d of 3 | %d of %d | %.1f |\n"
            .formatted(n, leftOut, proven, told, reasons, slowest));
  }
}
