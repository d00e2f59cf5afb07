package dev.dogleg.cli.console;

import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** A bar on a terminal. */
final class BarProgress implements Progress {
  private static final int REDRAW_MILLIS = 200;

  private final ProgressBar bar;

  BarProgress(String task) {
    bar =
        new ProgressBarBuilder()
            .setTaskName(task)
            .setInitialMax(-1)
            .setStyle(ProgressBarStyle.ASCII)
            .setUpdateIntervalMillis(REDRAW_MILLIS)
            .clearDisplayOnFinish()
            .build();
  }

  @Override
  public void phase(String phase) {
    bar.setExtraMessage(phase);
  }

  @Override
  public void at(long done, long of) {
    bar.maxHint(of > 0 ? of : -1);
    bar.stepTo(done);
  }

  @Override
  public void close() {
    bar.close();
  }
}
