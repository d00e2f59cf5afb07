package dev.dogleg.groom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Quantiles, moments and sums of service times against published values and samples. */
class ServiceTimeTest {

  /**
   * Standard lognormal (median 1, sigma 1): quantiles exp(z) with z of the standard normal table
   * (NIST/SEMATECH e-Handbook, 1.3.6.7.1: 1.2816, 1.6449, 2.3263; from memory).
   */
  @ParameterizedTest
  @CsvSource({"500, 1", "900, 3.6022", "950, 5.1803", "990, 10.2405", "100, 0.27760"})
  void quantilesAreTheStandardLognormals(int permille, double expected) {
    ServiceTime time = ServiceTime.of(1_000_000, 1);
    assertEquals(expected * 1_000_000, time.quantileSeconds(permille), expected * 100);
  }

  /** Mean exp(1/2) = 1.64872, variance e (e - 1) = 4.67077 (e-Handbook, 1.3.6.6.9; from memory). */
  @Test
  void momentsAreTheStandardLognormals() {
    ServiceTime time = ServiceTime.of(1, 1);
    assertEquals(1.64872, time.meanSeconds(), 5e-6);
    assertEquals(4.67077, time.varianceSquareSeconds(), 5e-6);
  }

  @ParameterizedTest
  @CsvSource({"4500, 0.25", "600, 0.4", "14400, 0.14", "2700, 0.05"})
  void agreesWithTheStatisticsLibrary(double median, double spread) {
    LogNormalDistribution library = LogNormalDistribution.of(Math.log(median), spread);
    ServiceTime time = new ServiceTime(60, median, spread);
    assertEquals(60 + library.getMean(), time.meanSeconds(), 1e-6);
    assertEquals(library.getVariance(), time.varianceSquareSeconds(), 1e-3);
    for (int permille = 10; permille < 1000; permille += 70) {
      assertEquals(
          60.0 + Math.round(library.inverseCumulativeProbability(permille / 1000.0)),
          time.quantileSeconds(permille),
          1);
    }
  }

  @Test
  void sumKeepsOneTimeAsItIs() {
    ServiceTime one = new ServiceTime(60, 4500, 0.25);
    assertEquals(one, ServiceTime.sum(List.of(one)));
    assertEquals(
        new ServiceTime(160, 4500, 0.25),
        ServiceTime.sum(List.of(one, new ServiceTime(100, 0, 0))));
    assertEquals(new ServiceTime(0, 0, 0), ServiceTime.sum(List.of()));
  }

  /** Two alike: mean doubles, variance doubles, so the relative spread shrinks by root two. */
  @Test
  void sumKeepsMeanAndVariance() {
    ServiceTime one = ServiceTime.of(4500, 0.25);
    ServiceTime two = ServiceTime.sum(List.of(one, one));
    assertEquals(2 * one.meanSeconds(), two.meanSeconds(), 1e-6);
    assertEquals(2 * one.varianceSquareSeconds(), two.varianceSquareSeconds(), 1e-3);
  }

  /** A million sampled sums, seed 20260105: moments and quantiles of Fenton's match. */
  @Test
  void sumAgreesWithAMillionSamples() {
    List<ServiceTime> grooms =
        List.of(ServiceTime.of(4500, 0.25), ServiceTime.of(1800, 0.40), ServiceTime.of(5400, 0.14));
    int samples = 1_000_000;
    double[] sums = new double[samples];
    UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(20_260_105L);
    for (ServiceTime groom : grooms) {
      var sampler =
          LogNormalDistribution.of(Math.log(groom.medianSeconds()), groom.logSpread())
              .createSampler(random);
      for (int i = 0; i < samples; i++) {
        sums[i] += sampler.sample();
      }
    }
    double mean = Arrays.stream(sums).average().orElseThrow();
    double variance = Arrays.stream(sums).map(x -> (x - mean) * (x - mean)).sum() / samples;
    Arrays.sort(sums);
    ServiceTime sum = ServiceTime.sum(grooms);
    // Standard error of the mean: about 1,600 / 1,000 = 1.6 s.
    assertEquals(mean, sum.meanSeconds(), 8);
    assertEquals(Math.sqrt(variance), Math.sqrt(sum.varianceSquareSeconds()), 8);
    for (int permille : new int[] {50, 100, 500, 900, 950, 990}) {
      double sampled = sums[samples / 1000 * permille];
      assertEquals(sampled, sum.quantileSeconds(permille), 0.01 * sampled, "P" + permille);
    }
  }

  @Test
  void quantilesRise() {
    ServiceTime time = new ServiceTime(1080, 4500, 0.25);
    int before = 0;
    for (int permille = 1; permille < 1000; permille++) {
      int seconds = time.quantileSeconds(permille);
      assertTrue(seconds >= before && seconds > 1080);
      before = seconds;
    }
  }

  @Test
  void refusesWhatIsNoDuration() {
    assertThrows(IllegalArgumentException.class, () -> new ServiceTime(-1, 10, 0.1));
    assertThrows(IllegalArgumentException.class, () -> ServiceTime.of(Double.NaN, 0.1));
    assertThrows(IllegalArgumentException.class, () -> ServiceTime.of(10, -0.1));
    assertThrows(IllegalArgumentException.class, () -> ServiceTime.of(10, 0.1).quantileSeconds(0));
  }
}
