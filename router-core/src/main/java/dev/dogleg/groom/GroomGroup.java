package dev.dogleg.groom;

import java.util.List;
import java.util.OptionalInt;

/**
 * Pets of one booking.
 *
 * @param pets one question a pet, at least one, in the order of the booking
 * @param ownMinutes the groomer's own groom minutes for all of them together, 1..720, without stop
 *     minutes; empty: each from its own question
 */
public record GroomGroup(List<GroomQuestion> pets, OptionalInt ownMinutes) {

  /** Checks the ranges. */
  public GroomGroup {
    pets = List.copyOf(pets);
    if (pets.isEmpty()) {
      throw new IllegalArgumentException("a booking needs at least one pet");
    }
    int own = ownMinutes.orElse(1);
    if (own < 1 || own > 720) {
      throw new IllegalArgumentException("ownMinutes must lie in 1..720, was " + own);
    }
  }
}
