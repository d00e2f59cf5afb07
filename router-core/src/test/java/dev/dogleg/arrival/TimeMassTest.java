package dev.dogleg.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.apache.commons.statistics.distribution.LogNormalDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Masses on the grid against the lognormal distribution of commons-statistics. */
class TimeMassTest {
  private static ArrivalTime arrival(TimeMass mass) {
    return new ArrivalTime(List.of(mass), DayFactor.of(1));
  }

  @ParameterizedTest
  @CsvSource({"300, 0.2", "3600, 0.14", "3600, 0.5", "7200, 0.27", "90, 0.1"})
  void oneDurationHasTheLibrarysQuantiles(double median, double spread) {
    LogNormalDistribution exact = LogNormalDistribution.of(Math.log(median), spread);
    ArrivalTime reckoned = arrival(TimeMass.at(1_000, 60).plusLognormal(median, spread));
    for (int permille : new int[] {10, 50, 250, 500, 750, 950, 990}) {
      double shouldBe = 1_000 + exact.inverseCumulativeProbability(permille / 1000.0);
      assertEquals(shouldBe, reckoned.quantileSeconds(permille), 31, median + " " + permille);
    }
  }

  @Test
  void sumsHaveTheMeanAndVarianceOfTheLibrary() {
    LogNormalDistribution one = LogNormalDistribution.of(Math.log(2_700), 0.22);
    LogNormalDistribution other = LogNormalDistribution.of(Math.log(4_500), 0.14);
    TimeMass sum = TimeMass.at(0, 60).plusLognormal(2_700, 0.22).plusLognormal(4_500, 0.14);
    double mean = 0;
    double square = 0;
    for (int i = 0; i < sum.mass().length; i++) {
      double at = sum.origin() + i * 60.0;
      mean += sum.mass()[i] * at;
      square += sum.mass()[i] * at * at;
    }
    assertEquals(one.getMean() + other.getMean(), mean, 1);
    double spread = Math.sqrt(one.getVariance() + other.getVariance());
    assertEquals(spread, Math.sqrt(square - mean * mean), 2);
  }

  /** The mean after waiting is the mean before and the mean wait together. */
  @Test
  void whoIsEarlyWaits() {
    TimeMass two = TimeMass.at(0, 60).plusLognormal(600, 0.3);
    TimeMass waited = two.notBefore(615);
    assertEquals(1, sum(waited), 1e-9);
    ArrivalTime before = arrival(two);
    double mean = before.meanSeconds() + before.meanWaitSeconds(615);
    assertEquals(mean, arrival(waited).meanSeconds(), 1e-6);
    assertEquals(615, arrival(two.notBefore(100_000)).meanSeconds() - 99_385, 1e-6);
  }

  private static double sum(TimeMass mass) {
    double sum = 0;
    for (double m : mass.mass()) {
      sum += m;
    }
    return sum;
  }

  @Test
  void aDurationThatChangesByTheHourIsFollowed() {
    // 600 s before second 5,000, 300 s from then on; half of the mass on either side.
    TimeMass start = TimeMass.at(5_000, 60).plusLognormal(600, 0.2).plus(-600);
    TimeMass end = start.plusDepending(second -> second < 5_000 ? 600 : 300, 5, 0);
    double early = arrival(start).by(4_970);
    double mean = arrival(start).meanSeconds() + early * 600 + (1 - early) * 300;
    assertEquals(mean, arrival(end).meanSeconds(), 1e-6);
  }
}
