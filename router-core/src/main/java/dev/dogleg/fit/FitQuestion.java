package dev.dogleg.fit;

import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import java.util.List;
import java.util.Objects;

/**
 * May this newcomer come?
 *
 * @param newcomer the booking asked for; its choices are the van-days on which it may be
 * @param days the week's van-days with travel times and terms that know the newcomer, the same
 *     shifts in the same order, every place of the week by its old number; empty: the week's own
 * @param top so many offers are worked out in full, best first, 1..100
 * @param otherDays when tier B is asked
 * @param otherDaysEffort limit of tier B in solver steps, 1 or more
 */
public record FitQuestion(
    WeekBooking newcomer, List<WeekDay> days, int top, OtherDays otherDays, long otherDaysEffort) {

  /** When tier B is asked, in which other visits may change their day. */
  public enum OtherDays {
    /** Never. */
    NEVER,
    /** Where no van-day of tier A has room. */
    WHERE_NO_DAY_FITS,
    /** Always. */
    ALWAYS
  }

  /** Effort of tier B where nobody names one: seconds. */
  public static final long USUAL_EFFORT = 100_000_000L;

  /** Checks the ranges. */
  public FitQuestion {
    Objects.requireNonNull(newcomer, "newcomer");
    Objects.requireNonNull(otherDays, "otherDays");
    days = List.copyOf(days);
    if (top < 1 || top > 100 || otherDaysEffort < 1) {
      throw new IllegalArgumentException("out of range: " + top + ", " + otherDaysEffort);
    }
  }

  /**
   * A question about one day each, tier B where none has room.
   *
   * @param newcomer the booking asked for; its places stand in the week's travel times
   * @return the question, for the best three offers
   */
  public static FitQuestion of(WeekBooking newcomer) {
    return new FitQuestion(newcomer, List.of(), 3, OtherDays.WHERE_NO_DAY_FITS, USUAL_EFFORT);
  }

  /**
   * The same question with another use of tier B.
   *
   * @param when when tier B is asked
   * @return the question
   */
  public FitQuestion withOtherDays(OtherDays when) {
    return new FitQuestion(newcomer, days, top, when, otherDaysEffort);
  }
}
