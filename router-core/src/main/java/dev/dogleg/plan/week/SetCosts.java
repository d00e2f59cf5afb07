package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.plan.SetDays;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;

/**
 * Exact costs of serving just a set on a van-day, by the day engine, remembered once asked for; a
 * set that cannot be served costs {@link RelaxedDay#NEVER}. Where promises have a price, the odds
 * of the finished day are part of it. One thread a kind of van-day.
 */
final class SetCosts {
  private static final long EFFORT = 2_000_000;
  private static final long MORE_EFFORT = 50_000_000;

  /** In place of a guess. */
  private static final long UNKNOWN = RelaxedDay.NEVER;

  /** Steps that one answer counts for. */
  private static final long STEPS = 2_000;

  /** What a set costs at least and at most; equal but where the day engine's effort was spent. */
  private record Cost(long least, long most) {}

  private static final Cost NEVER = new Cost(RelaxedDay.NEVER, RelaxedDay.NEVER);

  /** What is known of one kind of van-day, and its engine once it was needed. */
  private static final class OfKind {
    private final Map<BookingSet, Cost> known = new HashMap<>();
    private SetDays engine;
  }

  private final Map<VanKind, OfKind> kinds = new HashMap<>();
  private final WorkCount work;

  SetCosts(WeekModel model, WorkCount work) {
    this.work = work;
    model.kinds().forEach(kind -> kinds.put(kind, new OfKind()));
  }

  /** {@return cost of the best day known for a set of local bookings, extra prices included} */
  long of(VanKind kind, int[] locals) {
    return cost(kind, locals, UNKNOWN).most;
  }

  /**
   * {@return what a set of local bookings costs at least}
   *
   * @param guess what it costs at least, or what some day of it costs, extra prices included;
   *     {@link RelaxedDay#NEVER} without a guess
   */
  long least(VanKind kind, int[] locals, long guess) {
    return cost(kind, locals, guess).least;
  }

  private Cost cost(VanKind kind, int[] locals, long guess) {
    if (locals.length == 0) {
      return new Cost(0, 0);
    }
    OfKind own = kinds.get(kind);
    return own.known.computeIfAbsent(BookingSet.of(locals), set -> exact(kind, own, locals, guess));
  }

  private Cost exact(VanKind kind, OfKind own, int[] set, long guess) {
    int[] locals = set.clone();
    Arrays.sort(locals);
    work.count(STEPS);
    long extra = kind.extraSixtieths(locals);
    if (kind.pricesPromises()) {
      return kind.promises()
          .best(locals, MORE_EFFORT)
          .map(best -> new Cost(best.leastSixtieths() + extra, best.sumSixtieths() + extra))
          .orElse(NEVER);
    }
    if (locals.length <= SetDays.MOST) {
      if (own.engine == null) {
        own.engine = new SetDays(kind.model());
      }
      SetDays.Bounds bounds =
          guess < UNKNOWN
              ? own.engine.bounds(locals, EFFORT, Math.max(0, guess - extra))
              : own.engine.bounds(locals, EFFORT);
      if (bounds.least() >= SetDays.NEVER) {
        return NEVER;
      }
      if (bounds.least() == bounds.most()) {
        return new Cost(bounds.least() + extra, bounds.most() + extra);
      }
    }
    return slowly(kind, locals, extra);
  }

  /** A hard set, or one of very many visits: whatever it costs, it must be proven. */
  private static Cost slowly(VanKind kind, int[] locals, long extra) {
    DayPlan plan = DayPlanner.plan(kind.request(locals, MORE_EFFORT));
    if (plan.proof().leftOutBound() > 0) {
      return NEVER;
    }
    if (plan.leftOutBooked() > 0) {
      return new Cost(plan.proof().costBound() + extra, RelaxedDay.NEVER);
    }
    boolean proven = plan.proof().kind() == Proof.Kind.PROVEN_BEST;
    long most = plan.costSixtieths() + extra;
    return new Cost(proven ? most : plan.proof().costBound() + extra, most);
  }
}
