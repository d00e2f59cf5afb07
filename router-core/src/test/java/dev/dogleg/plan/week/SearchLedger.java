package dev.dogleg.plan.week;

import dev.dogleg.itinerary.WeekRequest;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.function.ToDoubleFunction;
import java.util.logging.LogManager;

/**
 * Prints how good the first search of seeded weeks is, and how soon; run by hand, results go to the
 * ledger.
 *
 * <p>Every seed is searched once before and not counted ("cold"). Seconds are the processor's, of
 * the whole process.
 */
public final class SearchLedger {
  private static final long EFFORT = Long.MAX_VALUE / 4;

  private record Run(int leftOut, long cost, double first, double last, double all, long steps) {}

  private SearchLedger() {}

  /**
   * Runs.
   *
   * @param args most rounds (0: as many as the planner takes); a file that keeps each seed's
   *     result, or {@code -}; then words as {@link LedgerOptions#of} reads them. What the file
   *     holds already is compared with and left as it is.
   */
  public static void main(String[] args) throws IOException {
    LogManager.getLogManager().reset();
    int rounds = Integer.parseInt(args[0]);
    Path kept = args[1].equals("-") ? null : Path.of(args[1]);
    LedgerOptions options = LedgerOptions.of(Arrays.copyOfRange(args, 2, args.length));
    LedgerWeeks weeks = new LedgerWeeks(options, Path.of(System.getProperty("dogleg.root", ".")));
    Properties before = new Properties();
    if (kept != null && Files.exists(kept)) {
      try (var in = Files.newBufferedReader(kept)) {
        before.load(in);
      }
    }
    boolean compare = !before.isEmpty();
    List<Run> runs = new ArrayList<>();
    List<Run> others = new ArrayList<>();
    say("%s, rounds %d", options, rounds);
    for (long seed = options.firstSeed(); seed <= options.lastSeed(); seed++) {
      Run cold = search(weeks.week(seed), rounds);
      if (seed == options.firstSeed()) {
        say("cold: first %.2f, all %.2f s", cold.first, cold.all);
      }
    }
    for (long seed = options.firstSeed(); seed <= options.lastSeed(); seed++) {
      Run run = search(weeks.week(seed), rounds);
      runs.add(run);
      String other = before.getProperty("" + seed);
      if (other != null) {
        others.add(read(other));
      } else {
        before.setProperty("" + seed, written(run));
      }
      say("seed %d %s: %s%s", seed, options.map(seed), row(run), beside(run, other));
    }
    if (kept != null && !compare) {
      try (var out = Files.newBufferedWriter(kept)) {
        before.store(out, null);
      }
    }
    summary("now", runs);
    if (others.size() == runs.size()) {
      summary("before", others);
      compared(runs, others);
    }
  }

  private static Run search(WeekRequest week, int rounds) {
    double start = cpuSeconds();
    double[] at = {0, 0};
    WorkCount work = new WorkCount(EFFORT, () -> false);
    WeekModel model = new WeekModel(week);
    WeekSearch search = new WeekSearch(model, new SetCosts(model, work), week.seed(), work);
    WeekChoice found =
        search.run(
            rounds == 0 ? WeekSolver.searchRounds(model.size()) : rounds,
            better -> {
              at[1] = cpuSeconds() - start;
              at[0] = at[0] == 0 ? at[1] : at[0];
            });
    double all = cpuSeconds() - start;
    return new Run(found.leftOutCounted(), found.costSixtieths(), at[0], at[1], all, work.steps());
  }

  private static String row(Run run) {
    return String.format(
        Locale.ROOT,
        "left out %d cost %d first %.3f last %.2f all %.2f s steps %d",
        run.leftOut,
        run.cost,
        run.first,
        run.last,
        run.all,
        run.steps);
  }

  private static String beside(Run run, String other) {
    if (other == null) {
      return "";
    }
    Run before = read(other);
    return String.format(
        Locale.ROOT,
        "; before: left out %d, cost now %+.2f %%, all %.2f s",
        before.leftOut,
        100.0 * run.cost / before.cost - 100,
        before.all);
  }

  private static String written(Run run) {
    return String.join(
        " ",
        "" + run.leftOut,
        "" + run.cost,
        "" + run.first,
        "" + run.last,
        "" + run.all,
        "" + run.steps);
  }

  private static Run read(String written) {
    String[] word = written.split(" ");
    return new Run(
        Integer.parseInt(word[0]),
        Long.parseLong(word[1]),
        Double.parseDouble(word[2]),
        Double.parseDouble(word[3]),
        Double.parseDouble(word[4]),
        Long.parseLong(word[5]));
  }

  private static void summary(String when, List<Run> runs) {
    say(
        "%s: left out %d in all; first week %s; last better week %s; all %s s",
        when,
        runs.stream().mapToInt(Run::leftOut).sum(),
        spread(runs, Run::first),
        spread(runs, Run::last),
        spread(runs, Run::all));
  }

  private static String spread(List<Run> runs, ToDoubleFunction<Run> of) {
    double[] sorted = runs.stream().mapToDouble(of).sorted().toArray();
    return String.format(
        Locale.ROOT,
        "%.3f to %.3f, median %.3f",
        sorted[0],
        sorted[sorted.length - 1],
        sorted[(sorted.length - 1) / 2]);
  }

  private static void compared(List<Run> runs, List<Run> others) {
    int fewer = 0;
    int more = 0;
    double dearer = 0;
    double most = Double.NEGATIVE_INFINITY;
    double all = 0;
    double allBefore = 0;
    for (int k = 0; k < runs.size(); k++) {
      int left = runs.get(k).leftOut - others.get(k).leftOut;
      fewer += left < 0 ? 1 : 0;
      more += left > 0 ? 1 : 0;
      if (left == 0) {
        double ratio = 100.0 * runs.get(k).cost / others.get(k).cost - 100;
        dearer += ratio;
        most = Math.max(most, ratio);
      }
      all += runs.get(k).all;
      allBefore += others.get(k).all;
    }
    int equal = runs.size() - fewer - more;
    say(
        "left out: fewer on %d seeds, more on %d, equal on %d; of these cost %+.2f %% in the mean,"
            + " %+.2f %% at most; seconds %.2f to %.2f before, 1 to %.1f",
        fewer, more, equal, dearer / Math.max(1, equal), most, all, allBefore, allBefore / all);
  }

  private static double cpuSeconds() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
            .getProcessCpuTime()
        / 1e9;
  }

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
