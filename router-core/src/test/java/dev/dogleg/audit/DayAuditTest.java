package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import org.junit.jupiter.api.Test;

class DayAuditTest {
  @Test
  void thePlanWorkedByHandIsSound() {
    assertEquals("", audit(SmallDay.request(), SmallDay.plan()));
  }

  private static String audit(DayRequest request, DayPlan plan) {
    return SmallDay.text(DayAudit.check(request, plan));
  }
}
