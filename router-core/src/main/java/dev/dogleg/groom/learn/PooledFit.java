package dev.dogleg.groom.learn;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * Fits effects drawn from common distributions to what was seen: shrunken means, the scales of the
 * distributions, and the scale of the noise.
 *
 * <p><b>Idea.</b> Given the scales, effects are the solution of Henderson's mixed model equations:
 * each is the mean of what its observations leave over, drawn towards its own mean before anything
 * was seen. The scales are then set to what the effects show, plus the variance each still has
 * (EM), mixed with the starting scale by its pseudo number; the steps are lengthened as in R.
 * Varadhan and C. Roland, <i>Simple and globally convergent methods for accelerating the
 * convergence of any EM algorithm</i>, Scandinavian Journal of Statistics 35, 2008. Observations
 * beyond {@code huber} standard deviations count less; the noise scale is that of Huber's Proposal
 * 2 (1964), so that it is right for normal noise. Observations beyond {@code reject} standard
 * deviations of a prediction without themselves are left out; the first such prediction is made
 * from shrunken medians, so that one wild value does not hide behind its own pull. All this counts
 * old observations in full, for a scale would be wrong if what is old were taken for noisy; only
 * the effects themselves are then found with weights that fall with age.
 *
 * <p><b>Cost.</b> Some dozens of solutions of the equations.
 *
 * <p>Tried and dropped: setting one effect after the other with its variance given all others
 * (variational EM). Linear in the log, but with five hundred visits of 130 pets on a hundred days
 * it put most of the days' spread into the noise, and nine of ten visits lay within P10 to P90.
 */
final class PooledFit {
  private static final int MOST_STEPS = 40;
  private static final int MOST_SWEEPS = 3;
  private static final double STILL = 1e-4;
  private static final double LONGEST_STEP = 16;
  private static final int MEDIAN_FROM = 3;
  private static final double LEAST_LEFT = 0.05;

  /**
   * What the fit is told besides the data.
   *
   * @param noiseScale starting scale of the noise
   * @param pseudo how many observations it counts as
   * @param huber see {@link LearnSettings}; may be infinite
   * @param reject see {@link LearnSettings}; may be infinite
   * @param apart class of effects of which none meets another in an observation; -1 for none
   */
  record Terms(double noiseScale, double pseudo, double huber, double reject, int apart) {}

  private final List<EffectClass> classes;
  private final List<Effect> effects;
  private final List<Observation> seen;
  private final Terms terms;
  private final MixedEquations equations;
  private final double winsorised;

  /** Scales of the classes, then that of the noise. */
  private double[] scales;

  /** By number of an effect: the observations it is in. */
  private final List<List<Integer>> places = new ArrayList<>();

  /** Whether observations count by their weight. */
  private boolean aged;

  private final boolean[] rejected;
  private final double[] share;

  private PooledFit(
      List<EffectClass> classes, List<Effect> effects, List<Observation> seen, Terms terms) {
    this.classes = classes;
    this.effects = effects;
    this.seen = seen;
    this.terms = terms;
    equations = new MixedEquations(effects, seen, terms.apart());
    scales = new double[classes.size() + 1];
    for (int kind = 0; kind < classes.size(); kind++) {
      scales[kind] = classes.get(kind).scale();
    }
    scales[classes.size()] = terms.noiseScale();
    rejected = new boolean[seen.size()];
    share = new double[seen.size()];
    Arrays.fill(share, 1);
    effects.forEach(effect -> places.add(new ArrayList<>()));
    for (int i = 0; i < seen.size(); i++) {
      for (Load load : seen.get(i).loads()) {
        places.get(load.effect()).add(i);
      }
    }
    winsorised = winsorisedVariance(terms.huber());
  }

  static PooledFit of(
      List<EffectClass> classes, List<Effect> effects, List<Observation> seen, Terms terms) {
    PooledFit fit = new PooledFit(classes, effects, seen, terms);
    fit.start();
    fit.settle();
    for (int sweep = 1; sweep <= MOST_SWEEPS && fit.sweep(); sweep++) {
      fit.settle();
    }
    fit.aged = true;
    fit.solve();
    return fit;
  }

