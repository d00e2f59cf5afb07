package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.plan.DayPlanner;
import java.util.HashMap;
import java.util.Map;

/**
 * Exact costs of serving just a set on a van-day, remembered once asked for; a set that cannot be
 * served costs {@link RelaxedDay#NEVER}.
 */
final class SetCosts {
  private static final long EFFORT = 50_000_000;

  private final Map<VanKind, Map<BookingSet, Long>> known = new HashMap<>();
  private final WorkCount work;
  private long asked;

  SetCosts(WeekModel model, WorkCount work) {
    this.work = work;
    model.kinds().forEach(kind -> known.put(kind, new HashMap<>()));
  }

  /** {@return cost of a set of local bookings, extra prices included} */
  long of(VanKind kind, int[] locals) {
    if (locals.length == 0) {
      return 0;
    }
    return known.get(kind).computeIfAbsent(BookingSet.of(locals), set -> exact(kind, locals));
  }

  private long exact(VanKind kind, int[] locals) {
    asked++;
    DayRequest request = kind.request(locals, EFFORT);
    DayPlan plan = DayPlanner.plan(request);
    work.count(1000);
    if (plan.leftOutBooked() > 0) {
      // A day that might still serve all is never called impossible.
      return plan.proof().leftOutBound() > 0 ? RelaxedDay.NEVER : plan.proof().costBound();
    }
    long extra = 0;
    for (int local : locals) {
      extra += kind.extraSixtieths(local);
    }
    return plan.costSixtieths() + extra;
  }

  /** {@return number of sets computed} */
  long asked() {
    return asked;
  }
}
