package dev.dogleg.travel;

/**
 * Driving from place to place. Places are numbers 0..{@link #size()}-1.
 *
 * <p>Implementations are immutable and may be asked from any number of threads.
 */
public interface TravelTimes {

  /** What {@link #steadyUntil} answers where the duration never changes any more. */
  int FOREVER = Integer.MAX_VALUE;

  /** {@return number of places, at least 1} */
  int size();

  /**
   * Whether a road leads from one place to another.
   *
   * @param from place left
   * @param to place reached
   * @return false where no duration exists; true for a place and itself
   */
  boolean reaches(int from, int to);

  /**
   * Duration of a drive: edge seconds plus turn seconds, at the traffic met on the way.
   *
   * <p>First in, first out: {@code t + driveSeconds(i, j, t)} never falls as {@code t} rises.
   *
   * @param from place left
   * @param to place reached
   * @param leaveSeconds elapsed seconds since local midnight at which the van leaves, 0 or more
   * @return whole seconds, 0 or more; 0 for a place and itself
   * @throws IllegalArgumentException where no road leads there
   */
  int driveSeconds(int from, int to, int leaveSeconds);

  /**
   * How long the duration stays as it is.
   *
   * @param from place left
   * @param to place reached
   * @param leaveSeconds elapsed seconds at which the van would leave
   * @return the last second {@code u >= leaveSeconds} such that every leaving time in {@code
   *     leaveSeconds..u} has the duration of {@code leaveSeconds}; {@link #FOREVER} where it never
   *     changes any more
   * @throws IllegalArgumentException where no road leads there
   */
  int steadyUntil(int from, int to, int leaveSeconds);

  /**
   * How long the duration stays, rises or falls evenly.
   *
   * @param from place left
   * @param to place reached
   * @param leaveSeconds elapsed seconds at which the van would leave
   * @return a second {@code u >= leaveSeconds} such that between any two leaving times {@code x <
   *     y} of {@code leaveSeconds..u} no duration is less than the smaller of those at {@code x}
   *     and {@code y}; {@link #FOREVER} where that never ends
   * @throws IllegalArgumentException where no road leads there
   */
  default int straightUntil(int from, int to, int leaveSeconds) {
    return steadyUntil(from, to, leaveSeconds);
  }

  /**
   * Least duration over every leaving time: a lower bound.
   *
   * @param from place left
   * @param to place reached
   * @return whole seconds, never above {@link #driveSeconds} of any leaving time
   * @throws IllegalArgumentException where no road leads there
   */
  int leastDriveSeconds(int from, int to);

  /**
   * Least duration over the leaving times of a span: a lower bound.
   *
   * @param from place left
   * @param to place reached
   * @param earliestLeaveSeconds first leaving time
   * @param latestLeaveSeconds last leaving time, not before the first
   * @return whole seconds, never above {@link #driveSeconds} of any leaving time in the span
   * @throws IllegalArgumentException where no road leads there
   */
  default int leastDriveSeconds(
      int from, int to, int earliestLeaveSeconds, int latestLeaveSeconds) {
    return leastDriveSeconds(from, to);
  }

  /**
   * Length of the road path.
   *
   * @param from place left
   * @param to place reached
   * @return whole metres, 0 or more; 0 for a place and itself
   * @throws IllegalArgumentException where no road leads there
   */
  int lengthMetres(int from, int to);

  /**
   * Name of the traffic band in force when leaving, for showing on a leg.
   *
   * @param leaveSeconds elapsed seconds
   * @return a short name; empty where durations do not depend on the time
   */
  default String bandName(int leaveSeconds) {
    return "";
  }
}
