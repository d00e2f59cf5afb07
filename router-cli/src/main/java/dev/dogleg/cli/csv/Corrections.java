package dev.dogleg.cli.csv;

import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Place;
import dev.dogleg.model.Tag;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where typed addresses really are, from {@code places.csv}; wins over any look-up. Case,
 * punctuation and spaces of the typed address do not matter, all else does.
 */
public final class Corrections {
  private final Map<String, GeoPoint> points;
  private final Map<String, List<Tag>> tags;

  private Corrections(Map<String, GeoPoint> points, Map<String, List<Tag>> tags) {
    this.points = Collections.unmodifiableMap(new LinkedHashMap<>(points));
    this.tags = Collections.unmodifiableMap(new LinkedHashMap<>(tags));
  }

  static Corrections of(Map<String, GeoPoint> byKey) {
    return new Corrections(byKey, Map.of());
  }

  static Corrections of(Map<String, GeoPoint> byKey, Map<String, List<Tag>> tags) {
    return new Corrections(byKey, tags);
  }

  /**
   * Tags of the place at an address.
   *
   * @param address as typed
   * @return its tags; none where nothing is said of it
   */
  public List<Tag> tags(String address) {
    return tags.getOrDefault(key(address), List.of());
  }

  static String key(String address) {
    return dev.dogleg.address.Corrections.key(address);
  }

  /**
   * The corrected point of an address.
   *
   * @param address as typed
   * @return the point, or empty
   */
  public Optional<GeoPoint> pin(String address) {
    return Optional.ofNullable(points.get(key(address)));
  }

  /**
   * A place with its corrected point, where it has no pin of its own.
   *
   * @param place as typed
   * @return the place, with a pin where its address is corrected
   */
  public Place applied(Place place) {
    return place.pin().isPresent() ? place : new Place(place.address(), pin(place.address()));
  }

  /** {@return how many addresses are corrected} */
  public int size() {
    return points.size();
  }
}
