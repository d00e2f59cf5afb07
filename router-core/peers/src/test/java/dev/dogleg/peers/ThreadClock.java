package dev.dogleg.peers;

import java.lang.management.ManagementFactory;

/**
 * Processor seconds of the thread that made it, so that a busy machine takes nothing from any run.
 */
final class ThreadClock {
  private final long start = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();

  double seconds() {
    return (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - start) / 1e9;
  }

  boolean over(double limit) {
    return seconds() > limit;
  }
}
