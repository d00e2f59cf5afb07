package dev.dogleg.cli.words;

import dev.dogleg.fault.Severity;
import dev.dogleg.model.DateSpan;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a date or a span of dates.
 *
 * <p>Year first ({@code 2027-03-02}, also with slashes or dots), a month by name ({@code 2 Mar
 * 2027}, {@code March 2, 2027}), or three numbers whose order is plain. {@code 02/03/2027} reads
 * both ways and is refused unless the card names the order. Spans: {@code A..B} or {@code A to B},
 * at most 366 days.
 */
public final class DateGrammar {
  private static final String EXPECTED = "a date like 2027-03-02 was expected";
  private static final Pattern SPAN = Pattern.compile("\\s*\\.\\.+\\s*|\\s+to\\s+|\\s*–\\s*");
  private static final Pattern YEAR_FIRST =
      Pattern.compile("(\\d{4})[-/.](\\d{1,2})[-/.](\\d{1,2})([t ]00:00(:00(\\.0+)?)?)?");
  private static final Pattern NUMBERS =
      Pattern.compile("(\\d{1,2})[-/.](\\d{1,2})[-/.](\\d{4})([t ]00:00(:00)?)?");
  private static final Pattern SHORT_YEAR =
      Pattern.compile("\\d{1,2}[-/. ](\\d{1,2}|[a-z]{3,9})[-/. ]'?\\d{2}");
  private static final Pattern DAY_NAME =
      Pattern.compile("(\\d{1,2})(?:st|nd|rd|th)?[-. ]+([a-z]{3,9})\\.?[-, ]+(\\d{4})");
  private static final Pattern NAME_DAY =
      Pattern.compile("([a-z]{3,9})\\.?[- ]+(\\d{1,2})(?:st|nd|rd|th)?[-, ]+(\\d{4})");
  private static final List<String> MONTHS =
      List.of(
          "january",
          "february",
          "march",
          "april",
          "may",
          "june",
          "july",
          "august",
          "september",
          "october",
          "november",
          "december");
  private static final int LONGEST_SPAN_DAYS = 366;

  private DateGrammar() {}

  /**
   * Reads a cell.
   *
   * @param cell its text, not blank
   * @param order how the card writes dates
   * @return the span; codes {@code bad-date}, {@code ambiguous-date}, {@code date-1900}, {@code
   *     date-became-number}, {@code span-backwards}, {@code guess}
   */
  public static Reading<DateSpan> read(String cell, DateOrder order) {
    Optional<Remark> damage = SpreadsheetDamage.ofDate(cell);
    if (damage.isPresent()) {
      return Reading.none(damage.get());
    }
    String[] ends = SPAN.split(cell.strip().toLowerCase(Locale.ROOT), -1);
    if (ends.length > 2) {
      return Reading.none(
          Remark.aside("bad-date", EXPECTED, "a span is written 2027-03-01..2027-03-05"));
    }
    Reading<LocalDate> from = one(ends[0], order);
    Reading<LocalDate> to = ends.length == 1 ? from : one(ends[1], order);
    List<Remark> remarks = new ArrayList<>(from.remarks());
    if (ends.length == 2) {
      remarks.addAll(to.remarks());
    }
    if (from.value().isEmpty() || to.value().isEmpty()) {
      return new Reading<>(Optional.empty(), remarks);
    }
    LocalDate first = from.value().get();
    LocalDate last = to.value().get();
    if (last.isBefore(first)) {
      return Reading.none(
          Remark.aside("span-backwards", "the span ends before it starts", "swap its ends"));
    }
    if (last.isAfter(first.plusDays(LONGEST_SPAN_DAYS))) {
      return Reading.none(
          Remark.aside("bad-date", "a span of at most a year was expected", "check the years"));
    }
    return new Reading<>(Optional.of(new DateSpan(first, last)), remarks);
  }

  private static Reading<LocalDate> one(String text, DateOrder order) {
    Matcher year = YEAR_FIRST.matcher(text);
    if (year.matches()) {
      return date(year.group(1), year.group(2), year.group(3));
    }
    Matcher numbers = NUMBERS.matcher(text);
    if (numbers.matches()) {
      return numbers(numbers, order);
    }
    Matcher dayName = DAY_NAME.matcher(text);
    if (dayName.matches() && month(dayName.group(2)) > 0) {
      return date(dayName.group(3), "" + month(dayName.group(2)), dayName.group(1));
    }
    Matcher nameDay = NAME_DAY.matcher(text);
    if (nameDay.matches() && month(nameDay.group(1)) > 0) {
      return date(nameDay.group(3), "" + month(nameDay.group(1)), nameDay.group(2));
    }
    if (SHORT_YEAR.matcher(text).matches()) {
      return Reading.none(
          Remark.aside("bad-date", EXPECTED, "write the year with four digits, year first"));
    }
    return Reading.none(Remark.aside("bad-date", EXPECTED, ""));
  }

  private static Reading<LocalDate> numbers(Matcher numbers, DateOrder order) {
    String first = numbers.group(1);
    String second = numbers.group(2);
    String year = numbers.group(3);
    if (order == DateOrder.DAY_FIRST) {
      return date(year, second, first);
    }
    if (order == DateOrder.MONTH_FIRST) {
      return date(year, first, second);
    }
    int a = Integer.parseInt(first);
    int b = Integer.parseInt(second);
    if (a == b) {
      return date(year, first, second);
    }
    if (a <= 12 && b <= 12) {
      return Reading.none(
          Remark.aside(
              "ambiguous-date",
              EXPECTED
                  + "; this reads as "
                  + "%s-%02d-%02d or %s-%02d-%02d".formatted(year, a, b, year, b, a),
              "write the year first, or set date_order in the card"));
    }
    Reading<LocalDate> read = a > 12 ? date(year, second, first) : date(year, first, second);
    return read.value().isEmpty()
        ? read
        : new Reading<>(
            read.value(),
            List.of(
                new Remark(
                    "guess",
                    Severity.NOTE,
                    "was read as " + read.value().get(),
                    "write the year first")));
  }

  private static Reading<LocalDate> date(String year, String month, String day) {
    try {
      LocalDate date =
          LocalDate.of(Integer.parseInt(year), Integer.parseInt(month), Integer.parseInt(day));
      if (date.getYear() < 1970 || date.getYear() > 2200) {
        return Reading.none(Remark.aside("bad-date", EXPECTED, "the year must lie in 1970..2200"));
      }
      return Reading.of(date);
    } catch (DateTimeException e) {
      return Reading.none(
          Remark.aside(
              "bad-date",
              EXPECTED + "; there is no such day",
              "check month and day, or set date_order in the card"));
    }
  }

  private static int month(String name) {
    for (int m = 0; m < MONTHS.size(); m++) {
      String full = MONTHS.get(m);
      if (full.equals(name)
          || (name.length() >= 3 && name.length() <= 4 && full.startsWith(name))) {
        return m + 1;
      }
    }
    return 0;
  }
}
