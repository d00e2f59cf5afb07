package dev.dogleg.cli.console;

/** How a run of the command line ended. */
public enum ExitCode {
  /** Done, nothing to look at. */
  DONE(0),
  /** The program's own fault: nothing was written. */
  OWN_FAULT(1),
  /** Wrong usage of the command line. */
  USAGE(2),
  /** The input stopped the run: nothing was written. */
  STOPPED(3),
  /** Done, but something needs a look. */
  LOOK(4),
  /** Proven: it does not fit. */
  NO_FIT(5),
  /** Not found within the limit; nothing is proven. */
  NOT_FOUND(6);

  private final int number;

  ExitCode(int number) {
    this.number = number;
  }

  /** {@return the process's exit status, 0..6} */
  public int number() {
    return number;
  }
}
