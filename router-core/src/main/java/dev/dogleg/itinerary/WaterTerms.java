package dev.dogleg.itinerary;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;

/**
 * Tanks of the day's van, what visits use, and where tanks are filled and emptied.
 *
 * @param tank fresh tank and grey tank, as the use that just fills them
 * @param uses water of visits by id; a visit that is missing uses none
 * @param places where a water stop may be made, distinct places; empty: nowhere
 * @param most most water stops a day, 0..4
 */
public record WaterTerms(
    WaterUse tank, Map<String, WaterUse> uses, List<WaterPlace> places, int most) {
  /** Checks and copies. */
  public WaterTerms {
    Objects.requireNonNull(tank, "tank");
    uses = Collections.unmodifiableMap(new TreeMap<>(uses));
    places = List.copyOf(places);
    if (most < 0 || most > 4) {
      throw new IllegalArgumentException("most water stops must lie in 0..4, was " + most);
    }
    if (places.stream().map(WaterPlace::place).distinct().count() != places.size()) {
      throw new IllegalArgumentException("water place twice");
    }
  }

  /**
   * Water of a visit.
   *
   * @param visitId its id
   * @return its water, none where nothing is said
   */
  public WaterUse useOf(String visitId) {
    return uses.getOrDefault(visitId, WaterUse.NONE);
  }
}
