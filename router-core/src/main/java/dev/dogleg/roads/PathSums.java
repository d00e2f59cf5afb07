package dev.dogleg.roads;

import java.util.Arrays;

/**
 * Milliseconds per road class, turn milliseconds and centimetres of one path, and how they become
 * whole seconds and metres; the one place where anything is rounded.
 *
 * <p>Each class and the turns are rounded half up by themselves, and a drive that moves at all
 * takes at least one second, so that no two doors lie 0 seconds apart for the sake of rounding.
 */
final class PathSums {
  private final long[] sums = new long[Hierarchy.SUMS];

  void add(int k, long amount) {
    sums[k] += amount;
  }

  void addArc(Hierarchy hierarchy, int arc) {
    for (int k = 0; k < sums.length; k++) {
      sums[k] += hierarchy.sum(arc, k);
    }
  }

  int turnSeconds() {
    return seconds(sums[Hierarchy.TURN_MS]);
  }

  int lengthMetres() {
    return Math.toIntExact((sums[Hierarchy.LENGTH_CM] + 50) / 100);
  }

  /** Seconds per road class. */
  int[] classSeconds() {
    int[] seconds = new int[Hierarchy.TURN_MS];
    int slowest = 0;
    long driven = 0;
    for (int k = 0; k < seconds.length; k++) {
      seconds[k] = seconds(sums[k]);
      driven += sums[k];
      slowest = sums[k] > sums[slowest] ? k : slowest;
    }
    if (driven > 0 && turnSeconds() == 0 && Arrays.stream(seconds).sum() == 0) {
      seconds[slowest] = 1;
    }
    return seconds;
  }

  private static int seconds(long milliseconds) {
    return Math.toIntExact((milliseconds + 500) / 1000);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof PathSums path && Arrays.equals(sums, path.sums);
  }

  @Override
  public int hashCode() {
    return Arrays.hashCode(sums);
  }

  @Override
  public String toString() {
    return Arrays.toString(sums);
  }
}
