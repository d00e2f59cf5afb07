package dev.dogleg.address;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * What was typed besides street and number, and whether a house agrees with it.
 *
 * @param postcodes postcodes typed, bare
 * @param towns runs of words that may name towns or districts, bare; each run's whole first
 * @param townKnown whether one of the runs names a place of the map
 * @param postcodeKnown whether one of the postcodes stands in the map
 */
record Locality(
    List<String> postcodes, List<String> towns, boolean townKnown, boolean postcodeKnown) {
  private static final int SHORTEST_PART = 6;
  private static final int SHORTEST_MISSPELT = 5;

  /** How a house stands to what was typed, best first. */
  enum Fit {
    /** Town or postcode was typed, and the house lies there. */
    AGREES,
    /** Nothing was typed, or the map does not know enough of the house to tell. */
    SILENT,
    /** The postcode is another of the map, or differs in one digit; no town was typed. */
    STRAINED,
    /** The house lies somewhere else. */
    CONTRADICTS
  }

  boolean isEmpty() {
    return postcodes.isEmpty() && towns.isEmpty();
  }

  Fit of(Hit hit) {
    boolean postcodeAgrees = postcodes.stream().anyMatch(hit.postcodes()::contains);
    boolean townAgrees = towns.stream().anyMatch(town -> lies(hit.areas(), town));
    if (isEmpty()) {
      return Fit.SILENT;
    }
    if (postcodeAgrees || townAgrees) {
      return Fit.AGREES;
    }
    boolean townUnchecked = towns.isEmpty() || hit.areas().isEmpty();
    if (!townUnchecked) {
      return Fit.CONTRADICTS;
    }
    if (postcodes.isEmpty() || hit.postcodes().isEmpty()) {
      return Fit.SILENT;
    }
    boolean close =
        postcodes.stream()
            .anyMatch(
                typed ->
                    hit.postcodes().stream()
                        .anyMatch(there -> Letters.typingErrors(typed, there, 1) <= 1));
    return close || postcodeKnown ? Fit.STRAINED : Fit.CONTRADICTS;
  }

  /** Which of the postcodes and towns typed a house bears out; in one town, a district tells. */
  Set<String> borneOut(Hit hit) {
    Set<String> said = new HashSet<>();
    for (String postcode : postcodes) {
      if (hit.postcodes().contains(postcode)) {
        said.add(postcode);
      }
    }
    for (String town : towns) {
      if (lies(hit.areas(), town)) {
        said.add(town);
      }
    }
    return said;
  }

  private static boolean lies(Set<String> areas, String town) {
    if (areas.contains(town)) {
      return true;
    }
    for (String area : areas) {
      if (town.length() >= SHORTEST_PART && area.startsWith(town)) {
        return true;
      }
      if (town.length() >= SHORTEST_MISSPELT && Letters.typingErrors(area, town, 1) <= 1) {
        return true;
      }
    }
    return false;
  }
}
