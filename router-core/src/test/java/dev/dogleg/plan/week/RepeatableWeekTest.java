package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.RandomWeeks;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One week is planned to the same bytes on any number of threads, in any order of its rows. */
class RepeatableWeekTest {
  /** A small week, one with traffic, and one of 135,000 sets that is stopped by its effort. */
  static Stream<WeekRequest> weeks() {
    return Stream.of(
        RandomWeeks.week(47, 5, 4, false),
        CustomaryWeeks.week(2, new CustomaryWeeks.Shape(20, 1, 1.15, true, 500_000_000L)),
        CustomaryWeeks.week(2, new CustomaryWeeks.Shape(30, 1, 1.15, false, 3_000_000L)));
  }

  @ParameterizedTest(name = "week {index}")
  @MethodSource("weeks")
  void theNumberOfThreadsDoesNotMatter(WeekRequest week) throws Exception {
    WeekPlanner.Solved one = onThreads(1, week);
    for (int threads : new int[] {2, 8}) {
      WeekPlanner.Solved other = onThreads(threads, week);
      assertEquals(one.plan(), other.plan(), threads + " threads");
      assertArrayEquals(bytes(one), bytes(other), threads + " threads");
    }
  }

  private static WeekPlanner.Solved onThreads(int threads, WeekRequest week) throws Exception {
    ForkJoinPool pool = new ForkJoinPool(threads);
    try {
      return pool.submit(() -> WeekPlanner.certified(week, WeekProgress.NONE, () -> false)).get();
    } finally {
      pool.shutdown();
    }
  }

  private static byte[] bytes(WeekPlanner.Solved solved) {
    return solved.certificate().toString().getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void theOrderOfTheRowsDoesNotMatter() {
    for (int seed = 1; seed <= 30; seed++) {
      WeekRequest week = RandomWeeks.week(seed, 6, 1 + seed % 3, seed % 2 == 0);
      WeekPlanner.Solved plan = WeekPlanner.certified(week, WeekProgress.NONE, () -> false);
      assertEquals(Proof.Kind.PROVEN_BEST, plan.plan().proof().kind(), "seed " + seed);
      for (int turn = 0; turn < 3; turn++) {
        List<WeekBooking> rows = new ArrayList<>(week.bookings());
        Collections.shuffle(rows, new Random(seed * 10L + turn));
        WeekRequest shuffled =
            new WeekRequest(week.days(), rows, week.prices(), week.seed(), week.effort());
        WeekPlanner.Solved other = WeekPlanner.certified(shuffled, WeekProgress.NONE, () -> false);
        assertEquals(plan, other, "seed " + seed);
      }
    }
  }
}
