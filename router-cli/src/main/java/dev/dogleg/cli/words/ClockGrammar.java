package dev.dogleg.cli.words;

import dev.dogleg.model.WallSpan;
import java.util.Locale;
import java.util.Optional;

/** Reads one time of day: {@code 18:00}, {@code 6pm}, {@code 0930}. */
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

  /**
   * Reads a cell; a time that could be before or after noon is looked for in the hours usually
   * worked.
   *
   * @param cell its text, not blank
   * @param usual hours usually worked
   * @return wall-clock seconds since midnight; codes {@code bad-time}, {@code date-1900}, {@code
   *     time-became-date}, {@code time-became-number}, {@code date-became-number}, {@code guess}
   */
  public static Reading<Integer> read(String cell, WallSpan usual) {
    Optional<Remark> damage = SpreadsheetDamage.ofTimes(cell);
    if (damage.isPresent()) {
      return Reading.none(damage.get());
    }
    String text = cell.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s.]+(?=[ap]\\.?m)", "");
    Optional<ClockTime> time = ClockTime.of(text.replaceAll("(?<=[ap])\\.|(?<=m)\\.", ""));
    if (time.isEmpty()) {
      return Reading.none(Remark.aside("bad-time", "a time like 9:30 was expected", ""));
    }
    HalfOfDay<Integer> read = HalfOfDay.time(time.get(), usual);
    String clock = "%02d:%02d".formatted(read.value() / 3600, read.value() / 60 % 60);
    return read.guess()
        ? Reading.of(read.value(), Remark.guess(clock, "write " + clock))
        : Reading.of(read.value());
  }
}
