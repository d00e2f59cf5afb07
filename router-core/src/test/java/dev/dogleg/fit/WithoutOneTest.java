package dev.dogleg.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.plan.week.WeekPlanner;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** A week without one of its bookings is the week prepared without it. */
class WithoutOneTest {
  /**
   * Empty where a van-day cannot serve what it has: a door may be reached by way of another only.
   */
  private static Optional<FitWeek> prepared(
      WeekRequest week, Map<String, Integer> placed, Set<String> asked) {
    try {
      return Optional.of(FitWeek.of(week, placed, Set.of(), asked));
    } catch (IllegalArgumentException cannot) {
      return Optional.empty();
    }
  }

  @Test
  void oneTakenOutIsAsIfItHadNeverBeen() {
    int taken = 0;
    for (long number = 1; number <= 12; number++) {
      long seed = number;
      WeekRequest week = RandomWeeks.week(seed, 5, 3, true);
      WeekPlan plan = WeekPlanner.plan(week);
      Map<String, Integer> placed = ForcedDays.placed(plan);
      Optional<FitWeek> planned = prepared(week, placed, Set.of());
      if (planned.isEmpty()) {
        continue;
      }
      FitWeek whole = planned.get();
      for (String id : placed.keySet()) {
        Map<String, Integer> others = new TreeMap<>(placed);
        others.remove(id);
        Optional<FitWeek> without = prepared(week, others, Set.of(id));
        if (without.isEmpty()) {
          assertThrows(IllegalArgumentException.class, () -> whole.without(id), "seed " + seed);
          continue;
        }
        FitWeek fresh = without.get();
        assertEquals(fresh.days(), whole.without(id).days(), "seed " + seed + ", " + id);
        FitQuestion question =
            FitQuestion.of(
                    week.bookings().stream()
                        .filter(b -> b.id().equals(id))
                        .findFirst()
                        .orElseThrow())
                .withOtherDays(FitQuestion.OtherDays.NEVER);
        assertEquals(
            fresh.ask(question).sameDays(), whole.without(id).ask(question).sameDays(), "" + seed);
        taken++;
      }
      assertThrows(IllegalArgumentException.class, () -> whole.without("nobody"));
    }
    assertTrue(taken > 20, "taken out: " + taken);
  }
}
