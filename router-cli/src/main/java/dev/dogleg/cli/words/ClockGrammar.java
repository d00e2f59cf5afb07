package dev.dogleg.cli.words;

import java.util.Locale;
import java.util.Optional;

/** Reads one time of day: {@code 18:00}, {@code 6pm}. */
public final class ClockGrammar {
  private ClockGrammar() {}

  /**
   * Reads a cell. A time that could be before or after noon is not guessed.
   *
   * @param cell its text
   * @return wall-clock seconds, 0..86,399; code {@code bad-time}
   */
  public static Reading<Integer> read(String cell) {
    String token = cell.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s.]+(?=[ap]\\.?m)", "");
    Optional<ClockTime> time = ClockTime.of(token);
    boolean colon = token.contains(":");
    return time.filter(found -> colon || !found.open())
        .map(ClockTime::seconds)
        .filter(seconds -> seconds < 86_400)
        .map(Reading::of)
        .orElseGet(
            () ->
                Reading.none(
                    Remark.aside(
                        "bad-time", "a time of day was expected", "24-hour clock: 18:00")));
  }
}
