package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.SetDays;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Prints what the sweep over the sets of seeded weeks takes and how tight its costs are; run by
 * hand, results go to the ledger.
 */
public final class SweepLedger {
  private static final int MOST_SETS = 1_500_000;
  private static final long EFFORT = 2_000_000;

  private SweepLedger() {}

  /**
   * Runs.
   *
   * @param args sets a van-day compared with the day engine, times each sweep is run (the fastest
   *     counts), then words of {@link LedgerOptions}
   */
  public static void main(String[] args) {
    LedgerOptions options = LedgerOptions.of(Arrays.copyOfRange(args, 2, args.length));
    LedgerWeeks weeks = new LedgerWeeks(options, Path.of(""));
    for (long seed = options.firstSeed(); seed <= options.lastSeed(); seed++) {
      week(seed, weeks.week(seed), Integer.parseInt(args[0]), Integer.parseInt(args[1]));
    }
  }

  private static void week(long seed, WeekRequest week, int compared, int times) {
    double seconds = 0;
    long sets = 0;
    long steps = 0;
    long equal = 0;
    long checked = 0;
    long impossible = 0;
    double slack = 0;
    double most = 0;
    for (VanKind kind : new WeekModel(week).kinds()) {
      kind.relaxed();
      SetSweep sweep = null;
      double fastest = Double.MAX_VALUE;
      for (int time = 0; time < times; time++) {
        double start = threadSeconds();
        sweep = new SetSweep(kind, MOST_SETS).run(() -> false);
        fastest = Math.min(fastest, threadSeconds() - start);
      }
      seconds += fastest;
      sets += sweep.size();
      steps += sweep.steps();
      SplittableRandom random = new SplittableRandom(seed);
      SetDays exact = new SetDays(kind.model());
      for (int k = 0; k < compared && sweep.size() > 0; k++) {
        int chosen = random.nextInt(sweep.size());
        long bits = 0;
        long cost = 0;
        for (int local : sweep.set(chosen)) {
          bits |= 1L << local;
          cost += kind.extraSixtieths(local);
        }
        Optional<SetDays.Best> best = exact.best(bits, EFFORT);
        checked++;
        if (best.isEmpty() || !best.get().proven()) {
          impossible++;
          continue;
        }
        cost += best.get().costSixtieths();
        long bound = sweep.cost(chosen);
        if (bound > cost) {
          throw new IllegalStateException("bound " + bound + " above exact " + cost);
        }
        equal += bound == cost ? 1 : 0;
        slack += (cost - bound) / (double) cost;
        most = Math.max(most, (cost - bound) / (double) cost);
      }
    }
    System.out.printf(
        Locale.ROOT,
        "seed %d sets %d steps %d sweep %.3f s; of %d compared: impossible %.2f %%, equal %.1f %%,"
            + " slack mean %.3f %% most %.2f %%%n",
        seed,
        sets,
        steps,
        seconds,
        checked,
        100.0 * impossible / Math.max(1, checked),
        100.0 * equal / Math.max(1, checked - impossible),
        100 * slack / Math.max(1, checked - impossible),
        100 * most);
  }

  private static double threadSeconds() {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    return threads.getCurrentThreadCpuTime() / 1e9;
  }
}
