package dev.dogleg.groom.learn;

import java.util.List;

/**
 * One number seen: the sum of its effects, each times its load, plus noise.
 *
 * @param value what was seen
 * @param unitVariance variance of its noise, in units of the noise scale, over 0
 * @param weight how much it counts, over 0; 1 for a fresh one
 * @param loads its effects, each once
 */
record Observation(double value, double unitVariance, double weight, List<Load> loads) {
  Observation {
    loads = List.copyOf(loads);
    if (!(unitVariance > 0 && weight > 0)) {
      throw new IllegalArgumentException("variance and weight must be over 0");
    }
  }
}
