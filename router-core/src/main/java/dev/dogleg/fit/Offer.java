package dev.dogleg.fit;

import dev.dogleg.arrival.TimeToTell;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import java.util.List;
import java.util.Objects;

/**
 * A van-day on which a newcomer fits while all other van-days stay as they are.
 *
 * @param day number of the van-day
 * @param request the day as it was asked: all its visits and the newcomer, booked
 * @param before the day without the newcomer, the best of its visits
 * @param after the day with it, all its visits kept
 * @param proven whether no order of these visits is better
 * @param toTell the span that can be told to the newcomer now; holds the planned arrival
 * @param extraCostSixtieths what it costs the day, in sixtieths of a second of driving; the price
 *     of the choice is part of it
 * @param doors every visit of the day with the newcomer, in its order
 * @param changes what changes for the day
 */
public record Offer(
    int day,
    DayRequest request,
    DayPlan before,
    DayPlan after,
    boolean proven,
    TimeToTell toTell,
    long extraCostSixtieths,
    List<DoorChange> doors,
    DayChange changes) {
  /** Checks that nothing is null. */
  public Offer {
    Objects.requireNonNull(request, "request");
    Objects.requireNonNull(before, "before");
    Objects.requireNonNull(after, "after");
    Objects.requireNonNull(toTell, "toTell");
    Objects.requireNonNull(changes, "changes");
    doors = List.copyOf(doors);
  }

  /**
   * Sums of the day after less those before; each may be below 0.
   *
   * @param driveSeconds extra driving
   * @param driveMetres extra length
   * @param waitSeconds extra waiting
   * @param endSeconds how much later the van is home; from the shift's start where it had no visit
   */
  public record DayChange(int driveSeconds, int driveMetres, int waitSeconds, int endSeconds) {}

  /** {@return the newcomer's own event} */
  public PlannedStop newcomer() {
    return after.stops().stream()
        .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
        .filter(stop -> stop.visitId().equals(toTell.visitId()))
        .findFirst()
        .orElseThrow();
  }

  /** {@return the least delay of a door of the day that breaks a hard limit, in seconds} */
  public int spareSeconds() {
    return after.stops().stream()
        .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
        .mapToInt(PlannedStop::spareSeconds)
        .min()
        .orElse(0);
  }
}
