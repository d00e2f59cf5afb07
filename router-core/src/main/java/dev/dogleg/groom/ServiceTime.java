package dev.dogleg.groom;

import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How long a service lasts: fixed seconds, and on top a lognormal duration.
 *
 * <p>Several grooms in a row are summed by matching mean and variance of the sum with one lognormal
 * (L. F. Fenton 1960; the lower quantiles of the match are the poorer ones, which matters little
 * for spreads under one). The grooms are held independent.
 *
 * @param fixedSeconds seconds that do not vary, 0 or more
 * @param medianSeconds median of the lognormal part, over 0; 0 where there is none
 * @param logSpread standard deviation of its logarithm, 0..3
 */
public record ServiceTime(int fixedSeconds, double medianSeconds, double logSpread) {
  private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

  /** Checks the ranges. */
  public ServiceTime {
    if (fixedSeconds < 0 || !(medianSeconds >= 0) || !(logSpread >= 0 && logSpread <= 3)) {
      throw new IllegalArgumentException(
          "not a duration: " + fixedSeconds + " + " + medianSeconds + ", spread " + logSpread);
    }
  }

  /**
   * A time that varies as a whole.
   *
   * @param medianSeconds median, over 0
   * @param logSpread standard deviation of the logarithm, 0..3
   * @return the time
   */
  public static ServiceTime of(double medianSeconds, double logSpread) {
    return new ServiceTime(0, medianSeconds, logSpread);
  }

  /**
   * The same time with more fixed seconds.
   *
   * @param seconds 0 or more
   * @return the time
   */
  public ServiceTime plusFixed(int seconds) {
    return new ServiceTime(fixedSeconds + seconds, medianSeconds, logSpread);
  }

  /**
   * Several times one after the other.
   *
   * @param times any number
   * @return their sum: exact in its fixed part, mean and variance
   */
  public static ServiceTime sum(List<ServiceTime> times) {
    int fixed = times.stream().mapToInt(ServiceTime::fixedSeconds).sum();
    List<ServiceTime> varying = times.stream().filter(time -> time.medianSeconds > 0).toList();
    if (varying.size() <= 1) {
      // One alone is its own sum; matching moments would only add rounding.
      return varying.isEmpty()
          ? new ServiceTime(fixed, 0, 0)
          : new ServiceTime(fixed, varying.get(0).medianSeconds, varying.get(0).logSpread);
    }
    double mean = 0;
    double variance = 0;
    for (ServiceTime time : varying) {
      mean += time.varyingMean();
      variance += time.varianceSquareSeconds();
    }
    double squareSpread = StrictMath.log1p(variance / (mean * mean));
    return new ServiceTime(
        fixed, mean / StrictMath.exp(squareSpread / 2), StrictMath.sqrt(squareSpread));
  }

  private double varyingMean() {
    return medianSeconds * StrictMath.exp(logSpread * logSpread / 2);
  }

  /** {@return mean in seconds, fixed part included} */
  public double meanSeconds() {
    return fixedSeconds + varyingMean();
  }

  /** {@return variance in square seconds} */
  public double varianceSquareSeconds() {
    double mean = varyingMean();
    return mean * mean * StrictMath.expm1(logSpread * logSpread);
  }

  /**
   * The time that is not exceeded in so many cases of a thousand.
   *
   * @param permille 1..999; 500 is the median
   * @return whole seconds, rounded to the nearest
   */
  public int quantileSeconds(int permille) {
    if (permille < 1 || permille > 999) {
      throw new IllegalArgumentException("permille must lie in 1..999, was " + permille);
    }
    double deviations =
        permille == 500 ? 0 : STANDARD.inverseCumulativeProbability(permille / 1000.0);
    double varying = medianSeconds * StrictMath.exp(logSpread * deviations);
    return Math.toIntExact(fixedSeconds + Math.round(varying));
  }
}
