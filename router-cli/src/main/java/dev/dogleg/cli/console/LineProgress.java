package dev.dogleg.cli.console;

/** One plain line a phase, for logs and pipes. */
final class LineProgress implements Progress {
  private final Console console;
  private String last = "";

  LineProgress(Console console, String task) {
    this.console = console;
    console.warn(task + " ...");
  }

  @Override
  public synchronized void phase(String phase) {
    if (!phase.equals(last)) {
      last = phase;
      console.warn("  " + phase);
    }
  }

  @Override
  public void at(long done, long of) {
    // A log is not helped by a line for every step.
  }

  @Override
  public void close() {
    // The next line of the log says what came after.
  }
}
