package dev.dogleg.groom.learn;

/**
 * Cholesky's method for a symmetric positive definite system, one thread and one order of sums, so
 * that the same numbers give the same bits on every machine; the algebra library on the class path
 * shares work among threads.
 */
final class Cholesky {
  private final double[][] lower;

  /**
   * Factors a matrix.
   *
   * @param matrix its lower half, row {@code i} with {@code i + 1} cells; taken over
   * @throws ArithmeticException where it is not positive definite
   */
  Cholesky(double[][] matrix) {
    lower = matrix;
    for (int i = 0; i < lower.length; i++) {
      double[] row = lower[i];
      for (int j = 0; j <= i; j++) {
        double[] other = lower[j];
        double sum = row[j];
        for (int k = 0; k < j; k++) {
          sum -= row[k] * other[k];
        }
        if (j < i) {
          row[j] = sum / other[j];
        } else if (sum > 0) {
          row[i] = StrictMath.sqrt(sum);
        } else {
          throw new ArithmeticException("not positive definite");
        }
      }
    }
  }

  double[] solve(double[] right) {
    double[] x = right.clone();
    for (int i = 0; i < x.length; i++) {
      for (int k = 0; k < i; k++) {
        x[i] -= lower[i][k] * x[k];
      }
      x[i] /= lower[i][i];
    }
    for (int i = x.length - 1; i >= 0; i--) {
      x[i] /= lower[i][i];
      for (int k = 0; k < i; k++) {
        x[k] -= lower[i][k] * x[i];
      }
    }
    return x;
  }

  /** {@return the lower half of the inverse} */
  double[][] inverse() {
    int size = lower.length;
    double[][] turned = new double[size][];
    for (int j = 0; j < size; j++) {
      // Column j of the inverse of the lower half, from the diagonal down.
      double[] column = new double[size - j];
      column[0] = 1 / lower[j][j];
      for (int i = j + 1; i < size; i++) {
        double[] row = lower[i];
        double sum = 0;
        for (int k = j; k < i; k++) {
          sum -= row[k] * column[k - j];
        }
        column[i - j] = sum / row[i];
      }
      turned[j] = column;
    }
    double[][] inverse = new double[size][];
    for (int i = 0; i < size; i++) {
      inverse[i] = new double[i + 1];
      for (int j = 0; j <= i; j++) {
        double sum = 0;
        for (int k = i; k < size; k++) {
          sum += turned[i][k - i] * turned[j][k - j];
        }
        inverse[i][j] = sum;
      }
    }
    return inverse;
  }
}
