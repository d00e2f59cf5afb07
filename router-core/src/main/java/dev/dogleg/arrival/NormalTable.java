package dev.dogleg.arrival;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The standard normal distribution function from a table, the same bits on every machine.
 *
 * <p>Maintainers: values of the library are rounded to {@code 2^-40}, so that a last bit that
 * differs between machines cannot show; between two entries a line is drawn, which errs by less
 * than one part in a million.
 */
final class NormalTable {
  private static final int PER_UNIT = 512;
  private static final int MOST = 8;
  private static final double GRAIN = 0x1p40;
  private static final double[] BELOW = table();

  private NormalTable() {}

  private static double[] table() {
    NormalDistribution normal = NormalDistribution.of(0, 1);
    double[] below = new double[2 * MOST * PER_UNIT + 2];
    for (int i = 0; i < below.length; i++) {
      double z = (double) i / PER_UNIT - MOST;
      below[i] = StrictMath.rint(normal.cumulativeProbability(z) * GRAIN) / GRAIN;
    }
    return below;
  }

  /**
   * Probability of a value of at most z.
   *
   * @param z any number, infinite ones too
   * @return 0..1
   */
  static double below(double z) {
    if (z <= -MOST) {
      return 0;
    }
    if (z >= MOST) {
      return 1;
    }
    double at = (z + MOST) * PER_UNIT;
    int cell = (int) at;
    return BELOW[cell] + (at - cell) * (BELOW[cell + 1] - BELOW[cell]);
  }
}
