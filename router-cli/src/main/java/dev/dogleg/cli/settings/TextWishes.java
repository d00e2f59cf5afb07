package dev.dogleg.cli.settings;

import java.util.Objects;

/**
 * What a card says of texts to owners.
 *
 * @param language language of clients who name none, a BCP 47 tag
 * @param eveningSeconds when texts go out on the evening before, by the wall clock since midnight,
 *     0..86,399
 */
public record TextWishes(String language, int eveningSeconds) {
  /** English, at 18:00. */
  public static final TextWishes STARTER = new TextWishes("en", 64_800);

  /** Checks the range. */
  public TextWishes {
    Objects.requireNonNull(language, "language");
    if (eveningSeconds < 0 || eveningSeconds >= 86_400) {
      throw new IllegalArgumentException("no time of day: " + eveningSeconds);
    }
  }
}
