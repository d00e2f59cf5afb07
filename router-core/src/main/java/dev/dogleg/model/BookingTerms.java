package dev.dogleg.model;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalLong;

/**
 * What a booking says beyond dates and hard limits: for planning several days together.
 *
 * @param moves whether it may be moved off its dates
 * @param valueMinor what serving it is worth where it is on the waiting list, minor units, or empty
 * @param likes preferred days and hours, or empty
 * @param groomerId the groomer it needs, or empty
 * @param vanId the van it needs, or empty
 * @param lock what of the earlier plan stays, or empty
 */
public record BookingTerms(
    Moves moves,
    OptionalLong valueMinor,
    Optional<When> likes,
    Optional<String> groomerId,
    Optional<String> vanId,
    Optional<Lock> lock) {

  /** Nothing said. */
  public static final BookingTerms NONE =
      new BookingTerms(
          Moves.NEVER,
          OptionalLong.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());

  /** Checks that nothing is null or negative. */
  public BookingTerms {
    Objects.requireNonNull(moves, "moves");
    Objects.requireNonNull(likes, "likes");
    Objects.requireNonNull(groomerId, "groomerId");
    Objects.requireNonNull(vanId, "vanId");
    Objects.requireNonNull(lock, "lock");
    if (valueMinor.orElse(0) < 0) {
      throw new IllegalArgumentException("valueMinor must be 0 or more");
    }
  }
}
