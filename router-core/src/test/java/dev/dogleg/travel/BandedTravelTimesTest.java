package dev.dogleg.travel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BandedTravelTimesTest {
  private static final List<String> ROADS = List.of("motorway", "street");

  private static TrafficBands rushHour() {
    return new TrafficBands(
        ROADS,
        List.of(
            new TrafficBands.Band("night", 0, List.of(1000, 1000)),
            new TrafficBands.Band("morning", 7 * 3600, List.of(2000, 1500)),
            new TrafficBands.Band("day", 9 * 3600, List.of(1000, 1100))));
  }

  private static BandedTravelTimes twoPlaces() {
    // There: 400 s of motorway, 200 s of street, 10 s of turns. Back: no road.
    return new BandedTravelTimes(
        new TravelMatrix(
            2,
            ROADS,
            new int[] {0, 0, 400, 200, 0, 0, 0, 0},
            new int[] {0, 10, 0, 0},
            new int[] {0, 9000, 0, 0},
            new boolean[] {true, true, false, true}),
        rushHour());
  }

  @Test
  void insideOneBandTheClassesAreScaledAndTurnsAreNot() {
    BandedTravelTimes times = twoPlaces();
    assertEquals(610, times.driveSeconds(0, 1, 0), "400 + 200 + 10");
    assertEquals(1110, times.driveSeconds(0, 1, 7 * 3600), "400*2 + 200*1.5 + 10");
    assertEquals(630, times.driveSeconds(0, 1, 12 * 3600), "400 + 220 + 10");
    assertEquals(610, times.leastDriveSeconds(0, 1));
  }

  @Test
  void overABandLimitTheRestOfThePathGoesAtTheNewSpeed() {
    // Leaves 305 s before 7:00: half of the 610 s path is done, the other half takes 1110/2 = 555.
    assertEquals(860, twoPlaces().driveSeconds(0, 1, 7 * 3600 - 305));
  }

  @Test
  void aPairWithoutARoadIsAFaultAndNotANumber() {
    BandedTravelTimes times = twoPlaces();
    assertFalse(times.reaches(1, 0));
    assertThrows(IllegalArgumentException.class, () -> times.driveSeconds(1, 0, 0));
    assertThrows(IllegalArgumentException.class, () -> times.lengthMetres(1, 0));
    assertEquals(0, times.driveSeconds(1, 1, 0));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
  void noDurationInAStraightSpanIsLessThanBothThatEncloseIt(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    BandedTravelTimes times = randomTimes(random);
    for (int pair = 0; pair < 2; pair++) {
      int spans = 0;
      for (int from = 15_000; from < 34_000; spans++) {
        int until = Math.min(34_000, times.straightUntil(pair, 1 - pair, from));
        assertTrue(until >= from, "seed " + seed);
        boolean fallen = false;
        for (int leave = from + 1; leave <= until; leave++) {
          int change =
              times.driveSeconds(pair, 1 - pair, leave)
                  - times.driveSeconds(pair, 1 - pair, leave - 1);
          assertFalse(fallen && change > 0, "seed " + seed + " rises again at " + leave);
          fallen |= change < 0;
        }
        // Next from a second inside or just after the span, so that spans begin anywhere.
        from = random.nextBoolean() ? until + 1 : from + 1 + random.nextInt(until - from + 1);
      }
      assertTrue(spans < 4_000, "seed " + seed + ": spans of few seconds cut nothing down");
    }
  }

  private static BandedTravelTimes randomTimes(SplittableRandom random) {
    int[] seconds = {
      0, 0, random.nextInt(3000), random.nextInt(900), random.nextInt(50), random.nextInt(90), 0, 0
    };
    return new BandedTravelTimes(
        new TravelMatrix(
            2,
            ROADS,
            seconds,
            new int[] {0, random.nextInt(60), random.nextInt(9), 0},
            new int[4],
            new boolean[] {true, true, true, true}),
        new TrafficBands(
            ROADS,
            List.of(
                band(random, 0),
                band(random, 20_000),
                band(random, 20_300 + random.nextInt(900)),
                band(random, 30_000))));
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void firstInFirstOutAndSteadySpansAndBoundsHoldAtEverySecond(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    BandedTravelTimes times = randomTimes(random);
    for (int pair = 0; pair < 2; pair++) {
      int lastArrival = 0;
      int steady = -1;
      for (int leave = 15_000; leave < 34_000; leave++) {
        int drive = times.driveSeconds(pair, 1 - pair, leave);
        assertTrue(leave + drive >= lastArrival, "seed " + seed + " overtakes at " + leave);
        assertTrue(drive >= times.leastDriveSeconds(pair, 1 - pair), "seed " + seed);
        assertTrue(
            drive >= times.leastDriveSeconds(pair, 1 - pair, leave - 500, leave + 10),
            "seed " + seed + " span bound at " + leave);
        if (leave <= steady) {
          assertEquals(times.driveSeconds(pair, 1 - pair, leave - 1), drive, "seed " + seed);
        } else {
          if (leave > 15_000) {
            assertTrue(
                drive != times.driveSeconds(pair, 1 - pair, leave - 1),
                "seed " + seed + " ended a steady span too early at " + leave);
          }
          steady = times.steadyUntil(pair, 1 - pair, leave);
        }
        lastArrival = leave + drive;
      }
    }
  }

  private static TrafficBands.Band band(SplittableRandom random, int from) {
    return new TrafficBands.Band(
        "b" + from, from, List.of(700 + random.nextInt(2000), 700 + random.nextInt(2000)));
  }
}
