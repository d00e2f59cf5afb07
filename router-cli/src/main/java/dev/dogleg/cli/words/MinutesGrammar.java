package dev.dogleg.cli.words;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a length of time in whole minutes: {@code 75}, {@code 75 min}, {@code 1h15}. */
public final class MinutesGrammar {
  private static final Pattern PLAIN =
      Pattern.compile("(\\d{1,5})(?:[.,]0+)?\\s*(?:m|min|mins|minute|minutes|')?");
  private static final Pattern HOURS =
      Pattern.compile(
          "(\\d{1,3})\\s*(?:h|hr|hrs|hour|hours)\\s*(?:(\\d{1,2})\\s*(?:m|min|mins|minutes)?)?");
  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{2})(?::00)?");

  private MinutesGrammar() {}

  /**
   * Reads a cell.
   *
   * @param cell its text, not blank
   * @param least least sensible value
   * @param most most sensible value
   * @return minutes; codes {@code bad-minutes}, {@code absurd-minutes}, {@code time-became-number},
   *     {@code guess}
   */
  public static Reading<Integer> read(String cell, int least, int most) {
    String text = cell.strip().toLowerCase(Locale.ROOT);
    if (SpreadsheetDamage.fraction(text)) {
      int minutes = minutesOf(SpreadsheetDamage.ofDay(text));
      return Reading.none(
          Remark.aside(
              "time-became-number",
              "whole minutes were expected; a spreadsheet turned a time into a part of a day",
              "perhaps " + minutes + " minutes were meant"));
    }
    Matcher plain = PLAIN.matcher(text);
    if (plain.matches()) {
      return checked(Integer.parseInt(plain.group(1)), least, most);
    }
    Matcher hours = HOURS.matcher(text);
    if (hours.matches()) {
      int rest = hours.group(2) == null ? 0 : Integer.parseInt(hours.group(2));
      return checked(60 * Integer.parseInt(hours.group(1)) + rest, least, most);
    }
    Matcher clock = CLOCK.matcher(text);
    if (clock.matches()) {
      int minutes = 60 * Integer.parseInt(clock.group(1)) + Integer.parseInt(clock.group(2));
      Reading<Integer> read = checked(minutes, least, most);
      return read.value().isEmpty()
          ? read
          : Reading.of(minutes, Remark.guess(minutes + " minutes", "write minutes: " + minutes));
    }
    return Reading.none(
        Remark.aside("bad-minutes", "whole minutes were expected, for example 75", ""));
  }

  private static int minutesOf(String clock) {
    return 60 * Integer.parseInt(clock.substring(0, 2)) + Integer.parseInt(clock.substring(3));
  }

  private static Reading<Integer> checked(int minutes, int least, int most) {
    return minutes >= least && minutes <= most
        ? Reading.of(minutes)
        : Reading.none(
            Remark.aside(
                "absurd-minutes",
                "minutes from " + least + " to " + most + " were expected",
                "is a digit missing or too many?"));
  }
}
