package dev.dogleg.address;

import dev.dogleg.model.GeoPoint;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Places that a person has put right: they win over any look-up.
 *
 * <p>Two spellings are the same correction where they differ only in case, marks, punctuation and
 * spaces; nothing cleverer, so that a correction never hits another address.
 */
public final class Corrections {
  /** No corrections. */
  public static final Corrections NONE = new Corrections(Map.of());

  private final Map<String, GeoPoint> places = new LinkedHashMap<>();

  /**
   * Takes corrections.
   *
   * @param byAddress address as typed, and its true place; of two spellings of one address the
   *     later wins
   */
  public Corrections(Map<String, GeoPoint> byAddress) {
    byAddress.forEach((address, place) -> places.put(key(address), place));
  }

  /**
   * The place put right for an address.
   *
   * @param typed address as typed
   * @return the place, empty where there is no correction
   */
  public Optional<GeoPoint> find(String typed) {
    return Optional.ofNullable(places.get(key(typed)));
  }

  /** {@return how many there are} */
  public int size() {
    return places.size();
  }

  /**
   * What two spellings of one correction share, for finding duplicates.
   *
   * @param typed address as typed
   * @return its words in plain small letters, one space between
   */
  public static String key(String typed) {
    List<Token> words = Token.words(typed);
    return String.join(" ", words.stream().map(Corrections::withJoint).toList());
  }

  private static String withJoint(Token word) {
    boolean number = word.startsWithDigit() && (word.joint() == '-' || word.joint() == '/');
    return (number ? word.joint() : "") + word.plain();
  }
}
