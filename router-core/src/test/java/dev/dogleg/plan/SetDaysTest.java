package dev.dogleg.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.schedule.DayModel;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Every set of a day's visits: its bound, its best day, and the day planned with them alone. */
class SetDaysTest {

  @Test
  void aSetCostsWhatItsOwnDayCostsAndNoLessThanItsBound() {
    int possible = 0;
    for (int seed = 0; seed < 40; seed++) {
      DayRequest request = SeededDays.day(seed, 5, seed % 2 == 0 ? 60 : 1, true);
      DayModel day = DayModel.of(request);
      SetBounds bounds = new SetBounds(day, 5, 1000);
      Map<Long, Long> bound = new HashMap<>();
      for (int k = 0; k < bounds.size(); k++) {
        bound.put(bounds.set(k), bounds.bound(k));
      }
      SetDays days = new SetDays(day);
      for (long set = 1; set < 32; set++) {
        String name = "seed " + seed + " set " + set;
        Optional<SetDays.Best> best = days.best(set, DayRequest.USUAL_EFFORT);
        DayPlan plan = DayPlanner.plan(booked(request, day, set));
        assertEquals(plan.leftOutBooked() == 0, best.isPresent(), name);
        if (best.isPresent()) {
          possible++;
          assertEquals(plan.costSixtieths(), best.get().costSixtieths(), name);
          assertTrue(best.get().proven(), name);
          assertTrue(bound.containsKey(set) && bound.get(set) <= plan.costSixtieths(), name);
        }
      }
    }
    assertTrue(possible > 100, "sets that have a day: " + possible);
  }

  private static DayRequest booked(DayRequest request, DayModel day, long set) {
    List<Visit> visits = new ArrayList<>();
    for (int v = 0; v < day.size(); v++) {
      if ((set >>> v & 1) != 0) {
        Visit visit = day.visit(v);
        visits.add(
            new Visit(
                visit.id(),
                visit.place(),
                visit.serviceSeconds(),
                true,
                0,
                visit.arriveWithin(),
                visit.doneBySeconds(),
                visit.vanWithin(),
                visit.first()));
      }
    }
    return new DayRequest(
        request.shift(), visits, request.travel(), request.prices(), 1, request.effort());
  }
}
