package dev.dogleg.itinerary;

import java.util.Objects;

/**
 * One event of a planned day. All times are elapsed seconds since local midnight.
 *
 * @param kind what happens
 * @param place where
 * @param visitId id of the visit; empty for {@code LEAVE}, {@code WATER} and {@code HOME}; for
 *     {@code BREAK} the visit at whose door it is taken
 * @param arriveSeconds at the place; for {@code LEAVE} equal to {@code leaveSeconds}; for a break
 *     after a groom equal to the end of that groom; for a visit after a break at the same door the
 *     arrival at the door, before the break
 * @param startSeconds start of the service or of the break
 * @param leaveSeconds leaving the place, or going over to the next event at the same place
 * @param driveSeconds drive that ended at this event, 0 where it is at the place of the event
 *     before
 * @param driveMetres its length
 * @param waitSeconds all waiting between the end of the event before (and its drive) and the start
 *     of this one, and from the end of this one's service to its leaving
 * @param spareSeconds the delay of this event's arrival that breaks no hard limit of it or of any
 *     later one
 */
public record PlannedStop(
    Kind kind,
    int place,
    String visitId,
    int arriveSeconds,
    int startSeconds,
    int leaveSeconds,
    int driveSeconds,
    int driveMetres,
    int waitSeconds,
    int spareSeconds) {

  /** What happens at an event. */
  public enum Kind {
    /** The van leaves the start place. */
    LEAVE,
    /** A visit. */
    VISIT,
    /** The groomer's break. */
    BREAK,
    /** Tanks are filled and emptied. */
    WATER,
    /** The van reaches the end place. */
    HOME
  }

  /** Checks that nothing is null or negative; the order of times is the audit's matter. */
  public PlannedStop {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(visitId, "visitId");
    if (place < 0 || driveSeconds < 0 || driveMetres < 0) {
      throw new IllegalArgumentException("place, drive and length are 0 or more");
    }
  }
}
