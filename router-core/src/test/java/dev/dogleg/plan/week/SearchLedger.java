package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Properties;

/**
 * Prints how good the first search of seeded weeks is, and how soon; run by hand, results go to the
 * ledger.
 */
public final class SearchLedger {
  private static final long EFFORT = Long.MAX_VALUE / 4;

  private SearchLedger() {}

  /**
   * Runs: every seed once cold and then once warm.
   *
   * @param args bookings, vans, fill, real or plain, first seed, last seed, rounds, seconds for a
   *     proof (0: none); with a file as the last one proofs are kept there from run to run
   */
  public static void main(String[] args) throws IOException {
    int bookings = Integer.parseInt(args[0]);
    int vans = Integer.parseInt(args[1]);
    CustomaryWeeks.Shape shape =
        new CustomaryWeeks.Shape(
            bookings, vans, Double.parseDouble(args[2]), args[3].equals("real"), EFFORT);
    Path kept = args.length > 8 ? Path.of(args[8]) : null;
    Properties proofs = new Properties();
    if (kept != null && Files.exists(kept)) {
      try (var in = Files.newBufferedReader(kept)) {
        proofs.load(in);
      }
    }
    for (String state : List.of("cold", "warm")) {
      for (long seed = Long.parseLong(args[4]); seed <= Long.parseLong(args[5]); seed++) {
        WeekRequest week = CustomaryWeeks.week(seed, shape);
        String name = String.join("-", args[0], args[1], args[2], args[3], "" + seed);
        if (!proofs.containsKey(name) && Double.parseDouble(args[7]) > 0) {
          proofs.setProperty(name, proof(week, Double.parseDouble(args[7])));
          if (kept != null) {
            try (var out = Files.newBufferedWriter(kept)) {
              proofs.store(out, null);
            }
          }
        }
        row(state, seed, week, Integer.parseInt(args[6]), proofs.getProperty(name, ""));
      }
    }
  }

  private static String proof(WeekRequest week, double seconds) {
    double cpu = cpuSeconds();
    WeekPlan plan = WeekPlanner.plan(week, WeekProgress.NONE, () -> cpuSeconds() - cpu > seconds);
    return plan.leftOutCounted() + " " + plan.costSixtieths() + " " + plan.proof().kind();
  }

  private static void row(String state, long seed, WeekRequest week, int rounds, String proof) {
    double start = cpuSeconds();
    double[] at = {0, 0};
    StringBuilder trail = new StringBuilder();
    WorkCount work = new WorkCount(EFFORT, () -> false);
    WeekModel model = new WeekModel(week);
    SetCosts costs = new SetCosts(model, work);
    WeekSearch search = new WeekSearch(model, costs, week.seed(), work);
    WeekChoice found =
        search.run(
            rounds,
            better -> {
              at[1] = cpuSeconds() - start;
              at[0] = at[0] == 0 ? at[1] : at[0];
              trail.append(
                  String.format(
                      Locale.ROOT,
                      " %.2f:%d/%d",
                      at[1],
                      better.leftOutCounted(),
                      better.costSixtieths() / 3600));
            });
    double all = cpuSeconds() - start;
    int sets = search.orders().stream().mapToInt(orders -> orders.inOrder().size()).sum();
    String gap = "";
    if (!proof.isEmpty()) {
      String[] best = proof.split(" ");
      gap =
          String.format(
              Locale.ROOT,
              "best known %s (%s) above by %.2f %%",
              best[0],
              best[2],
              100.0 * found.costSixtieths() / Long.parseLong(best[1]) - 100);
    }
    System.out.printf(
        Locale.ROOT,
        "%s seed %d left out %d cost %d %s first %.2f last %.2f all %.2f s steps %d sets" + " %d%n",
        state,
        seed,
        found.leftOutCounted(),
        found.costSixtieths(),
        gap,
        at[0],
        at[1],
        all,
        work.steps(),
        sets);
    System.out.println(trail);
  }

  private static double cpuSeconds() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime()
        / 1e9;
  }
}
