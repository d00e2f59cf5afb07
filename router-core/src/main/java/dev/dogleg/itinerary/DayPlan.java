package dev.dogleg.itinerary;

import java.util.List;
import java.util.Objects;

/**
 * A planned day. One without visits has no stops at all: the van stays at home.
 *
 * @param shift the shift it is for
 * @param stops events in order: {@code LEAVE}, visits and break, {@code HOME}; or empty
 * @param noRoom what is left out, in id order
 * @param leftOutBooked number of booked visits left out
 * @param costSixtieths cost: see {@link Prices}; includes the price of every waiting-list visit
 *     left out
 * @param proof how far from perfect it can be
 */
public record DayPlan(
    DayShift shift,
    List<PlannedStop> stops,
    List<NoRoom> noRoom,
    int leftOutBooked,
    long costSixtieths,
    Proof proof) {

  /** Checks that nothing is null or negative. */
  public DayPlan {
    Objects.requireNonNull(shift, "shift");
    Objects.requireNonNull(proof, "proof");
    stops = List.copyOf(stops);
    noRoom = List.copyOf(noRoom);
    if (leftOutBooked < 0 || costSixtieths < 0) {
      throw new IllegalArgumentException("counts and costs are 0 or more");
    }
  }
}
