package dev.dogleg.cli.words;

import com.google.i18n.phonenumbers.NumberParseException;
import com.google.i18n.phonenumbers.PhoneNumberUtil;
import com.google.i18n.phonenumbers.PhoneNumberUtil.PhoneNumberFormat;
import com.google.i18n.phonenumbers.PhoneNumberUtil.ValidationResult;
import com.google.i18n.phonenumbers.Phonenumber.PhoneNumber;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Reads a phone number into E.164 with libphonenumber. <i>Possible</i> numbers are taken, not only
 * <i>valid</i> ones: numbers reserved for fiction are not valid everywhere.
 *
 * <p>A number that a spreadsheet robbed of its plus or its leading zero is said; it is taken only
 * where one reading is left.
 */
public final class PhoneGrammar {
  private static final PhoneNumberUtil PHONES = PhoneNumberUtil.getInstance();
  private static final Pattern BARE = Pattern.compile("\\d+(\\.0+)?");
  private static final Pattern WRITABLE = Pattern.compile("[+0-9() ./\\u2010-\\u2015x#-]{3,40}");

  private PhoneGrammar() {}

  /**
   * Whether a country has phone numbers that can be read.
   *
   * @param country ISO 3166-1 alpha-2
   * @return true where libphonenumber knows the region
   */
  public static boolean knows(String country) {
    return PHONES.getSupportedRegions().contains(country);
  }

  /**
   * Reads a cell.
   *
   * @param cell its text, not blank
   * @param country region of numbers without a country code
   * @return E.164 text; codes {@code phone-became-number}, {@code phone-lost-plus}, {@code
   *     phone-lost-zero}, {@code bad-phone}, none of which sets a row aside
   */
  public static Reading<String> read(String cell, String country) {
    String text = cell.strip();
    if (SpreadsheetDamage.power(text)) {
      return Reading.none(
          Remark.look(
              "phone-became-number",
              "a phone number was expected; a spreadsheet cut it down to a power of ten",
              "its last digits are lost: format the column as text and write it again"));
    }
    if (!WRITABLE.matcher(text).matches()) {
      return Reading.none(bad("digits, spaces, brackets, hyphens and a leading plus only"));
    }
    if (text.startsWith("00")) {
      text = "+" + text.substring(2);
    }
    Optional<PhoneNumber> local = parse(text, country);
    boolean bare = BARE.matcher(text).matches();
    if (bare) {
      text = text.replaceFirst("\\.0+$", "");
      local = parse(text, country);
    }
    if (local.isPresent()) {
      String found = PHONES.format(local.get(), PhoneNumberFormat.E164);
      return bare ? ofBare(text, country, local.get(), found) : Reading.of(found);
    }
    if (bare && text.length() >= 10) {
      Optional<PhoneNumber> abroad = parse("+" + text, country);
      if (abroad.isPresent()) {
        return Reading.none(
            Remark.look(
                "phone-lost-plus",
                "a phone number of " + country + " or one with a plus was expected",
                "if it is a number abroad, write +" + text));
      }
    }
    return Reading.none(bad("with its area code, or with + and the country code"));
  }

  /** Bare digits: was a plus or a leading zero lost? */
  private static Reading<String> ofBare(
      String text, String country, PhoneNumber number, String found) {
    String code = String.valueOf(number.getCountryCode());
    String prefix = PHONES.getNddPrefixForRegion(country, true);
    boolean withCode = found.equals("+" + text) && !"1".equals(code);
    if (withCode) {
      return Reading.of(
          found,
          Remark.look(
              "phone-lost-plus",
              "was read as " + found + "; its plus is missing",
              "format the column as text"));
    }
    String national = PHONES.getNationalSignificantNumber(number);
    if ("0".equals(prefix) && text.equals(national) && !national.startsWith("0")) {
      return Reading.of(
          found,
          Remark.look(
              "phone-lost-zero",
              "was read as " + found + "; its leading zero is missing",
              "format the column as text"));
    }
    return Reading.of(found);
  }

  private static Optional<PhoneNumber> parse(String text, String country) {
    try {
      PhoneNumber number = PHONES.parse(text, country);
      boolean possible = PHONES.isPossibleNumberWithReason(number) == ValidationResult.IS_POSSIBLE;
      return possible && !number.hasExtension() ? Optional.of(number) : Optional.empty();
    } catch (NumberParseException e) {
      return Optional.empty();
    }
  }

  private static Remark bad(String hint) {
    return Remark.look("bad-phone", "a phone number was expected", hint);
  }
}
