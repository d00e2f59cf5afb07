package dev.dogleg.audit;

/** What is left of a number of steps, so that an answer depends on work and never on the clock. */
final class WorkLeft {
  private long steps;

  WorkLeft(long steps) {
    this.steps = steps;
  }

  /** Spends steps; more than there are spends all, for good. */
  void spend(long more) {
    steps = steps < more ? -1 : steps - more;
  }

  /** {@return whether more was asked for than there was} */
  boolean spent() {
    return steps < 0;
  }

  /** Takes a share out, to be spent apart. */
  WorkLeft share(int parts) {
    long share = Math.max(0, steps) / parts;
    steps -= share;
    return new WorkLeft(share);
  }

  /** Takes back what is left of a share. */
  void back(WorkLeft share) {
    steps += Math.max(0, share.steps);
  }
}
