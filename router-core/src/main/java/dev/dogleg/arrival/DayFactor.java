package dev.dogleg.arrival;

/**
 * What a whole day has in common, as a few even points of the standard normal and their weights.
 *
 * <p>Maintainers: the trapezium rule on an even grid errs for smooth functions less than any power
 * of the step (Trefethen and Weideman 2014, SIAM Review 56:385-458); smooth the mixture is because
 * every groom's own spread blurs the points.
 */
final class DayFactor {
  private static final double REACH = 4;
  private final double[] points;
  private final double[] weights;

  private DayFactor(int count) {
    points = new double[count];
    weights = new double[count];
    double step = count == 1 ? 0 : 2 * REACH / (count - 1);
    double sum = 0;
    for (int i = 0; i < count; i++) {
      points[i] = count == 1 ? 0 : -REACH + i * step;
      weights[i] = StrictMath.exp(-points[i] * points[i] / 2);
      sum += weights[i];
    }
    for (int i = 0; i < count; i++) {
      weights[i] /= sum;
    }
  }

  /**
   * Points over four standard deviations either way.
   *
   * @param count odd; 1 for no common factor
   * @return the points
   */
  static DayFactor of(int count) {
    return new DayFactor(count);
  }

  int count() {
    return points.length;
  }

  double point(int i) {
    return points[i];
  }

  double weight(int i) {
    return weights[i];
  }
}
