package dev.dogleg.schedule;

import dev.dogleg.itinerary.DayShift;
import dev.dogleg.travel.TravelTimes;

/**
 * What is known of the legs between the places of one table of travel times, within a span of the
 * day; made once, days of any visits share it.
 *
 * <p>It fills as days ask. Any number of threads may ask: what one of them does not see of another
 * it makes once more, and equal.
 */
public final class LegMemory {
  private final TravelTimes travel;
  private final int from;
  private final int latestEnd;
  private final KnownLeg[][] legs;

  /**
   * Knows nothing yet.
   *
   * @param travel travel times
   * @param from first second at which a van may leave
   * @param latestEnd last second at which one may be home
   */
  public LegMemory(TravelTimes travel, int from, int latestEnd) {
    this.travel = travel;
    this.from = from;
    this.latestEnd = latestEnd;
    legs = new KnownLeg[travel.size()][];
  }

  /**
   * Knows nothing yet, of days of one shift.
   *
   * @param travel travel times
   * @param shift the shift
   * @return the memory
   */
  public static LegMemory of(TravelTimes travel, DayShift shift) {
    return new LegMemory(travel, shift.hours().fromSeconds(), shift.latestEndSeconds());
  }

  /**
   * Whether what is known here holds of a day: its travel times are these, and it lies within.
   *
   * @param times its travel times
   * @param first its first second
   * @param last its last second
   */
  boolean speaksOf(TravelTimes times, int first, int last) {
    return times == travel && from <= first && last <= latestEnd;
  }

  /** {@return the leg between two places; null where no road leads} */
  KnownLeg leg(int i, int j) {
    KnownLeg[] row = legs[i];
    if (row == null) {
      row = new KnownLeg[travel.size()];
      legs[i] = row;
    }
    KnownLeg leg = row[j];
    if (leg == null && travel.reaches(i, j)) {
      leg = new KnownLeg(travel, i, j, from, latestEnd);
      row[j] = leg;
    }
    return leg;
  }
}
