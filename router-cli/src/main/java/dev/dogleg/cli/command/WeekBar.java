package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.Progress;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.plan.week.WeekProgress;

/** Shows the best week so far and the bound, where a person watches. */
final class WeekBar implements WeekProgress {
  private static final long SIXTIETHS_PER_MINUTE = 60L * Prices.SIXTIETHS_PER_DRIVE_SECOND;

  private final Progress bar;
  private final boolean watched;
  private final long effort;

  WeekBar(Progress bar, Console console, long effort) {
    this.bar = bar;
    this.watched = console.terminal();
    this.effort = effort;
  }

  @Override
  public void update(
      int leftOut, long costSixtieths, int leftOutBound, long costBoundSixtieths, long steps) {
    if (watched) {
      bar.phase(text(leftOut, costSixtieths, leftOutBound, costBoundSixtieths));
      bar.at(Math.min(steps, effort), effort);
    }
  }

  static String text(int leftOut, long cost, int leftOutBound, long costBound) {
    String best =
        "best: " + leftOut + " left out, " + cost / SIXTIETHS_PER_MINUTE + " min of driving";
    String bound =
        costBound <= 0
            ? "; bound: " + leftOutBound + " left out"
            : "; bound: "
                + leftOutBound
                + " left out, "
                + costBound / SIXTIETHS_PER_MINUTE
                + " min";
    return best + bound;
  }
}
