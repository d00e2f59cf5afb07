package dev.dogleg.itinerary;

import java.util.Objects;

/**
 * A van-day on which a booking may be served.
 *
 * @param day number of the van-day in the request, from 0
 * @param visit what it would be there; its id is the booking's
 * @param extraSixtieths price of this choice besides the day's cost, 0..2^38
 */
public record DayChoice(int day, Visit visit, long extraSixtieths) {
  /** Checks the ranges. */
  public DayChoice {
    Objects.requireNonNull(visit, "visit");
    if (day < 0 || extraSixtieths < 0 || extraSixtieths > 1L << 38) {
      throw new IllegalArgumentException("choice out of range: " + day + ", " + extraSixtieths);
    }
  }
}
