package dev.dogleg.itinerary;

import java.util.Collections;
import java.util.Map;
import java.util.Objects;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What every {@link DayRule} checks of itself. */
final class DayRuleChecks {
  private DayRuleChecks() {}

  static void rule(String name, OptionalLong ratherSixtieths) {
    Objects.requireNonNull(name, "name");
    if (ratherSixtieths.isPresent()
        && (ratherSixtieths.getAsLong() < 0 || ratherSixtieths.getAsLong() > 1L << 38)) {
      throw new IllegalArgumentException(
          "rule " + name + ": price must lie in 0..2^38, was " + ratherSixtieths.getAsLong());
    }
  }

  static void rather(String name, OptionalLong ratherSixtieths) {
    rule(name, ratherSixtieths);
    if (ratherSixtieths.isEmpty()) {
      throw new IllegalArgumentException("rule " + name + " needs a price");
    }
  }

  static void seconds(String name, int seconds) {
    if (seconds < 0 || seconds > 43_200) {
      throw new IllegalArgumentException(
          "rule " + name + ": seconds must lie in 0..43200, was " + seconds);
    }
  }

  /** A set in the order of its ids, so that nothing depends on hashes. */
  static Set<String> ids(Set<String> ids) {
    return Collections.unmodifiableSet(new TreeSet<>(ids));
  }

  static Map<String, Integer> points(Map<String, Integer> points) {
    if (points.values().stream().anyMatch(one -> one < 1)) {
      throw new IllegalArgumentException("load points are 1 or more: " + points);
    }
    return Collections.unmodifiableMap(new TreeMap<>(points));
  }
}
