package dev.dogleg.oracle;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;

/**
 * Tries every way to give the bookings of a small week to its van-days; each day by {@link
 * DayOracle}.
 */
public final class WeekOracle {
  private final WeekRequest request;
  private final List<long[]> costsBySet = new ArrayList<>();
  private final int[] choiceOf;
  private int leftOut = Integer.MAX_VALUE;
  private long cost = Long.MAX_VALUE;
  private int[] best;

  /**
   * The best week.
   *
   * @param leftOutCounted fewest counted bookings left out
   * @param costSixtieths least cost with so many
   * @param choices for each booking the number of its choice taken in one such week; -1 where left
   *     out
   */
  public record Best(int leftOutCounted, long costSixtieths, List<Integer> choices) {}

  private WeekOracle(WeekRequest request, Function<DayRequest, long[]> costsOf) {
    this.request = request;
    choiceOf = new int[request.bookings().size()];
    for (int day = 0; day < request.days().size(); day++) {
      costsBySet.add(costsOf.apply(request.asking(day)));
    }
    best = choiceOf.clone();
  }

  /**
   * The best week.
   *
   * @param request a week of few bookings and seconds
   * @return its figures
   */
  public static Best best(WeekRequest request) {
    return best(request, DayOracle::costsBySet);
  }

  /**
   * The best week where days cost otherwise.
   *
   * @param request a week of few bookings
   * @param costsOf for a day with everything that may be asked of it the cost of serving just each
   *     set of its visits, by bits; {@link DayOracle#NEVER} where it cannot
   * @return its figures
   */
  public static Best best(WeekRequest request, Function<DayRequest, long[]> costsOf) {
    WeekOracle oracle = new WeekOracle(request, costsOf);
    oracle.give(0);
    return new Best(oracle.leftOut, oracle.cost, Arrays.stream(oracle.best).boxed().toList());
  }

  private void give(int booking) {
    if (booking == choiceOf.length) {
      consider();
      return;
    }
    for (int c = -1; c < request.bookings().get(booking).choices().size(); c++) {
      choiceOf[booking] = c;
      give(booking + 1);
    }
  }

  private void consider() {
    int[] sets = new int[costsBySet.size()];
    int[] asked = new int[costsBySet.size()];
    int out = 0;
    long sum = 0;
    for (int b = 0; b < choiceOf.length; b++) {
      WeekBooking booking = request.bookings().get(b);
      if (choiceOf[b] < 0) {
        out += booking.counted() ? 1 : 0;
        sum += booking.leftOutSixtieths();
      }
      for (int c = 0; c < booking.choices().size(); c++) {
        DayChoice choice = booking.choices().get(c);
        if (c == choiceOf[b]) {
          sets[choice.day()] |= 1 << asked[choice.day()];
          sum += choice.extraSixtieths();
        }
        asked[choice.day()]++;
      }
    }
    for (int day = 0; day < sets.length; day++) {
      long one = costsBySet.get(day)[sets[day]];
      if (one >= DayOracle.NEVER) {
        return;
      }
      sum += one;
    }
    if (out < leftOut || (out == leftOut && sum < cost)) {
      leftOut = out;
      cost = sum;
      best = choiceOf.clone();
    }
  }
}
