package dev.dogleg.cli.csv;

import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Place;
import java.text.Normalizer;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Where typed addresses really are, from {@code places.csv}; wins over any look-up. Case,
 * punctuation and spaces of the typed address do not matter, all else does.
 */
public final class Corrections {
  private static final Pattern SIGNS = Pattern.compile("[^\\p{L}\\p{M}\\p{N}]+");

  private final Map<String, GeoPoint> points;

  private Corrections(Map<String, GeoPoint> points) {
    this.points = Collections.unmodifiableMap(new LinkedHashMap<>(points));
  }

  static Corrections of(Map<String, GeoPoint> byKey) {
    return new Corrections(byKey);
  }

  static String key(String address) {
    String text = Normalizer.normalize(address, Normalizer.Form.NFC).toLowerCase(Locale.ROOT);
    return SIGNS.matcher(text).replaceAll(" ").strip();
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
