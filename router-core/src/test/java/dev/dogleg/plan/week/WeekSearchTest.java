package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.oracle.WeekOracle;
import dev.dogleg.schedule.OrderCost;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class WeekSearchTest {
  private static final long EFFORT = 1_000_000_000L;

  /** The first search alone, against full enumeration: never better, nine of ten times equal. */
  @Test
  void nineOfTenSmallWeeksAreFoundAtTheirBest() {
    List<String> missed = new ArrayList<>();
    LongStream.rangeClosed(1, 60)
        .forEach(
            seed -> {
              WeekRequest week = RandomWeeks.week(seed, 2 + (int) (seed % 6), 2, seed % 3 > 0);
              WeekOracle.Best best = WeekOracle.best(week);
              WeekChoice found = exact(week, 300);
              assertTrue(
                  found.leftOutCounted() > best.leftOutCounted()
                      || (found.leftOutCounted() == best.leftOutCounted()
                          && found.costSixtieths() >= best.costSixtieths()),
                  "better than best, seed " + seed);
              if (found.leftOutCounted() != best.leftOutCounted()
                  || found.costSixtieths() != best.costSixtieths()) {
                missed.add(
                    seed
                        + ": "
                        + found.leftOutCounted()
                        + " left out instead of "
                        + best.leftOutCounted()
                        + ", cost "
                        + found.costSixtieths()
                        + " instead of "
                        + best.costSixtieths());
              }
            });
    assertTrue(missed.size() <= 6, "missed: " + missed);
  }

  /** Ten bookings of which three must go together: one at a time none of them could be served. */
  @Test
  void bookingsThatMustGoTogetherArePutInTogether() {
    WeekRequest free = CustomaryWeeks.week(4, new CustomaryWeeks.Shape(10, 1, 0.7, true, EFFORT));
    Set<String> three =
        free.bookings().stream()
            .filter(booking -> booking.choices().size() == free.days().size())
            .limit(3)
            .map(WeekBooking::id)
            .collect(Collectors.toSet());
    assertEquals(3, three.size());
    DayRule rule = new DayRule.Together("household", OptionalLong.empty(), three);
    List<WeekDay> days =
        free.days().stream()
            .map(day -> new WeekDay(day.shift(), day.travel(), DayTerms.of(List.of(rule))))
            .toList();
    WeekRequest week =
        new WeekRequest(days, free.bookings(), free.prices(), free.seed(), free.effort());
    WeekChoice found = exact(week, 300);
    assertEquals(
        WeekPlanner.plan(week).leftOutCounted(), found.leftOutCounted(), "found " + found.sets());
    assertEquals(0, found.leftOutCounted());
  }

  /** What the search goes by is near what the day engine says of the same orders. */
  @Test
  void estimatesAreWithinOnePartInFiftyOfTheDayEngine() {
    WeekRequest week = CustomaryWeeks.week(3, new CustomaryWeeks.Shape(20, 1, 1.15, true, EFFORT));
    WeekModel model = new WeekModel(week);
    WorkCount work = new WorkCount(EFFORT, () -> false);
    WeekSearch search = new WeekSearch(model, new SetCosts(model, work), 1, work);
    search.run(1_000, better -> {});
    LegTable legs = new LegTable(week.days().get(0).travel(), 8 * 3600, 17 * 3600);
    int asked = 0;
    for (KnownOrders orders : search.orders()) {
      OrderEstimate estimate = new OrderEstimate(orders.kind(), legs);
      OrderCost exact = new OrderCost(orders.kind().model());
      for (KnownOrders.Known day : orders.inOrder()) {
        long guess = estimate.of(day.order(), RelaxedDay.NEVER);
        long cost = exact.of(day.order(), OrderCost.IMPOSSIBLE);
        if (cost < OrderCost.IMPOSSIBLE && guess < RelaxedDay.NEVER) {
          asked++;
          assertTrue(Math.abs(cost - guess) <= cost / 50, cost + " was guessed to be " + guess);
        }
      }
    }
    assertTrue(asked >= 40, "only " + asked);
  }

  @Test
  void oneSeedIsOneWeek() {
    WeekRequest week = CustomaryWeeks.week(2, new CustomaryWeeks.Shape(25, 1, 1.15, true, EFFORT));
    assertEquals(exact(week, 100), exact(week, 100));
  }

  private static WeekChoice exact(WeekRequest week, int rounds) {
    WeekModel model = new WeekModel(week);
    WorkCount work = new WorkCount(EFFORT, () -> false);
    SetCosts costs = new SetCosts(model, work);
    WeekChoice found = new WeekSearch(model, costs, week.seed(), work).run(rounds, better -> {});
    // Kinds are told apart by identity, so weeks are compared by what they are worth.
    WeekChoice judged = WeekChoice.of(model, costs, found.sets());
    return new WeekChoice(List.of(), judged.leftOutCounted(), judged.costSixtieths());
  }
}
