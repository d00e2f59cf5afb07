package dev.dogleg.arrival;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.plan.CustomaryDays;
import dev.dogleg.plan.DayPlanner;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;

/**
 * A planned day with spreads, by seed: known and new pets as in the starter tables.
 *
 * @param request the day
 * @param plan its plan
 * @param services spread of each visit
 */
record SpreadDays(DayRequest request, DayPlan plan, Map<String, ServiceSpread> services) {
  /** Fixed stop seconds at each door. */
  private static final int AT_THE_DOOR = 600;

  static SpreadDays of(long seed, int doors, int windows) {
    DayRequest request = CustomaryDays.day(seed, doors, windows);
    SplittableRandom random = new SplittableRandom(seed);
    Map<String, ServiceSpread> services = new HashMap<>();
    for (Visit visit : request.visits()) {
      double spread = random.nextInt(4) == 0 ? 0.22 : 0.14;
      services.put(
          visit.id(), new ServiceSpread(AT_THE_DOOR, visit.serviceSeconds() - AT_THE_DOOR, spread));
    }
    return new SpreadDays(request, DayPlanner.plan(request), services);
  }
}
