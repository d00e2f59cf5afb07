package dev.dogleg.cli.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Pattern;

/** Reads a decimal number: {@code 12}, {@code 7.5}, {@code 1,08}. */
public final class DecimalGrammar {
  private static final Pattern NUMBER = Pattern.compile("\\d{1,6}([.,]\\d{1,6})?");

  private DecimalGrammar() {}

  /**
   * Reads a cell.
   *
   * @param cell its text, not blank
   * @param unit how many whole numbers make one: 60 reads minutes as seconds, 1,000 as thousandths
   * @param least least sensible value, in whole numbers
   * @param most most sensible value, in whole numbers
   * @return the number in whole numbers, rounded half up; code {@code bad-number}
   */
  public static Reading<Integer> read(String cell, int unit, int least, int most) {
    if (NUMBER.matcher(cell.strip()).matches()) {
      BigDecimal number =
          new BigDecimal(cell.strip().replace(',', '.')).multiply(BigDecimal.valueOf(unit));
      BigDecimal whole = number.setScale(0, RoundingMode.HALF_UP);
      if (whole.compareTo(BigDecimal.valueOf(least)) >= 0
          && whole.compareTo(BigDecimal.valueOf(most)) <= 0) {
        return Reading.of(whole.intValueExact());
      }
    }
    return Reading.none(
        Remark.aside(
            "bad-number",
            "a number from " + plain(least, unit) + " to " + plain(most, unit) + " was expected",
            ""));
  }

  private static String plain(int value, int unit) {
    return BigDecimal.valueOf(value)
        .divide(BigDecimal.valueOf(unit), 3, RoundingMode.HALF_UP)
        .stripTrailingZeros()
        .toPlainString();
  }
}
