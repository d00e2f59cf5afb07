package dev.dogleg.plan.week;

import dev.dogleg.audit.WeekAudit;
import dev.dogleg.itinerary.WeekRequest;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.logging.LogManager;

/**
 * Prints how long seeded weeks take; run by hand, results go to docs/BENCHMARKS.md.
 *
 * <p>The first week is planned once before and not counted, so that no row pays for a cold machine.
 * Seconds are the processor's, of the whole process; those on the clock stand in brackets.
 */
public final class WeekLedger {
  private static final double WARM_UP_SECONDS = 20;

  private WeekLedger() {}

  /**
   * Runs.
   *
   * @param args words as {@link LedgerOptions#of} reads them; the project's folder is the system
   *     property {@code dogleg.root}, or the working folder
   */
  public static void main(String[] args) {
    // What the router tells while it reads a map is not for this table.
    LogManager.getLogManager().reset();
    LedgerOptions options = LedgerOptions.of(args);
    LedgerWeeks weeks = new LedgerWeeks(options, Path.of(System.getProperty("dogleg.root", ".")));
    say("%s, heap at most %d MB", options, Runtime.getRuntime().maxMemory() / 1_000_000);
    MeasuredWeek.of(
        weeks.week(options.firstSeed()), Math.min(WARM_UP_SECONDS, options.processorSeconds()));
    List<MeasuredWeek> runs = new ArrayList<>();
    for (long seed = options.firstSeed(); seed <= options.lastSeed(); seed++) {
      WeekRequest week = weeks.week(seed);
      MeasuredWeek run = MeasuredWeek.of(week, options.processorSeconds());
      runs.add(run);
      say("%s", row(seed, options.map(seed), run));
      // A plan that fails the audit is a fault, whatever its seconds.
      WeekAudit.check(week, run.plan()).forEach(finding -> say("WRONG: %s", finding));
    }
    summary(options, runs);
  }

  private static String row(long seed, String map, MeasuredWeek run) {
    return String.format(
        Locale.ROOT,
        "seed %d %s: left out %d (bound %d), cost %d (bound %d), %s, %s; first %s, to 1 %% %s,"
            + " %s %s, all %s s; heap %.0f MB; doors a day %.1f, water stops %d, steps %d",
        seed,
        map,
        run.plan().leftOutCounted(),
        run.plan().proof().leftOutBound(),
        run.plan().costSixtieths(),
        run.plan().proof().costBound(),
        gap(run),
        run.plan().proof().kind(),
        seconds(run.first()),
        seconds(run.withinOnePercent()),
        run.proven() ? "proof" : "no proof until",
        seconds(run.searched()),
        seconds(run.end()),
        run.heapMegabytes(),
        run.doorsADay(),
        run.waterStops(),
        run.plan().proof().steps());
  }

  private static String gap(MeasuredWeek run) {
    return run.hasGap()
        ? String.format(Locale.ROOT, "gap %.2f %%", run.gapPercent())
        : "no gap: a bound is missing";
  }

  private static String seconds(MeasuredWeek.Moment moment) {
    return String.format(Locale.ROOT, "%.2f (%.2f)", moment.processor(), moment.clock());
  }

  private static void summary(LedgerOptions options, List<MeasuredWeek> runs) {
    List<MeasuredWeek> open = runs.stream().filter(run -> !run.proven()).toList();
    say("| what | median | 95 of 100 | most |%n|---|---|---|---|");
    line("first plan, processor s", runs, run -> run.first().processor());
    line("first plan, clock s", runs, run -> run.first().clock());
    line("within 1 % of the last, processor s", runs, run -> run.withinOnePercent().processor());
    line("within 1 % of the last, clock s", runs, run -> run.withinOnePercent().clock());
    line("proof, or stopped, processor s", runs, run -> run.searched().processor());
    line("proof, or stopped, clock s", runs, run -> run.searched().clock());
    line("all, with the reasons, processor s", runs, run -> run.end().processor());
    line("all, with the reasons, clock s", runs, run -> run.end().clock());
    line("heap MB", runs, MeasuredWeek::heapMegabytes);
    line("doors a van-day", runs, MeasuredWeek::doorsADay);
    line("drive minutes a door", runs, MeasuredWeek::driveMinutesADoor);
    line("water stops a week", runs, MeasuredWeek::waterStops);
    say("proven %d of %d", runs.size() - open.size(), runs.size());
    say(
        "number left out proven least in %d of %d",
        runs.stream()
            .filter(run -> run.plan().leftOutCounted() == run.plan().proof().leftOutBound())
            .count(),
        runs.size());
    if (!open.isEmpty()) {
      say(
          "not proven: %d with a gap of at most 1 %%, %d with one of at most 3 %%, %d with a larger"
              + " one, %d without a gap because a bound is missing",
          open.stream().filter(run -> run.hasGap() && run.gapPercent() <= 1).count(),
          open.stream()
              .filter(run -> run.hasGap() && run.gapPercent() > 1 && run.gapPercent() <= 3)
              .count(),
          open.stream().filter(run -> run.hasGap() && run.gapPercent() > 3).count(),
          open.stream().filter(run -> !run.hasGap()).count());
    }
    say("row for the ledger (median / 95 of 100 / most; processor seconds, clock in brackets):");
    say(
        "| %d | %d | %.2f | %s | %s | %d..%d | %d of %d | %s | %s | %s | %s | %.0f |",
        options.bookings(),
        options.vans(),
        options.fill(),
        String.join(", ", options.maps()),
        options.terms(),
        options.firstSeed(),
        options.lastSeed(),
        runs.size() - open.size(),
        runs.size(),
        three(runs, MeasuredWeek::first),
        three(runs, MeasuredWeek::withinOnePercent),
        three(runs, MeasuredWeek::searched),
        three(runs, MeasuredWeek::end),
        runs.stream().mapToDouble(MeasuredWeek::heapMegabytes).max().orElseThrow());
  }

  private static String three(
      List<MeasuredWeek> runs, Function<MeasuredWeek, MeasuredWeek.Moment> of) {
    double[] processor = sorted(runs, run -> of.apply(run).processor());
    double[] clock = sorted(runs, run -> of.apply(run).clock());
    return String.format(
        Locale.ROOT,
        "%.2f / %.2f / %.2f (%.2f / %.2f / %.2f)",
        rank(processor, 50),
        rank(processor, 95),
        rank(processor, 100),
        rank(clock, 50),
        rank(clock, 95),
        rank(clock, 100));
  }

  private static double[] sorted(List<MeasuredWeek> runs, ToDoubleFunction<MeasuredWeek> of) {
    return runs.stream().mapToDouble(of).sorted().toArray();
  }

  private static void line(
      String what, List<MeasuredWeek> runs, ToDoubleFunction<MeasuredWeek> of) {
    double[] sorted = sorted(runs, of);
    say("| %s | %.2f | %.2f | %.2f |", what, rank(sorted, 50), rank(sorted, 95), rank(sorted, 100));
  }

  /** The least value that so many of a hundred do not exceed. */
  private static double rank(double[] sorted, int percent) {
    return sorted[(sorted.length * percent + 99) / 100 - 1];
  }

  private static void say(String format, Object... values) {
    System.out.println(String.format(Locale.ROOT, format, values));
  }
}
