package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.Progress;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.plan.week.WeekProgress;

/**
 * Shows the best week so far and the bound, where a person watches. The bar is full when they meet:
 * its share is that of the best week's cost which is proven.
 */
final class WeekBar implements WeekProgress {
  private static final long SIXTIETHS_PER_MINUTE = 60L * Prices.SIXTIETHS_PER_DRIVE_SECOND;

  private final Progress bar;
  private final boolean watched;

  WeekBar(Progress bar, Console console) {
    this.bar = bar;
    this.watched = console.terminal();
  }

  @Override
  public void update(
      int leftOut, long costSixtieths, int leftOutBound, long costBoundSixtieths, long steps) {
    if (watched) {
      bar.phase(text(leftOut, costSixtieths, leftOutBound, costBoundSixtieths));
      bar.at(percent(leftOut, costSixtieths, leftOutBound, costBoundSixtieths), 100);
    }
  }

  static long percent(int leftOut, long cost, int leftOutBound, long costBound) {
    if (leftOut > leftOutBound) {
      return 0;
    }
    return cost <= 0 ? 100 : Math.max(0, Math.min(100, 100 * costBound / cost));
  }

  /** Short enough to stand behind a bar of 80 columns. */
  static String text(int leftOut, long cost, int leftOutBound, long costBound) {
    if (leftOut > leftOutBound) {
      return "best: %d out, bound: %d".formatted(leftOut, leftOutBound);
    }
    String out = leftOut == 0 ? "" : leftOut + " out, ";
    return "best: %s%d min, bound: %d"
        .formatted(out, cost / SIXTIETHS_PER_MINUTE, Math.max(0, costBound) / SIXTIETHS_PER_MINUTE);
  }
}
