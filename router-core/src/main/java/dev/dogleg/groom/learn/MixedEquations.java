package dev.dogleg.groom.learn;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Henderson's mixed model equations: effects given their variances and the precision of each
 * observation, solved exactly, with the variance that each effect and each fitted value still has.
 *
 * <p>Effects of one class may be solved apart (none of them meets another in an observation, as
 * days): each is eliminated by itself (Schur complement), which leaves a small dense system for
 * Cholesky's method. <b>Cost.</b> The cube of the number of all other effects; some hundreds take
 * milliseconds.
 */
final class MixedEquations {
  private static final int NONE = -1;

  private final List<Effect> effects;
  private final List<Observation> seen;
  private final int[] place;
  private final int size;

  /** Effects solved apart: by number of the effect, its observations. */
  private final Map<Integer, List<Integer>> apart = new LinkedHashMap<>();

  private final int[] apartOf;

  /** Loads of each observation on the dense system, and on the effect solved apart. */
  private final SparseRow[] rows;

  private final double[] apartLoad;

  private double[][] inverse;

  final double[] mean;
  final double[] variance;
  final double[] fittedVariance;

  /**
   * Equations of a pool.
   *
   * @param effects all effects, each in at least one observation
   * @param seen all observations
   * @param apartKind class of the effects to be solved apart; a number that is no class for none
   */
  MixedEquations(List<Effect> effects, List<Observation> seen, int apartKind) {
    this.effects = effects;
    this.seen = seen;
    place = new int[effects.size()];
    int next = 0;
    for (int j = 0; j < place.length; j++) {
      place[j] = effects.get(j).kind() == apartKind ? NONE : next++;
    }
    size = next;
    apartOf = new int[seen.size()];
    apartLoad = new double[seen.size()];
    rows = new SparseRow[seen.size()];
    for (int i = 0; i < rows.length; i++) {
      apartOf[i] = NONE;
      rows[i] = new SparseRow();
      for (Load load : seen.get(i).loads()) {
        if (place[load.effect()] == NONE) {
          apartOf[i] = load.effect();
          apartLoad[i] = load.size();
          apart.computeIfAbsent(load.effect(), key -> new ArrayList<>()).add(i);
        } else {
          rows[i].add(place[load.effect()], load.size());
        }
      }
    }
    mean = new double[effects.size()];
    variance = new double[effects.size()];
    fittedVariance = new double[seen.size()];
  }

  /**
   * Solves.
   *
   * @param priorVariance variance of each effect before anything is seen, over 0
   * @param precision precision of each observation, 0 for one that is left out
   */
  void solve(double[] priorVariance, double[] precision) {
    double[][] matrix = new double[size][];
    double[] right = new double[size];
    for (int j = 0; j < effects.size(); j++) {
      if (place[j] != NONE) {
        matrix[place[j]] = new double[place[j] + 1];
        matrix[place[j]][place[j]] = 1 / priorVariance[j];
        right[place[j]] = effects.get(j).mean() / priorVariance[j];
      }
    }
    for (int i = 0; i < rows.length; i++) {
      rows[i].addSquare(matrix, precision[i]);
      rows[i].addTo(right, precision[i] * seen.get(i).value());
    }
    Map<Integer, Apart> alone = new LinkedHashMap<>();
    apart.forEach(
        (effect, of) -> {
          Apart one = apart(effect, of, priorVariance[effect], precision);
          alone.put(effect, one);
          one.row().addSquare(matrix, -1 / one.precision());
          one.row().addTo(right, -one.sum() / one.precision());
        });
    Cholesky solved = new Cholesky(matrix);
    double[] at = solved.solve(right);
    inverse = solved.inverse();
    for (int j = 0; j < effects.size(); j++) {
      if (place[j] != NONE) {
        mean[j] = at[place[j]];
        variance[j] = inverse[place[j]][place[j]];
      } else {
        Apart one = alone.get(j);
        mean[j] = (one.sum() - one.row().times(at)) / one.precision();
        variance[j] = (1 + one.row().form(inverse) / one.precision()) / one.precision();
      }
    }
    for (int i = 0; i < rows.length; i++) {
      fittedVariance[i] =
          apartOf[i] == NONE
              ? rows[i].form(inverse)
              : fittedVariance(i, alone.get(apartOf[i]), inverse);
    }
  }

  /**
   * Variance that the sum of some effects still has; less than the sum of theirs where what is seen
   * tells them together but not apart.
   *
   * @param some numbers of effects that are not solved apart, each once
   * @return the variance
   */
  double variance(List<Integer> some) {
    SparseRow row = new SparseRow();
    some.forEach(effect -> row.add(place[effect], 1));
    return row.form(inverse);
  }

  /** What is left of the equation of an effect solved apart: its row, diagonal and right side. */
  private record Apart(SparseRow row, double precision, double sum) {}

  private Apart apart(int effect, List<Integer> of, double priorVariance, double[] precision) {
    SparseRow row = new SparseRow();
    double diagonal = 1 / priorVariance;
    double sum = effects.get(effect).mean() / priorVariance;
    for (int i : of) {
      double own = precision[i] * apartLoad[i];
      diagonal += own * apartLoad[i];
      sum += own * seen.get(i).value();
      row.add(rows[i], own);
    }
    return new Apart(row, diagonal, sum);
  }

  private double fittedVariance(int i, Apart one, double[][] inverse) {
    SparseRow row = new SparseRow();
    row.add(rows[i], 1);
    row.add(one.row(), -apartLoad[i] / one.precision());
    return apartLoad[i] * apartLoad[i] / one.precision() + row.form(inverse);
  }
}
