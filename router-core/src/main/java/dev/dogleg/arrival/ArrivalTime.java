package dev.dogleg.arrival;

import java.util.List;

/**
 * When the van is at a door, as a distribution over elapsed seconds since local midnight.
 *
 * <p>Arrival at the door is meant, before any waiting there. Immutable; any thread may ask.
 */
public final class ArrivalTime {
  private final TimeMass[] parts;
  private final double[] weights;
  private final double[][] upTo;

  ArrivalTime(List<TimeMass> parts, DayFactor factor) {
    this.parts = parts.toArray(TimeMass[]::new);
    this.weights = new double[this.parts.length];
    this.upTo = new double[this.parts.length][];
    for (int p = 0; p < this.parts.length; p++) {
      weights[p] = factor.weight(p);
      double[] mass = this.parts[p].mass();
      upTo[p] = new double[mass.length + 1];
      for (int i = 0; i < mass.length; i++) {
        upTo[p][i + 1] = upTo[p][i] + mass[i];
      }
    }
  }

  /**
   * Probability of being at the door by a second.
   *
   * @param seconds elapsed seconds
   * @return 0..1
   */
  public double by(double seconds) {
    double sum = 0;
    for (int p = 0; p < parts.length; p++) {
      TimeMass part = parts[p];
      double at = (seconds - part.origin()) / part.step() + 0.5;
      double[] below = upTo[p];
      int cells = below.length - 1;
      double share;
      if (at <= 0) {
        share = 0;
      } else if (at >= cells) {
        share = below[cells];
      } else {
        int cell = (int) at;
        share = below[cell] + (at - cell) * (below[cell + 1] - below[cell]);
      }
      sum += weights[p] * share;
    }
    return Math.min(1, sum);
  }

  /**
   * The first second by which the van is there in so many of a thousand days.
   *
   * @param permille 1..999
   * @return whole elapsed seconds
   * @throws IllegalArgumentException outside that range
   */
  public int quantileSeconds(int permille) {
    if (permille < 1 || permille > 999) {
      throw new IllegalArgumentException("permille must lie in 1..999, was " + permille);
    }
    double wanted = permille / 1000.0;
    int low = Integer.MAX_VALUE;
    int high = Integer.MIN_VALUE;
    for (TimeMass part : parts) {
      low = Math.min(low, (int) Math.floor(part.origin() - part.step()));
      high =
          Math.max(
              high, (int) Math.ceil(part.origin() + part.mass().length * (double) part.step()));
    }
    while (low < high) {
      int middle = low + (high - low) / 2;
      if (by(middle) >= wanted) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low;
  }

  /**
   * Probability of being at the door not after a second, in thousandths.
   *
   * @param seconds elapsed seconds
   * @return 0..1000, rounded down, so that it never says too much
   */
  public int permilleBy(int seconds) {
    return (int) Math.floor(1000 * by(seconds) + 1e-6);
  }

  /** {@return mean arrival in elapsed seconds} */
  public double meanSeconds() {
    double sum = 0;
    for (int p = 0; p < parts.length; p++) {
      double[] mass = parts[p].mass();
      double own = 0;
      for (int i = 0; i < mass.length; i++) {
        own += mass[i] * (parts[p].origin() + (double) i * parts[p].step());
      }
      sum += weights[p] * own;
    }
    return sum;
  }

  /**
   * Mean waiting if the service may not start before a second.
   *
   * @param seconds elapsed seconds
   * @return seconds, 0 or more
   */
  public double meanWaitSeconds(int seconds) {
    double sum = 0;
    for (int p = 0; p < parts.length; p++) {
      double[] mass = parts[p].mass();
      double own = 0;
      for (int i = 0; i < mass.length; i++) {
        double early = seconds - (parts[p].origin() + (double) i * parts[p].step());
        if (early <= 0) {
          break;
        }
        own += mass[i] * early;
      }
      sum += weights[p] * own;
    }
    return sum;
  }
}
