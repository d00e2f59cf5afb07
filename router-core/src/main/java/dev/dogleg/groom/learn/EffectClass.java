package dev.dogleg.groom.learn;

/**
 * Effects of one kind that are drawn from one normal distribution, for example all pets: the
 * variance of effect {@code j} is the class's scale times its own unit variance.
 *
 * @param scale starting scale, over 0
 * @param pseudo how many effects the starting scale counts as; infinite for a scale that stays
 */
record EffectClass(double scale, double pseudo) {
  EffectClass {
    if (!(scale > 0 && pseudo >= 0)) {
      throw new IllegalArgumentException("scale over 0, pseudo 0 or more");
    }
  }

  /** A class whose scale is not estimated. */
  static EffectClass fixed(double variance) {
    return new EffectClass(variance, Double.POSITIVE_INFINITY);
  }

  boolean estimated() {
    return !Double.isInfinite(pseudo);
  }
}
