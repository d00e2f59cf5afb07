package dev.dogleg.cli.words;

import dev.dogleg.model.RuleMinutes;
import dev.dogleg.model.RuleShape;
import dev.dogleg.model.Strength;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads the closed cells of a rule: its shape, its strength, its minutes, its places in the day.
 */
public final class RuleGrammar {
  private static final int USUAL_RATHER_MINUTES = 15;
  private static final Pattern RATHER =
      Pattern.compile("rather(?:\\s+(\\d{1,4})\\s*(?:m|min|minutes?)?)?");
  private static final Pattern MINUTES =
      Pattern.compile(
          "(?:[x*\u00d7]\\s*(\\d{1,2}(?:[.,]\\d{1,3})?))?\\s*(?:([+-])\\s*(\\d{1,3}))?");
  private static final Pattern PLACES =
      Pattern.compile("(\\d{1,3})\\s*(?:(-|to)\\s*(\\d{1,3})?|(\\+))?");

  private RuleGrammar() {}

  /**
   * Reads a shape.
   *
   * @param cell its text, not blank
   * @return the shape; code {@code unknown-shape}
   */
  public static Reading<RuleShape> shape(String cell) {
    String words = cell.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    String plain =
        switch (words) {
          case "arrive within", "at the door" -> "arrive";
          case "done" -> "done by";
          case "van within", "van present" -> "van";
          case "all before" -> "before";
          case "not right after", "not directly after", "not back to back" -> "not after";
          case "never together", "not the same day" -> "not together";
          case "same day" -> "together";
          default -> words;
        };
    Optional<RuleShape> shape =
        Arrays.stream(RuleShape.values()).filter(one -> one.words().equals(plain)).findFirst();
    return shape.isPresent()
        ? Reading.of(shape.get())
        : Reading.none(
            Remark.aside(
                "unknown-shape",
                "one of the words for a rule was expected",
                Arrays.stream(RuleShape.values())
                    .map(RuleShape::words)
                    .collect(Collectors.joining(", "))));
  }

  /**
   * Reads a strength.
   *
   * @param cell its text, not blank
   * @return must, or rather with its minutes of driving (15 where none are named); code {@code
   *     bad-strength}
   */
  public static Reading<Strength> strength(String cell) {
    String text = cell.strip().toLowerCase(Locale.ROOT);
    if (text.equals("must") || text.equals("only")) {
      return Reading.of(Strength.MUST);
    }
    Matcher rather = RATHER.matcher(text);
    if (rather.matches()) {
      int minutes =
          rather.group(1) == null ? USUAL_RATHER_MINUTES : Integer.parseInt(rather.group(1));
      if (minutes <= 1_440) {
        return Reading.of(Strength.rather(minutes));
      }
    }
    return Reading.none(
        Remark.aside(
            "bad-strength",
            "must, or rather and minutes of driving from 0 to 1440, was expected",
            "for example rather 15"));
  }

  /**
   * Reads minutes of the shape {@code minutes}.
   *
   * @param cell {@code +10}, {@code -5}, {@code x1.2} or {@code x1.2 +5}
   * @return the minutes for every place in the day; code {@code bad-rule-minutes}
   */
  public static Reading<RuleMinutes> minutes(String cell) {
    Matcher matcher = MINUTES.matcher(cell.strip().toLowerCase(Locale.ROOT));
    if (matcher.matches() && (matcher.group(1) != null || matcher.group(3) != null)) {
      int times =
          matcher.group(1) == null
              ? 1_000
              : new BigDecimal(matcher.group(1).replace(',', '.'))
                  .movePointRight(3)
                  .setScale(0, RoundingMode.UNNECESSARY)
                  .intValueExact();
      int plus = matcher.group(3) == null ? 0 : 60 * Integer.parseInt(matcher.group(3));
      if (times <= 10_000 && plus <= 43_200) {
        return Reading.of(
            new RuleMinutes(
                times, "-".equals(matcher.group(2)) ? -plus : plus, 1, RuleMinutes.NO_END));
      }
    }
    return Reading.none(
        Remark.aside(
            "bad-rule-minutes",
            "+10, -5, x1.2 or x1.2 +5 was expected: at most ten times, at most 720 minutes",
            ""));
  }

  /**
   * Reads places in the day.
   *
   * @param cell {@code 1}, {@code 2-3}, {@code 5-}
   * @param minutes the minutes that hold there
   * @return the minutes with their places; code {@code bad-place-in-day}
   */
  public static Reading<RuleMinutes> places(String cell, RuleMinutes minutes) {
    Matcher matcher = PLACES.matcher(cell.strip().toLowerCase(Locale.ROOT));
    if (matcher.matches()) {
      int from = Integer.parseInt(matcher.group(1));
      int to =
          matcher.group(3) != null
              ? Integer.parseInt(matcher.group(3))
              : matcher.group(2) != null || matcher.group(4) != null ? RuleMinutes.NO_END : from;
      if (from >= 1 && from <= to) {
        return Reading.of(
            new RuleMinutes(minutes.timesThousandths(), minutes.plusSeconds(), from, to));
      }
    }
    return Reading.none(
        Remark.aside(
            "bad-place-in-day", "places counted from 1 were expected", "for example 1, 2-3 or 5-"));
  }
}