  /** Variance of a standard normal value that is cut off at both sides. */
  private static double winsorisedVariance(double at) {
    if (Double.isInfinite(at)) {
      return 1;
    }
    NormalDistribution standard = NormalDistribution.of(0, 1);
    double beyond = standard.survivalProbability(at);
    return 1 - 2 * beyond - 2 * at * standard.density(at) + 2 * at * at * beyond;
  }

  /**
   * Marks what lies too far from a first prediction: effects at shrunken medians, class after
   * class; one with few observations stays at its mean.
   */
  private void start() {
    double[] rest = seen.stream().mapToDouble(Observation::value).toArray();
    double[] spread = new double[seen.size()];
    for (int i = 0; i < spread.length; i++) {
      spread[i] = noise(i);
    }
    for (int kind = 0; kind < classes.size(); kind++) {
      for (int j = 0; j < effects.size(); j++) {
        if (effects.get(j).kind() == kind) {
          begin(j, places.get(j), rest, spread);
        }
      }
    }
    for (int i = 0; i < rejected.length; i++) {
      rejected[i] = Math.abs(rest[i]) > terms.reject() * StrictMath.sqrt(spread[i]);
    }
  }

  private void begin(int j, List<Integer> of, double[] rest, double[] spread) {
    double at = effects.get(j).mean();
    double variance = priorVariance(j);
    if (of.size() >= MEDIAN_FROM) {
      double[] left =
          of.stream()
              .mapToDouble(i -> rest[i] / load(i, j) - effects.get(j).mean())
              .sorted()
              .toArray();
      double median = (left[(left.length - 1) / 2] + left[left.length / 2]) / 2;
      double noise = noise(of.get(0)) / left.length;
      at += median * variance / (variance + noise);
      variance = variance * noise / (variance + noise);
    }
    for (int i : of) {
      rest[i] -= at * load(i, j);
      spread[i] += variance * load(i, j) * load(i, j);
    }
  }

  private double load(int i, int j) {
    return seen.get(i).loads().stream()
        .filter(load -> load.effect() == j)
        .mapToDouble(Load::size)
        .sum();
  }

  private double priorVariance(int j) {
    return scales[effects.get(j).kind()] * effects.get(j).unitVariance();
  }

  private double noise(int i) {
    return noiseScale() * seen.get(i).unitVariance();
  }

  private double precision(int i) {
    return rejected[i] ? 0 : (aged ? seen.get(i).weight() : 1) * share[i] / noise(i);
  }

  /** Marks what lies too far from a prediction without itself; true where a mark has changed. */
  private boolean sweep() {
    boolean changed = false;
    for (int i = 0; i < rejected.length; i++) {
      double without = 1 - precision(i) * equations.fittedVariance[i];
      double spread = noise(i) + equations.fittedVariance[i] / without;
      boolean now = Math.abs(rest(i)) / without > terms.reject() * StrictMath.sqrt(spread);
      changed |= now != rejected[i];
      share[i] = now ? 1 : share[i];
      rejected[i] = now;
    }
    return changed;
  }

  /** Finds the scales that a step leaves where they are. */
  private void settle() {
    for (int step = 0; step < MOST_STEPS; step += 3) {
      double[] from = scales;
      double[] once = step(from);
      double[] twice = step(once);
      double[] longer = new double[from.length];
      double first = 0;
      double bend = 0;
      for (int k = 0; k < from.length; k++) {
        double a = StrictMath.log(once[k] / from[k]);
        double b = StrictMath.log(twice[k] / once[k]) - a;
        first += a * a;
        bend += b * b;
      }
      double length =
          bend == 0 ? 1 : Math.max(1, Math.min(LONGEST_STEP, StrictMath.sqrt(first / bend)));
      for (int k = 0; k < from.length; k++) {
        double a = StrictMath.log(once[k] / from[k]);
        double b = StrictMath.log(twice[k] / once[k]) - a;
        longer[k] = from[k] * StrictMath.exp(2 * length * a + length * length * b);
      }
      double[] last = step(longer);
      double moved = 0;
      for (int k = 0; k < last.length; k++) {
        moved = Math.max(moved, Math.abs(StrictMath.log(last[k] / longer[k])));
      }
      scales = last;
      if (moved < STILL) {
        break;
      }
    }
    solve();
  }

