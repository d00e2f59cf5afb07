package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.WeekAudit;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StoppedWeekTest {
  /** Stops while searching, while filling sets, and while proving: asked so many times before. */
  @ParameterizedTest(name = "after {0} questions")
  @ValueSource(ints = {0, 1, 1_000, 3_000, 20_000})
  void whoeverStopsEarlyKeepsASoundWeekThatSaysSo(int questions) {
    WeekRequest week =
        CustomaryWeeks.week(1, new CustomaryWeeks.Shape(20, 1, 1.15, true, 500_000_000L));
    AtomicInteger asked = new AtomicInteger();
    WeekPlan plan =
        WeekPlanner.plan(week, WeekProgress.NONE, () -> asked.incrementAndGet() > questions);
    assertEquals(List.of(), WeekAudit.check(week, plan));
    assertTrue(
        plan.proof().kind() == Proof.Kind.CLOCK_LIMIT || asked.get() <= questions,
        "asked " + asked + " times: " + plan.proof());
    assertTrue(asked.get() <= questions + 5_000, "asked on after the stop: " + asked.get());
  }
}
