package dev.dogleg.groom.learn;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * The drive to a visit, as planned and as it was.
 *
 * @param plannedSeconds seconds that the plan had, over 0
 * @param drivenSeconds seconds it took, over 0
 * @param band traffic band in which it was driven
 * @param plannedSecondsByClass planned seconds of each road class, by its name; empty where not
 *     known
 */
public record LoggedDrive(
    int plannedSeconds,
    int drivenSeconds,
    String band,
    Map<String, Integer> plannedSecondsByClass) {

  /** Checks the ranges. */
  public LoggedDrive {
    Objects.requireNonNull(band, "band");
    plannedSecondsByClass = Collections.unmodifiableMap(new LinkedHashMap<>(plannedSecondsByClass));
    if (plannedSeconds < 1 || drivenSeconds < 1) {
      throw new IllegalArgumentException("a drive takes at least a second");
    }
    if (plannedSecondsByClass.values().stream().anyMatch(seconds -> seconds < 0)) {
      throw new IllegalArgumentException("seconds of a road class must be 0 or more");
    }
  }
}
