package dev.dogleg.plan.zone;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.time.DayOfWeek;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Days for zones: the answer.
 *
 * @param now the week with the days as they are
 * @param best the best week found: {@code now} where no other is better
 * @param free the week with every zone open on all its possible days: no assignment can be better
 * @param proven whether no assignment has a better week
 * @param leastLeftOut no assignment leaves out fewer counted visits
 * @param leastSixtieths no assignment that leaves out so many costs less
 * @param weeks number of weeks planned
 */
public record ZoneDayPlan(
    Week now,
    Week best,
    Week free,
    boolean proven,
    int leastLeftOut,
    long leastSixtieths,
    int weeks) {

  /**
   * A planned week under an assignment.
   *
   * @param days weekdays of each zone
   * @param request what the planner was asked
   * @param plan what it answered
   */
  public record Week(List<Set<DayOfWeek>> days, WeekRequest request, WeekPlan plan) {
    /** Copies the days. */
    public Week {
      days = days.stream().map(Set::copyOf).toList();
      Objects.requireNonNull(request, "request");
      Objects.requireNonNull(plan, "plan");
    }

    /** {@return seconds on the road in the whole week, homes included} */
    public int driveSeconds() {
      return plan.days().stream()
          .map(DayPlan::stops)
          .flatMap(List::stream)
          .mapToInt(PlannedStop::driveSeconds)
          .sum();
    }

    /** Whether this week is better than another: fewer left out, then cheaper. */
    boolean betterThan(Week other) {
      return plan.leftOutCounted() != other.plan.leftOutCounted()
          ? plan.leftOutCounted() < other.plan.leftOutCounted()
          : plan.costSixtieths() < other.plan.costSixtieths();
    }
  }

  /** Checks that nothing is null. */
  public ZoneDayPlan {
    Objects.requireNonNull(now, "now");
    Objects.requireNonNull(best, "best");
    Objects.requireNonNull(free, "free");
  }

  /** {@return whether other days are better than those of now} */
  public boolean better() {
    return best.betterThan(now);
  }
}
