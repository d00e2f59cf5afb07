package dev.dogleg.arrival;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DaySpread;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.rng.simple.RandomSource;
import org.junit.jupiter.api.Test;

/** What is reckoned on the grid against a million drawn days (commons-rng samplers). */
class CourseAgainstSamplesTest {
  private static final int[] PERMILLES = {10, 50, 100, 250, 500, 750, 900, 950, 990};

  /** Days and draws: {@code -Ddogleg.samples=50,1000000} is the whole check. */
  private static final String SIZE = System.getProperty("dogleg.samples", "10,200000");

  @Test
  void everyQuantileLiesWithinAMinute() {
    int days = Integer.parseInt(SIZE.split(",")[0]);
    int draws = Integer.parseInt(SIZE.split(",")[1]);
    double worst = 0;
    String where = "";
    for (int seed = 1; seed <= days; seed++) {
      SpreadDays made = SpreadDays.of(seed, 5 + seed % 4, seed % 3 * 20);
      List<DoorArrival> doors =
          ArrivalForecast.of(
              made.request(),
              made.plan().stops(),
              CourseTerms.fine(made.services(), DaySpread.STARTER));
      SampledDay sampled =
          new SampledDay(
              made.request(),
              made.plan().stops(),
              made.services(),
              DaySpread.STARTER,
              RandomSource.XO_RO_SHI_RO_128_PP.create(new long[] {seed, 11}));
      assertEquals(sampled.doors(), doors.stream().map(DoorArrival::visitId).toList());
      double[][] drawn = draws(sampled, doors.size(), draws);
      for (int d = 0; d < doors.size(); d++) {
        Arrays.sort(drawn[d]);
        for (int permille : PERMILLES) {
          double is = doors.get(d).arrival().quantileSeconds(permille);
          double shouldBe = drawn[d][(int) ((long) draws * permille / 1000)];
          if (Math.abs(is - shouldBe) > worst) {
            worst = Math.abs(is - shouldBe);
            where = "seed " + seed + ", door " + d + ", " + permille + ": " + is + " " + shouldBe;
          }
        }
      }
    }
    System.out.println("worst quantile error " + worst + " s at " + where);
    assertTrue(worst <= 60, where);
  }

  private static double[][] draws(SampledDay sampled, int doors, int draws) {
    double[][] drawn = new double[doors][draws];
    double[] one = new double[doors];
    for (int i = 0; i < draws; i++) {
      sampled.draw(one);
      for (int d = 0; d < doors; d++) {
        drawn[d][i] = one[d];
      }
    }
    return drawn;
  }
}
