package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.lang.management.ManagementFactory;
import java.util.Locale;

/** Prints how long seeded weeks take; run by hand, results go to the ledger. */
public final class WeekLedger {
  private WeekLedger() {}

  /**
   * Runs.
   *
   * @param args bookings, vans, fill, real or plain, first seed, last seed, seconds
   */
  public static void main(String[] args) {
    int bookings = Integer.parseInt(args[0]);
    int vans = Integer.parseInt(args[1]);
    double fill = Double.parseDouble(args[2]);
    boolean real = args[3].equals("real");
    double limit = Double.parseDouble(args[6]);
    for (long seed = Long.parseLong(args[4]); seed <= Long.parseLong(args[5]); seed++) {
      WeekRequest week =
          CustomaryWeeks.week(
              seed, new CustomaryWeeks.Shape(bookings, vans, fill, real, Long.MAX_VALUE / 4));
      long start = System.nanoTime();
      double cpu = cpuSeconds();
      double[] first = {0, 0};
      WeekPlan plan =
          WeekPlanner.plan(
              week,
              (left, cost, leftBound, costBound, steps) -> {
                double now = (System.nanoTime() - start) / 1e9;
                if (first[0] == 0) {
                  first[0] = now;
                }
                first[1] = now;
              },
              () -> cpuSeconds() - cpu > limit);
      double seconds = (System.nanoTime() - start) / 1e9;
      System.out.printf(
          Locale.ROOT,
          "seed %d left out %d/%d cost %d bound %d gap %.2f %% %s first %.2f last %.2f all %.2f s"
              + " cpu %.2f steps %d%n",
          seed,
          plan.leftOutCounted(),
          plan.proof().leftOutBound(),
          plan.costSixtieths(),
          plan.proof().costBound(),
          100.0 * (plan.costSixtieths() - plan.proof().costBound()) / plan.costSixtieths(),
          plan.proof().kind(),
          first[0],
          first[1],
          seconds,
          cpuSeconds() - cpu,
          plan.proof().steps());
    }
  }

  private static double cpuSeconds() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime()
        / 1e9;
  }
}
