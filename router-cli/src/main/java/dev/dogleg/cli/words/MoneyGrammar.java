package dev.dogleg.cli.words;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads an amount of money in one currency: digits, at most one decimal sign (point or comma), the
 * currency's code or sign before or after, or none. No thousands separators: {@code 1,250} reads
 * two ways.
 */
public final class MoneyGrammar {
  private static final Pattern AMOUNT = Pattern.compile("(\\d{1,9})(?:[.,](\\d+))?");
  private static final long MOST_MAJOR = 100_000;

  private MoneyGrammar() {}

  /**
   * Reads a cell.
   *
   * @param cell its text, not blank
   * @param currency the card's currency; its ISO 4217 exponent says how many decimals there are
   * @return amount in minor units, 0..100,000 major units; code {@code bad-money}
   */
  public static Reading<Long> read(String cell, Currency currency) {
    int exponent = Math.max(0, currency.getDefaultFractionDigits());
    String text = cell.strip().toUpperCase(Locale.ROOT);
    for (String sign :
        new String[] {currency.getCurrencyCode(), "US$", "$", "€", "£", "¥", "KR", "FR."}) {
      if (text.startsWith(sign)) {
        text = text.substring(sign.length()).strip();
        break;
      }
      if (text.endsWith(sign)) {
        text = text.substring(0, text.length() - sign.length()).strip();
        break;
      }
    }
    Matcher amount = AMOUNT.matcher(text);
    String expected =
        "an amount in "
            + currency.getCurrencyCode()
            + (exponent == 0 ? " without decimals" : " with at most " + exponent + " decimals")
            + " was expected";
    if (!amount.matches()) {
      return Reading.none(Remark.look("bad-money", expected, "digits and one decimal sign only"));
    }
    String decimals = amount.group(2) == null ? "" : amount.group(2);
    if (decimals.length() > exponent) {
      return Reading.none(
          Remark.look(
              "bad-money",
              expected,
              decimals.length() == 3 ? "write thousands without a separator" : ""));
    }
    long minor =
        new BigDecimal(amount.group(1) + "." + (decimals.isEmpty() ? "0" : decimals))
            .movePointRight(exponent)
            .longValueExact();
    if (minor > MOST_MAJOR * BigDecimal.TEN.pow(exponent).longValueExact()) {
      return Reading.none(Remark.look("bad-money", expected + ", at most 100000", ""));
    }
    return Reading.of(minor);
  }
}