  /** One step of EM. */
  private double[] step(double[] from) {
    scales = from;
    solve();
    weigh();
    double[] to = from.clone();
    for (int kind = 0; kind < classes.size(); kind++) {
      if (classes.get(kind).estimated()) {
        to[kind] = classScale(kind);
      }
    }
    to[classes.size()] = nextNoiseScale();
    return to;
  }

  private void solve() {
    double[] prior = new double[effects.size()];
    for (int j = 0; j < prior.length; j++) {
      prior[j] = priorVariance(j);
    }
    double[] precision = new double[seen.size()];
    for (int i = 0; i < precision.length; i++) {
      precision[i] = precision(i);
    }
    equations.solve(prior, precision);
  }

  private void weigh() {
    for (int i = 0; i < share.length; i++) {
      double far = rest(i) * rest(i) / cut(i);
      share[i] = far > 1 ? 1 / StrictMath.sqrt(far) : 1;
    }
  }

  /**
   * Square beyond which a rest counts less: a rest varies less than its noise, for it is fitted.
   */
  private double cut(int i) {
    double left = Math.max(LEAST_LEFT, 1 - precision(i) * equations.fittedVariance[i]);
    return terms.huber() * terms.huber() * noise(i) * left;
  }

  private double classScale(int kind) {
    double sum = classes.get(kind).pseudo() * classes.get(kind).scale();
    double count = classes.get(kind).pseudo();
    for (int j = 0; j < effects.size(); j++) {
      if (effects.get(j).kind() == kind) {
        double off = equations.mean[j] - effects.get(j).mean();
        sum += (off * off + equations.variance[j]) / effects.get(j).unitVariance();
        count++;
      }
    }
    return count > 0 ? sum / count : scales[kind];
  }

  private double nextNoiseScale() {
    double sum = terms.pseudo() * terms.noiseScale();
    double count = terms.pseudo();
    for (int i = 0; i < seen.size(); i++) {
      if (!rejected[i]) {
        double square = Math.min(rest(i) * rest(i), cut(i)) / winsorised;
        sum += (square + equations.fittedVariance[i]) / seen.get(i).unitVariance();
        count++;
      }
    }
    return count > 0 ? sum / count : noiseScale();
  }

  private double rest(int i) {
    return seen.get(i).value() - fitted(i);
  }

  /** {@return what the effects say that an observation should have been} */
  double fitted(int i) {
    double sum = 0;
    for (Load load : seen.get(i).loads()) {
      sum += load.size() * equations.mean[load.effect()];
    }
    return sum;
  }

  /** {@return an effect, given what was seen} */
  double mean(int effect) {
    return equations.mean[effect];
  }

  /**
   * How uncertain the sum of some effects still is. Weights that fall with age make an old
   * observation count less than it could; were nothing changing, an effect would be known better
   * than the equations say, by the share of the weights' mean in what was seen of it.
   *
   * @param some numbers of effects, each once, none of the class solved apart; of the last one is
   *     known least
   * @return variance of their sum's error where nothing changes with age
   */
  double variance(List<Integer> some) {
    int least = some.get(some.size() - 1);
    double before = 1 / priorVariance(least);
    double sum = before;
    double squares = before;
    for (int i : places.get(least)) {
      double own = precision(i) * load(i, least) * load(i, least);
      sum += own;
      squares += seen.get(i).weight() * own;
    }
    return equations.variance(some) * squares / sum;
  }

  /** {@return the variance that a fitted value still has} */
  double fittedVariance(int i) {
    return equations.fittedVariance[i];
  }

  /** {@return the scale of a class} */
  double scale(int kind) {
    return scales[kind];
  }

  /** {@return the scale of the noise} */
  double noiseScale() {
    return scales[classes.size()];
  }

  /** {@return whether an observation was left out} */
  boolean rejected(int i) {
    return rejected[i];
  }
}
