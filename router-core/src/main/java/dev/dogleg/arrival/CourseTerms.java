package dev.dogleg.arrival;

import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.itinerary.ServiceSpread;
import java.util.Map;
import java.util.Objects;

/**
 * What varies on a day and how finely it is reckoned.
 *
 * @param services spread of each visit's service, by visit id; a visit without one lasts as planned
 * @param day spread of the day and of its drives
 * @param stepSeconds grid of time, 10..300
 * @param dayPoints points of the day's common factor, odd, 1..99
 */
public record CourseTerms(
    Map<String, ServiceSpread> services, DaySpread day, int stepSeconds, int dayPoints) {
  /** Grid for times to tell. */
  public static final int FINE_STEP_SECONDS = 60;

  /** Points for times to tell. */
  public static final int FINE_DAY_POINTS = 21;

  private static final int COARSE_STEP_SECONDS = 120;
  private static final int COARSE_DAY_POINTS = 9;

  /** Checks the ranges. */
  public CourseTerms {
    services = Map.copyOf(services);
    Objects.requireNonNull(day, "day");
    if (stepSeconds < 10 || stepSeconds > 300 || dayPoints < 1 || dayPoints > 99) {
      throw new IllegalArgumentException("grid out of range: " + stepSeconds + ", " + dayPoints);
    }
    if (dayPoints % 2 == 0) {
      throw new IllegalArgumentException("dayPoints must be odd, was " + dayPoints);
    }
  }

  /**
   * Terms as fine as times to tell need them.
   *
   * @param services spread of each visit's service, by visit id
   * @param day spread of the day and of its drives
   * @return the terms
   */
  public static CourseTerms fine(Map<String, ServiceSpread> services, DaySpread day) {
    return new CourseTerms(services, day, FINE_STEP_SECONDS, FINE_DAY_POINTS);
  }

  /**
   * Terms for odds of many days, coarser than those of times to tell.
   *
   * @param services spread of each visit's service, by visit id
   * @param day spread of the day and of its drives
   * @return the terms
   */
  public static CourseTerms coarse(Map<String, ServiceSpread> services, DaySpread day) {
    return new CourseTerms(services, day, COARSE_STEP_SECONDS, COARSE_DAY_POINTS);
  }
}
