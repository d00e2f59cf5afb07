package dev.dogleg.arrival;

import java.util.function.DoubleUnaryOperator;

/**
 * When something happens, as probability on an even grid of seconds. Immutable.
 *
 * <p>Cell k stands for the seconds within half a step of {@code origin + k * step}. A fixed number
 * of seconds moves the origin, so nothing is lost by it; where two grids must meet, a cell's mass
 * is split between its two neighbours so that the mean stays.
 */
final class TimeMass {
  /** Probability at either end that is cut off. */
  private static final double TAIL = 1e-6;

  private final double origin;
  private final int step;
  private final double[] mass;

  private TimeMass(double origin, int step, double[] mass) {
    this.origin = origin;
    this.step = step;
    this.mass = mass;
  }

  static TimeMass at(double seconds, int step) {
    return new TimeMass(seconds, step, new double[] {1});
  }

  double origin() {
    return origin;
  }

  int step() {
    return step;
  }

  double[] mass() {
    return mass;
  }

  TimeMass plus(double seconds) {
    return new TimeMass(origin + seconds, step, mass);
  }

  /**
   * Adds a duration that varies by itself.
   *
   * @param median seconds, 0 or more
   * @param logSpread of its logarithm, 0 or more
   */
  TimeMass plusLognormal(double median, double logSpread) {
    if (median <= 0 || logSpread <= 0) {
      return plus(median);
    }
    double low = median * StrictMath.exp(-4.8 * logSpread) - median;
    double high = median * StrictMath.exp(4.8 * logSpread) - median;
    int first = (int) Math.floor(low / step);
    int last = (int) Math.ceil(high / step);
    double[] kernel = new double[last - first + 1];
    double before = 0;
    for (int k = first; k <= last; k++) {
      double edge = median + (k + 0.5) * step;
      double upTo =
          k == last ? 1 : edge <= 0 ? 0 : NormalTable.below(logOf(edge / median) / logSpread);
      kernel[k - first] = upTo - before;
      before = upTo;
    }
    return new TimeMass(origin + median + (double) first * step, step, convolved(kernel)).trimmed();
  }

  private static double logOf(double ratio) {
    return StrictMath.log(ratio);
  }

  private double[] convolved(double[] kernel) {
    double[] sum = new double[mass.length + kernel.length - 1];
    for (int i = 0; i < mass.length; i++) {
      double m = mass[i];
      if (m != 0) {
        for (int k = 0; k < kernel.length; k++) {
          sum[i + k] += m * kernel[k];
        }
      }
    }
    return sum;
  }

  /** Nothing before: whoever is early waits. */
  TimeMass notBefore(double seconds) {
    double firstCell = (seconds - origin) / step;
    if (firstCell <= 0) {
      return this;
    }
    int below = (int) Math.min(mass.length, Math.ceil(firstCell));
    double early = 0;
    for (int i = 0; i < below; i++) {
      early += mass[i];
    }
    if (below == mass.length) {
      return new TimeMass(seconds, step, new double[] {early});
    }
    // The early ones stand at a second between two cells.
    int cell = (int) Math.floor(firstCell);
    double right = firstCell - cell;
    double[] rest = new double[mass.length - cell];
    System.arraycopy(mass, below, rest, below - cell, mass.length - below);
    rest[0] += early * (1 - right);
    if (right > 0) {
      rest[1] += early * right;
    }
    return new TimeMass(origin + (double) cell * step, step, rest);
  }

  /**
   * Adds a duration that depends on when it begins.
   *
   * @param duration seconds by the second of beginning
   * @param grain durations closer than so many seconds are taken together
   * @param logSpread of the logarithm of each duration
   */
  TimeMass plusDepending(DoubleUnaryOperator duration, double grain, double logSpread) {
    TimeMass sum = null;
    int from = 0;
    while (from < mass.length) {
      double first = duration.applyAsDouble(origin + (double) from * step);
      int to = from + 1;
      double weighted = first * mass[from];
      double part = mass[from];
      while (to < mass.length) {
        double next = duration.applyAsDouble(origin + (double) to * step);
        if (Math.abs(next - first) > grain) {
          break;
        }
        weighted += next * mass[to];
        part += mass[to];
        to++;
      }
      if (part > 0) {
        double[] own = new double[to - from];
        System.arraycopy(mass, from, own, 0, own.length);
        TimeMass reached =
            new TimeMass(origin + (double) from * step, step, own)
                .plusLognormal(weighted / part, logSpread);
        sum = sum == null ? reached : sum.and(reached);
      }
      from = to;
    }
    return sum == null ? this : sum;
  }

  /** Puts two parts together. */
  private TimeMass and(TimeMass other) {
    double shift = (other.origin - origin) / step;
    int cell = (int) Math.floor(shift);
    double right = shift - cell;
    int first = Math.min(0, cell);
    int last = Math.max(mass.length - 1, cell + other.mass.length);
    double[] sum = new double[last - first + 1];
    System.arraycopy(mass, 0, sum, -first, mass.length);
    for (int i = 0; i < other.mass.length; i++) {
      sum[cell + i - first] += other.mass[i] * (1 - right);
      sum[cell + i + 1 - first] += other.mass[i] * right;
    }
    return new TimeMass(origin + (double) first * step, step, sum);
  }

  private TimeMass trimmed() {
    double whole = 0;
    for (double m : mass) {
      whole += m;
    }
    double cut = TAIL * whole;
    int from = 0;
    double low = 0;
    while (from < mass.length - 1 && low + mass[from] < cut) {
      low += mass[from++];
    }
    int to = mass.length;
    double high = 0;
    while (to > from + 1 && high + mass[to - 1] < cut) {
      high += mass[--to];
    }
    double[] rest = new double[to - from];
    System.arraycopy(mass, from, rest, 0, rest.length);
    // Cut mass goes to the outermost cells, so that the whole stays the whole.
    rest[0] += low;
    rest[rest.length - 1] += high;
    return new TimeMass(origin + (double) from * step, step, rest);
  }
}
