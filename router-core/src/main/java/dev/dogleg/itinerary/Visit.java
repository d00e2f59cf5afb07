package dev.dogleg.itinerary;

import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Objects;

/**
 * One stop to be made: one client's pets of the day, at one door.
 *
 * @param id ids of its bookings joined by {@code ;}, unique in a request; ties between plans are
 *     broken by it
 * @param place door, a number of the request's travel times
 * @param serviceSeconds from groom start to ready to leave: stop minutes and all grooms, 0..43,200
 * @param booked true: leaving it out comes before any saving; false: on the waiting list
 * @param leftOutSixtieths cost of leaving out a visit of the waiting list, 0 or more; 0 where
 *     booked
 * @param arriveWithin spans for arrival at the door, sorted, apart, at least one; an early van
 *     waits for a start
 * @param doneBySeconds last second at which the service may end; {@link TimeWindow#DAY_END} for no
 *     limit
 * @param vanWithin spans of which one must hold the whole stay, arrival to leaving; sorted, apart,
 *     at least one
 * @param first whether it must be the first stop of the day
 */
public record Visit(
    String id,
    int place,
    int serviceSeconds,
    boolean booked,
    long leftOutSixtieths,
    List<TimeWindow> arriveWithin,
    int doneBySeconds,
    List<TimeWindow> vanWithin,
    boolean first) {

  /** Longest service, in seconds. */
  public static final int LONGEST_SERVICE = 43_200;

  /** No limit on arrival or on the van. */
  public static final List<TimeWindow> ANY_TIME = List.of(TimeWindow.ALWAYS);

  /** Checks ranges and the order of windows. */
  public Visit {
    Objects.requireNonNull(id, "id");
    arriveWithin = ordered("arriveWithin", arriveWithin);
    vanWithin = ordered("vanWithin", vanWithin);
    if (place < 0) {
      throw new IllegalArgumentException("places are numbers from 0");
    }
    if (serviceSeconds < 0 || serviceSeconds > LONGEST_SERVICE) {
      throw new IllegalArgumentException(
          "serviceSeconds must lie in 0..43200, was " + serviceSeconds);
    }
    if (leftOutSixtieths < 0 || leftOutSixtieths > 1L << 38 || (booked && leftOutSixtieths != 0)) {
      throw new IllegalArgumentException(
          "leftOutSixtieths must lie in 0..2^38, and be 0 where booked, was " + leftOutSixtieths);
    }
    if (doneBySeconds < 0 || doneBySeconds > TimeWindow.DAY_END) {
      throw new IllegalArgumentException("doneBySeconds out of range: " + doneBySeconds);
    }
  }

  private static List<TimeWindow> ordered(String name, List<TimeWindow> windows) {
    List<TimeWindow> copy = List.copyOf(windows);
    if (copy.isEmpty()) {
      throw new IllegalArgumentException(name + " needs at least one window");
    }
    for (int w = 1; w < copy.size(); w++) {
      if (copy.get(w).fromSeconds() <= copy.get(w - 1).toSeconds()) {
        throw new IllegalArgumentException(name + " must be sorted and apart: " + copy);
      }
    }
    return copy;
  }

  /**
   * A booked visit without limits.
   *
   * @param id unique id
   * @param place door
   * @param serviceSeconds length of the stop
   * @return the visit
   */
  public static Visit booked(String id, int place, int serviceSeconds) {
    return new Visit(
        id, place, serviceSeconds, true, 0, ANY_TIME, TimeWindow.DAY_END, ANY_TIME, false);
  }

  /**
   * The same visit with other arrival windows.
   *
   * @param windows sorted, apart, at least one
   * @return the visit
   */
  public Visit arriving(List<TimeWindow> windows) {
    return new Visit(
        id,
        place,
        serviceSeconds,
        booked,
        leftOutSixtieths,
        windows,
        doneBySeconds,
        vanWithin,
        first);
  }

  /**
   * The same visit on the waiting list.
   *
   * @param sixtieths cost of leaving it out
   * @return the visit
   */
  public Visit waiting(long sixtieths) {
    return new Visit(
        id, place, serviceSeconds, false, sixtieths, arriveWithin, doneBySeconds, vanWithin, first);
  }

  /**
   * The same visit with a last second for the end of its service.
   *
   * @param seconds elapsed seconds
   * @return the visit
   */
  public Visit doneBy(int seconds) {
    return new Visit(
        id,
        place,
        serviceSeconds,
        booked,
        leftOutSixtieths,
        arriveWithin,
        seconds,
        vanWithin,
        first);
  }

  /**
   * The same visit with other spans for the whole stay.
   *
   * @param windows sorted, apart, at least one
   * @return the visit
   */
  public Visit vanOnlyWithin(List<TimeWindow> windows) {
    return new Visit(
        id,
        place,
        serviceSeconds,
        booked,
        leftOutSixtieths,
        arriveWithin,
        doneBySeconds,
        windows,
        first);
  }

  /**
   * The same visit, first of the day or anywhere.
   *
   * @param mustBeFirst whether it must be first
   * @return the visit
   */
  public Visit first(boolean mustBeFirst) {
    return new Visit(
        id,
        place,
        serviceSeconds,
        booked,
        leftOutSixtieths,
        arriveWithin,
        doneBySeconds,
        vanWithin,
        mustBeFirst);
  }

  /**
   * The same visit as one that must be served.
   *
   * @return the visit, booked
   */
  public Visit mustServe() {
    return new Visit(
        id, place, serviceSeconds, true, 0, arriveWithin, doneBySeconds, vanWithin, first);
  }

  /**
   * The same visit with another service.
   *
   * @param seconds length of the stop, 0..43,200
   * @return the visit
   */
  public Visit lasting(int seconds) {
    return new Visit(
        id,
        place,
        seconds,
        booked,
        leftOutSixtieths,
        arriveWithin,
        doneBySeconds,
        vanWithin,
        first);
  }

  /** {@return the end of its last arrival window: whoever arrives after it is late} */
  public int latestArrivalSeconds() {
    return arriveWithin.get(arriveWithin.size() - 1).toSeconds();
  }
}
