package dev.dogleg.groom.learn;

/**
 * One effect before anything is seen.
 *
 * @param kind number of its class
 * @param mean its mean
 * @param unitVariance its variance, in units of the class's scale, over 0
 */
record Effect(int kind, double mean, double unitVariance) {
  Effect {
    if (!(unitVariance > 0)) {
      throw new IllegalArgumentException("unitVariance must be over 0");
    }
  }
}
