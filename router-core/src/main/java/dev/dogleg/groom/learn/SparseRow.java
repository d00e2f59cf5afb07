package dev.dogleg.groom.learn;

import java.util.Arrays;

/** A row of numbers of which few are not zero; grows by adding, keeps the order of adding. */
final class SparseRow {
  private int[] at = new int[4];
  private double[] value = new double[4];
  private int size;

  /** Adds to the number at a place. */
  void add(int place, double by) {
    for (int k = 0; k < size; k++) {
      if (at[k] == place) {
        value[k] += by;
        return;
      }
    }
    if (size == at.length) {
      at = Arrays.copyOf(at, 2 * size);
      value = Arrays.copyOf(value, 2 * size);
    }
    at[size] = place;
    value[size++] = by;
  }

  /** Adds a multiple of another row. */
  void add(SparseRow other, double times) {
    for (int k = 0; k < other.size; k++) {
      add(other.at[k], times * other.value[k]);
    }
  }

  /** Adds a multiple of the row's square to the lower half of a matrix. */
  void addSquare(double[][] lower, double times) {
    for (int k = 0; k < size; k++) {
      for (int m = 0; m < size; m++) {
        if (at[m] <= at[k]) {
          lower[at[k]][at[m]] += times * value[k] * value[m];
        }
      }
    }
  }

  /** Adds a multiple of the row to a full one. */
  void addTo(double[] full, double times) {
    for (int k = 0; k < size; k++) {
      full[at[k]] += times * value[k];
    }
  }

  /** {@return the product with a full row} */
  double times(double[] full) {
    double sum = 0;
    for (int k = 0; k < size; k++) {
      sum += value[k] * full[at[k]];
    }
    return sum;
  }

  /** {@return the quadratic form with a symmetric matrix of which the lower half is given} */
  double form(double[][] lower) {
    double sum = 0;
    for (int k = 0; k < size; k++) {
      sum += value[k] * value[k] * lower[at[k]][at[k]];
      for (int m = 0; m < k; m++) {
        int high = Math.max(at[k], at[m]);
        int low = Math.min(at[k], at[m]);
        sum += 2 * value[k] * value[m] * lower[high][low];
      }
    }
    return sum;
  }
}
