package dev.dogleg.plan.week;

import dev.dogleg.plan.SetDays;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Prints what the exact cost of a set takes, by number of visits; run by hand, results go to the
 * ledger.
 */
public final class SetCostLedger {
  private static final int MOST_SETS = 1_500_000;
  private static final long EFFORT = 2_000_000;
  private static final int MOST_VISITS = 24;

  private SetCostLedger() {}

  /**
   * Runs.
   *
   * @param args sets a van-day asked for, times each is asked (the last counts), then words of
   *     {@link LedgerOptions}
   */
  public static void main(String[] args) {
    LedgerOptions options = LedgerOptions.of(Arrays.copyOfRange(args, 2, args.length));
    LedgerWeeks weeks = new LedgerWeeks(options, Path.of(""));
    int asked = Integer.parseInt(args[0]);
    for (int time = 0; time < Integer.parseInt(args[1]); time++) {
      long[] nanos = new long[MOST_VISITS];
      long[] sum = new long[MOST_VISITS];
      long[] slowest = new long[MOST_VISITS];
      int[] count = new int[MOST_VISITS];
      int[] none = new int[MOST_VISITS];
      for (long seed = options.firstSeed(); seed <= options.lastSeed(); seed++) {
        for (VanKind kind : new WeekModel(weeks.week(seed)).kinds()) {
          SetSweep sweep = new SetSweep(kind, MOST_SETS).run(() -> false);
          SplittableRandom random = new SplittableRandom(seed);
          SetDays exact = new SetDays(kind.model());
          List<Long> sets = new ArrayList<>();
          for (int k = 0; k < asked && sweep.size() > 0; k++) {
            long bits = 0;
            for (int local : sweep.set(random.nextInt(sweep.size()))) {
              bits |= 1L << local;
            }
            sets.add(bits);
          }
          for (long set : sets) {
            int visits = Long.bitCount(set);
            long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
            Optional<SetDays.Best> best = exact.best(set, EFFORT);
            long last = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start;
            nanos[visits] += last;
            count[visits]++;
            none[visits] += best.isEmpty() ? 1 : 0;
            sum[visits] += best.map(SetDays.Best::costSixtieths).orElse(0L);
            slowest[visits] = Math.max(slowest[visits], last);
          }
        }
      }
      for (int v = 1; v < MOST_VISITS; v++) {
        if (count[v] > 0) {
          System.out.printf(
              Locale.ROOT,
              "%d visits: %d sets, %d without a day, %.3f ms a set, slowest %.1f; costs %d%n",
              v,
              count[v],
              none[v],
              nanos[v] / 1e6 / count[v],
              slowest[v] / 1e6,
              sum[v]);
        }
      }
      System.out.println();
    }
  }
}
