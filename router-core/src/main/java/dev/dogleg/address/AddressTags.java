package dev.dogleg.address;

import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Which elements and tags of a map speak of addresses. Source: OpenStreetMap wiki, pages Key:addr,
 * Key:addr:interpolation, Key:highway, Key:boundary, Key:place (from memory).
 */
final class AddressTags {
  private static final Set<String> KEPT =
      Set.of(
          "addr:housenumber",
          "addr:street",
          "addr:place",
          "addr:hamlet",
          "addr:suburb",
          "addr:district",
          "addr:quarter",
          "addr:neighbourhood",
          "addr:city",
          "addr:postcode",
          "addr:country",
          "addr:interpolation",
          "name",
          "alt_name",
          "old_name",
          "loc_name",
          "official_name",
          "short_name",
          "postal_code",
          "boundary",
          "admin_level",
          "place",
          "ref",
          "ISO3166-1",
          "ISO3166-1:alpha2");

  private static final Set<String> NO_STREETS =
      Set.of("proposed", "construction", "platform", "bus_stop", "razed", "abandoned", "corridor");

  private static final Set<String> TOWN_PLACES =
      Set.of(
          "city",
          "town",
          "village",
          "hamlet",
          "suburb",
          "quarter",
          "neighbourhood",
          "borough",
          "municipality");

  private AddressTags() {}

  static Map<String, String> kept(Map<String, String> tags) {
    Map<String, String> kept = new TreeMap<>();
    tags.forEach(
        (key, value) -> {
          if (!value.isBlank()
              && (KEPT.contains(key) || (key.startsWith("name:") && key.length() <= 8))) {
            kept.put(key, value.strip());
          }
        });
    return kept;
  }

  static boolean isHouse(Map<String, String> tags) {
    return tags.containsKey("addr:housenumber") && !tags.containsKey("addr:interpolation");
  }

  static boolean isLine(Map<String, String> tags) {
    return tags.containsKey("addr:interpolation");
  }

  static boolean isStreet(Map<String, String> tags) {
    String highway = tags.get("highway");
    boolean road = highway != null && !NO_STREETS.contains(highway);
    return tags.containsKey("name") && (road || "square".equals(tags.get("place")));
  }

  static boolean isArea(Map<String, String> tags) {
    String boundary = tags.getOrDefault("boundary", "");
    boolean named = tags.containsKey("name") || tags.containsKey("postal_code");
    return named
        && (boundary.equals("administrative")
            || boundary.equals("postal_code")
            || boundary.equals("place")
            || isTown(tags));
  }

  static boolean isTown(Map<String, String> tags) {
    return tags.containsKey("name") && TOWN_PLACES.contains(tags.getOrDefault("place", ""));
  }

  static boolean isStreetRelation(Map<String, String> tags) {
    String type = tags.getOrDefault("type", "");
    return type.equals("associatedStreet") || type.equals("street");
  }

  /** All spellings of a name. */
  static java.util.List<String> names(Map<String, String> tags) {
    Set<String> names = new java.util.LinkedHashSet<>();
    new TreeMap<>(tags)
        .forEach(
            (key, value) -> {
              if (key.equals("name") || key.startsWith("name:") || key.endsWith("_name")) {
                for (String name : value.split(";")) {
                  if (!name.isBlank()) {
                    names.add(name.strip());
                  }
                }
              }
            });
    return java.util.List.copyOf(names);
  }
}
