package dev.dogleg.itinerary;

import java.util.List;
import java.util.Objects;

/**
 * One stop to be made on one of several van-days.
 *
 * @param id unique in a request; ties between plans are broken by it
 * @param counted true: leaving it out counts, before any saving; false: it costs {@code
 *     leftOutSixtieths} alone
 * @param leftOutSixtieths price of leaving it out, 0..2^38; of counted bookings those with a lower
 *     price are left out first
 * @param choices by van-day, ascending, at most one each; each visit has this id, and is booked
 *     just where this is counted
 */
public record WeekBooking(
    String id, boolean counted, long leftOutSixtieths, List<DayChoice> choices) {
  /** Checks ids and order. */
  public WeekBooking {
    Objects.requireNonNull(id, "id");
    choices = List.copyOf(choices);
    if (leftOutSixtieths < 0 || leftOutSixtieths > 1L << 38) {
      throw new IllegalArgumentException(
          "leftOutSixtieths must lie in 0..2^38, was " + leftOutSixtieths);
    }
    for (int c = 0; c < choices.size(); c++) {
      Visit visit = choices.get(c).visit();
      if (!visit.id().equals(id)
          || visit.booked() != counted
          || (c > 0 && choices.get(c).day() <= choices.get(c - 1).day())) {
        throw new IllegalArgumentException("booking " + id + " has a wrong choice: " + c);
      }
    }
  }
}
