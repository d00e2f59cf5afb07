package dev.dogleg.cli.words;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Recognises what spreadsheets make of cells when a file is opened and saved: times turned into
 * dates, dates and times into numbers, long numbers into powers of ten.
 */
final class SpreadsheetDamage {
  private static final List<String> MONTHS =
      List.of("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec");
  private static final String MONTH = "(jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*\\.?";
  private static final Pattern DAY_MONTH =
      Pattern.compile("(\\d{1,2})[-. /]{1,2}" + MONTH + "([-. /]\\d{2,4})?");
  private static final Pattern MONTH_DAY =
      Pattern.compile(MONTH + "[-. /](\\d{1,2})([-., /]{1,2}\\d{2,4})?");
  private static final Pattern ISO = Pattern.compile("\\d{4}-(\\d{2})-(\\d{2})( .*|t.*)?");
  private static final Pattern SLASHED =
      Pattern.compile("(\\d{1,2})[/.](\\d{1,2})[/.](\\d{2}|\\d{4})( .*)?");
  private static final Pattern EPOCH =
      Pattern.compile(
          "1899-12-3[01].*|19(00|04)-01-0\\d.*|\\d{1,2}/\\d{1,2}/(1899|1900|1904).*|1/0/.*");
  private static final Pattern FRACTION = Pattern.compile("0?[.,]\\d{2,}");
  private static final Pattern SERIAL = Pattern.compile("[34]\\d{4}([.,]\\d+)?");
  private static final Pattern POWER = Pattern.compile("\\d+([.,]\\d+)?e\\+?\\d{1,2}");

  private SpreadsheetDamage() {}

  /** What happened to a cell that should hold times, or empty. */
  static Optional<Remark> ofTimes(String cell) {
    String text = cell.strip().toLowerCase(Locale.ROOT);
    if (EPOCH.matcher(text).matches()) {
      return Optional.of(
          Remark.aside(
              "date-1900",
              "a time was expected; a spreadsheet put it on the first day of its calendar",
              "format the column as text and write the time again, for example 9:30"));
    }
    String pair = pair(text);
    if (!pair.isEmpty()) {
      return Optional.of(
          Remark.aside(
              "time-became-date",
              "times were expected; a spreadsheet turned them into a date",
              "format the column as text and write the times again" + pair));
    }
    if (FRACTION.matcher(text).matches()) {
      return Optional.of(
          Remark.aside(
              "time-became-number",
              "a time was expected; a spreadsheet turned it into a part of a day",
              "perhaps " + ofDay(text) + " was meant; format the column as text"));
    }
    if (SERIAL.matcher(text).matches()) {
      return Optional.of(
          Remark.aside(
              "date-became-number",
              "a time was expected; a spreadsheet turned it into the number of a day",
              "format the column as text and write it again"));
    }
    return Optional.empty();
  }

  /** What happened to a cell that should hold a date, or empty. */
  static Optional<Remark> ofDate(String cell) {
    String text = cell.strip().toLowerCase(Locale.ROOT);
    if (EPOCH.matcher(text).matches()) {
      return Optional.of(
          Remark.aside(
              "date-1900",
              "a date was expected; this is the first day of a spreadsheet's calendar",
              "an empty or damaged date: write it again, for example 2027-03-02"));
    }
    if (SERIAL.matcher(text).matches()) {
      long day = Long.parseLong(text.substring(0, 5));
      return Optional.of(
          Remark.aside(
              "date-became-number",
              "a date was expected; a spreadsheet turned it into the number of a day",
              "perhaps "
                  + java.time.LocalDate.of(1899, 12, 30).plusDays(day)
                  + " was meant; write dates like 2027-03-02"));
    }
    return Optional.empty();
  }

  /** Whether a number was cut down to a power of ten. */
  static boolean power(String cell) {
    return POWER.matcher(cell.strip().toLowerCase(Locale.ROOT)).matches();
  }

  /** Whether a number is a part of a day: {@code 0.0521} for 75 minutes. */
  static boolean fraction(String cell) {
    return FRACTION.matcher(cell.strip()).matches();
  }

  /** A part of a day as {@code HH:MM}. */
  static String ofDay(String fraction) {
    double day = Double.parseDouble("0." + fraction.strip().replaceFirst("^0?[.,]", ""));
    int minutes = (int) Math.round(day * 1440);
    return "%02d:%02d".formatted(minutes / 60, minutes % 60);
  }

  private static String pair(String text) {
    Matcher iso = ISO.matcher(text);
    Matcher dayMonth = DAY_MONTH.matcher(text);
    Matcher monthDay = MONTH_DAY.matcher(text);
    Matcher slashed = SLASHED.matcher(text);
    int a;
    int b;
    if (iso.matches()) {
      a = Integer.parseInt(iso.group(1));
      b = Integer.parseInt(iso.group(2));
    } else if (dayMonth.matches()) {
      a = Integer.parseInt(dayMonth.group(1));
      b = MONTHS.indexOf(dayMonth.group(2)) + 1;
    } else if (monthDay.matches()) {
      a = MONTHS.indexOf(monthDay.group(1)) + 1;
      b = Integer.parseInt(monthDay.group(2));
    } else if (slashed.matches()) {
      a = Integer.parseInt(slashed.group(1));
      b = Integer.parseInt(slashed.group(2));
    } else {
      return "";
    }
    return "; perhaps " + Math.min(a, b) + "-" + Math.max(a, b) + " was meant";
  }
}
