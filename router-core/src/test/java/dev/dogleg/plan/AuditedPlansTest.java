package dev.dogleg.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.audit.RandomDay;
import dev.dogleg.itinerary.DayRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The planner and the audit read the timing page alike: no plan of a seeded day has a finding. */
class AuditedPlansTest {
  @Test
  void noPlanOfADayInWholeMinutesOrSecondsHasAFinding() {
    List<String> found = new ArrayList<>();
    for (int seed = 1; seed <= 150; seed++) {
      boolean minutes = seed % 2 == 0;
      int n = 1 + seed % (minutes ? 4 : 7);
      DayRequest request = SeededDays.day(seed, n, minutes ? 60 : 1, seed % 3 > 0);
      audit("seeded day " + seed, request, found);
    }
    assertEquals(List.of(), found);
  }

  @Test
  void noPlanOfATightDayWithAWaitingListHasAFinding() {
    List<String> found = new ArrayList<>();
    for (int seed = 1; seed <= 150; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      audit("tight day " + seed, RandomDay.request(random, 1 + seed % 7, true), found);
    }
    assertEquals(List.of(), found);
  }

  private static void audit(String name, DayRequest request, List<String> found) {
    DayAudit.check(request, DayPlanner.plan(request)).stream()
        .forEach(finding -> found.add(name + ": " + finding));
  }
}
