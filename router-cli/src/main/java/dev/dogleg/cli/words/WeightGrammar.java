package dev.dogleg.cli.words;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a pet's weight: {@code 8 kg}, {@code 18 lb}, or a bare number in the card's unit. */
public final class WeightGrammar {

  /** Unit of a bare number. */
  public enum Unit {
    /** Kilograms. */
    KG,
    /** Pounds, 453.59237 g (international avoirdupois pound, from memory). */
    LB
  }

  private static final Pattern WEIGHT =
      Pattern.compile(
          "(\\d{1,4}(?:[.,]\\d{1,4})?)\\s*(kg|kgs|kilo|kilos|g|grams|lb|lbs|pound|pounds|#)?\\.?");
  private static final BigDecimal GRAMS_PER_POUND = new BigDecimal("453.59237");
  private static final int LEAST_GRAMS = 100;
  private static final int MOST_GRAMS = 150_000;

  private WeightGrammar() {}

  /**
   * Whether a cell looks like a weight at all, so that a size word is told from it.
   *
   * @param cell its text
   * @return whether it starts with a digit
   */
  public static boolean looksLike(String cell) {
    String text = cell.strip();
    return !text.isEmpty() && Character.isDigit(text.charAt(0));
  }

  /**
   * Reads a cell.
   *
   * @param cell its text, not blank
   * @param bare unit of a number without one
   * @return grams, 100..150,000; codes {@code bad-weight}, {@code absurd-weight}
   */
  public static Reading<Integer> read(String cell, Unit bare) {
    Matcher weight = WEIGHT.matcher(cell.strip().toLowerCase(Locale.ROOT));
    if (!weight.matches()) {
      return Reading.none(
          Remark.look(
              "bad-weight", "a weight like 8 kg or 18 lb, or a size word was expected", ""));
    }
    String unit = weight.group(2) == null ? bare.name().toLowerCase(Locale.ROOT) : weight.group(2);
    BigDecimal number = new BigDecimal(weight.group(1).replace(',', '.'));
    BigDecimal grams =
        unit.startsWith("k")
            ? number.movePointRight(3)
            : unit.startsWith("g") ? number : number.multiply(GRAMS_PER_POUND);
    int rounded = grams.setScale(0, RoundingMode.HALF_UP).intValueExact();
    if (rounded < LEAST_GRAMS || rounded > MOST_GRAMS) {
      return Reading.none(
          Remark.look(
              "absurd-weight",
              "a weight from 0.1 to 150 kg was expected",
              "name the unit: kg or lb"));
    }
    return Reading.of(rounded);
  }
}
