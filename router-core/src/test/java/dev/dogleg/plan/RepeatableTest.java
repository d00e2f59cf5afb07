package dev.dogleg.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.Visit;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** The same day gives the same plan, whatever the order of its rows and whoever asks at once. */
class RepeatableTest {
  private static DayRequest with(DayRequest request, List<Visit> visits, long effort) {
    return new DayRequest(
        request.shift(), visits, request.travel(), request.prices(), request.seed(), effort);
  }

  @Test
  void thePlanDoesNotDependOnTheOrderOfTheRows() {
    for (int seed = 0; seed < 60; seed++) {
      DayRequest request = SeededDays.day(seed, 1 + seed % 6, 60, seed % 2 == 0);
      List<Visit> shuffled = new ArrayList<>(request.visits());
      SplittableRandom random = new SplittableRandom(seed);
      for (int k = shuffled.size() - 1; k > 0; k--) {
        shuffled.add(shuffled.remove(random.nextInt(k + 1)));
      }
      DayPlan plan = DayPlanner.plan(request);
      DayPlan again = DayPlanner.plan(with(request, shuffled, request.effort()));
      assertEquals(plan, again, "seed " + seed);
    }
  }

  @Test
  void fourThreadsGiveTheSamePlans() {
    List<DayPlan> alone = IntStream.range(0, 40).mapToObj(RepeatableTest::planned).toList();
    List<DayPlan> together =
        IntStream.range(0, 40).parallel().mapToObj(RepeatableTest::planned).toList();
    assertEquals(alone, together);
  }

  private static DayPlan planned(int seed) {
    return DayPlanner.plan(SeededDays.day(seed, 1 + seed % 6, 1, true));
  }

  @Test
  void anEffortLimitEndsAtTheSamePlanAndItsBoundHolds() {
    for (int seed = 0; seed < 4; seed++) {
      DayRequest request = CustomaryDays.day(seed, 13, 30);
      DayPlan best = DayPlanner.plan(request);
      assertEquals(Proof.Kind.PROVEN_BEST, best.proof().kind());
      for (long effort : new long[] {1, 1000, 120_000, 140_000}) {
        DayRequest limited = with(request, request.visits(), effort);
        DayPlan plan = DayPlanner.plan(limited);
        assertEquals(plan, DayPlanner.plan(limited), "seed " + seed + " effort " + effort);
        assertTrue(plan.costSixtieths() >= best.costSixtieths() || plan.leftOutBooked() > 0);
        assertTrue(
            plan.proof().leftOutBound() < best.leftOutBooked()
                || plan.proof().costBound() <= best.costSixtieths(),
            "seed " + seed + " effort " + effort);
      }
    }
  }

  @Test
  void aSignalEndsThePlanAndItSaysSo() {
    DayPlan plan = DayPlanner.plan(CustomaryDays.day(1, 40, 0), () -> true);
    assertEquals(Proof.Kind.CLOCK_LIMIT, plan.proof().kind());
  }
}
