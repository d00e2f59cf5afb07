package dev.dogleg.fit;

import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * What tier B says: the week with the newcomer, where visits that are not told or fixed may change
 * their day.
 *
 * @param verdict whether it fits so
 * @param request the week as it was asked: the planned bookings and the newcomer, all counted
 * @param plan the week found; where it does not fit, one that leaves somebody out
 * @param proven whether no such week is better, or that there is none
 * @param day van-day of the newcomer, where it fits
 * @param extraCostSixtieths what the week costs more than before, in sixtieths of a second of
 *     driving; 0 where it does not fit
 * @param moved bookings that change their van-day, by id
 */
public record WeekOffer(
    FitAnswer.Verdict verdict,
    WeekRequest request,
    WeekPlan plan,
    boolean proven,
    OptionalInt day,
    long extraCostSixtieths,
    List<Move> moved) {
  /** Checks that nothing is null. */
  public WeekOffer {
    Objects.requireNonNull(verdict, "verdict");
    Objects.requireNonNull(request, "request");
    Objects.requireNonNull(plan, "plan");
    Objects.requireNonNull(day, "day");
    moved = List.copyOf(moved);
  }

  /**
   * A booking that changes its day.
   *
   * @param bookingId which
   * @param from van-day before
   * @param to van-day with the newcomer
   */
  public record Move(String bookingId, int from, int to) {}
}
