package dev.dogleg.cli.words;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.WallSpan;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Dates, minutes, money, weights, phones, points. */
class CellGrammarsTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "2027-03-02 | 2027-03-02",
        "2027/3/2 | 2027-03-02",
        "2027.03.02 | 2027-03-02",
        "2027-03-02 00:00:00 | 2027-03-02",
        "2 Mar 2027 | 2027-03-02",
        "2nd March 2027 | 2027-03-02",
        "March 2, 2027 | 2027-03-02",
        "02-Mar-2027 | 2027-03-02",
        "13/03/2027 | 2027-03-13",
        "03/13/2027 | 2027-03-13",
        "03/03/2027 | 2027-03-03",
        "2028-02-29 | 2028-02-29",
        "2027-03-01..2027-03-05 | 2027-03-01..2027-03-05",
        "2027-03-01 to 2027-03-05 | 2027-03-01..2027-03-05",
        "02/03/2027 | ambiguous-date",
        "2027-02-29 | bad-date",
        "2027-13-01 | bad-date",
        "1827-03-02 | bad-date",
        "02/03/27 | bad-date",
        "soon | bad-date",
        "2027-03-01..2029-03-05 | bad-date",
        "a..b..c | bad-date",
        "2027-03-05..2027-03-01 | span-backwards",
        "46448 | date-became-number",
        "1899-12-30 | date-1900",
      })
  void dates(String cell, String expected) {
    assertEquals(expected, said(DateGrammar.read(cell, DateOrder.ISO)));
  }

  @Test
  void theCardMaySayHowDatesAreWritten() {
    assertEquals("2027-03-02", said(DateGrammar.read("02/03/2027", DateOrder.DAY_FIRST)));
    assertEquals("2027-02-03", said(DateGrammar.read("02/03/2027", DateOrder.MONTH_FIRST)));
    assertEquals("bad-date", said(DateGrammar.read("02/13/2027", DateOrder.DAY_FIRST)));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "75 | 75",
        "75 min | 75",
        "75.0 | 75",
        "1h15 | 75",
        "1 h 15 min | 75",
        "2 hours | 120",
        "1:15 | 75",
        "01:15:00 | 75",
        "0.0520833333 | time-became-number",
        "5000 | absurd-minutes",
        "1 | absurd-minutes",
        "75.5 | bad-minutes",
        "-75 | bad-minutes",
        "99999999999999999999 | bad-minutes",
      })
  void minutes(String cell, String expected) {
    assertEquals(expected, said(MinutesGrammar.read(cell, 3, 480)));
  }

  /** Exponents of ISO 4217 as Java knows them: dollar 2, yen 0, Kuwaiti dinar 3. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "65 | USD | 6500",
        "65.5 | USD | 6550",
        "65,50 | USD | 6550",
        "$65 | USD | 6500",
        "65.00 USD | USD | 6500",
        "6500 | JPY | 6500",
        "65.5 | JPY | bad-money",
        "1.250 | KWD | 1250",
        "1,250 | USD | bad-money",
        "1,250.00 | USD | bad-money",
        "-5 | USD | bad-money",
        "999999 | USD | bad-money",
      })
  void money(String cell, String currency, String expected) {
    assertEquals(expected, said(MoneyGrammar.read(cell, Currency.getInstance(currency))));
  }

  /** One pound is 453.59237 g (international yard and pound agreement of 1959, from memory). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "8 kg | 8000",
        "8,5kg | 8500",
        "18 lb | 8165",
        "18 lbs | 8165",
        "8 | 8000",
        "900 g | 900",
        "800 kg | absurd-weight",
        "0 | absurd-weight",
        "8 stone | bad-weight",
      })
  void weights(String cell, String expected) {
    assertEquals(expected, said(WeightGrammar.read(cell, WeightGrammar.Unit.KG)));
  }

  /**
   * Numbers set aside for fiction: 555-01xx (North American numbering plan), 07700 900xxx and 020
   * 7946 0xxx (Ofcom), both from memory.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "(212) 555-0100 | US | +12125550100",
        "212.555.0100 | US | +12125550100",
        "2125550100 | US | +12125550100",
        "12125550100 | US | +12125550100",
        "+44 7700 900123 | US | +447700900123",
        "0044 7700 900123 | US | +447700900123",
        "07700 900123 | GB | +447700900123",
        "020 7946 0123 | GB | +442079460123",
        "7700900123 | GB | +447700900123",
        "447700900123 | GB | +447700900123",
        "2125550100.0 | US | +12125550100",
        "1.2125E+10 | US | phone-became-number",
        "447700900123 | US | phone-lost-plus",
        "555 | US | bad-phone",
        "the shop | US | bad-phone",
        "212-555-0100 x 12 | US | bad-phone",
      })
  void phones(String cell, String country, String expected) {
    assertEquals(expected, said(PhoneGrammar.read(cell, country)));
  }

  @Test
  void aPhoneWithoutItsPlusOrZeroIsSaid() {
    assertEquals("phone-lost-zero", PhoneGrammar.read("7700900123", "GB").remarks().get(0).code());
    assertEquals(
        "phone-lost-plus", PhoneGrammar.read("447700900123", "GB").remarks().get(0).code());
    assertEquals(List.of(), PhoneGrammar.read("07700900123", "GB").remarks());
  }

  /** {@code geo:13.4125,103.8667} is the example of RFC 5870, section 6.1. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "13.4125,103.8667 | 13.412500,103.866700",
        "geo:13.4125,103.8667 | 13.412500,103.866700",
        "geo:13.4125,103.8667;u=35 | 13.412500,103.866700",
        "(13.4125; 103.8667) | 13.412500,103.866700",
        "13.4125 103.8667 | 13.412500,103.866700",
        "13.4125° N, 103.8667° E | 13.412500,103.866700",
        "103.8667 E, 13.4125 N | 13.412500,103.866700",
        "-33.5, -70.25 | -33.500000,-70.250000",
        "33.5 S 70.25 W | -33.500000,-70.250000",
        "103.8667,13.4125 | swapped-lat-lon",
        "200,300 | bad-pin",
        "13,4125,103,8667 | bad-pin",
        "here | bad-pin",
      })
  void points(String cell, String expected) {
    assertEquals(expected, said(PointGrammar.read(cell, Optional.empty())));
  }

  @Test
  void theMapShowsThatLatitudeAndLongitudeWereSwapped() {
    MapBounds map = new MapBounds(10, 40, 11, 41);
    assertEquals("swapped-lat-lon", said(PointGrammar.read("40.5,10.5", Optional.of(map))));
    assertEquals("10.500000,40.500000", said(PointGrammar.read("10.5,40.5", Optional.of(map))));
    // Off the map either way round: that is not for the reader to judge.
    assertEquals("50.000000,60.000000", said(PointGrammar.read("50,60", Optional.of(map))));
    assertTrue(map.holds(new GeoPoint(10, 41)));
  }

  @Test
  void toldTimesAreOneSpan() {
    WallSpan shift = new WallSpan(28_800, 64_800);
    assertEquals(
        "10:00-11:00",
        ToldGrammar.read("10-11", shift).value().orElseThrow().arriveWithin().toString());
    for (String cell : List.of("first", "after 10", "9-10; 11-12", "Tue 9-10", "done by 11")) {
      assertEquals("bad-told-time", said(ToldGrammar.read(cell, shift)), cell);
    }
  }

  @Test
  void noTextMakesAnyGrammarThrow() {
    Currency dollar = Currency.getInstance("USD");
    List<Function<String, Reading<?>>> grammars =
        List.of(
            text -> DateGrammar.read(text, DateOrder.ISO),
            text -> DateGrammar.read(text, DateOrder.DAY_FIRST),
            text -> MinutesGrammar.read(text, 3, 480),
            text -> MoneyGrammar.read(text, dollar),
            text -> WeightGrammar.read(text, WeightGrammar.Unit.LB),
            text -> PhoneGrammar.read(text, "GB"),
            text -> PointGrammar.read(text, Optional.empty()),
            text -> PointGrammar.read(text, text, Optional.empty()),
            text -> HoursGrammar.read(text),
            text -> ClockGrammar.read(text, new WallSpan(28_800, 64_800)),
            text -> DecimalGrammar.read(text, 60, 0, 36_000),
            text -> ToldGrammar.read(text, WallSpan.ALWAYS));
    String[] parts = {
      "1",
      "9",
      "0",
      "27",
      "2027",
      "-",
      "/",
      ".",
      ",",
      ":",
      "e+",
      "E",
      "+",
      "mar",
      "kg",
      "lb",
      "h",
      "min",
      "$",
      "n",
      "w",
      " ",
      ";",
      "..",
      "to",
      "99999999999999999999",
      "٣",
      "é",
      "geo:",
      "°"
    };
    SplittableRandom random = new SplittableRandom(7);
    for (int run = 0; run < Integer.getInteger("dogleg.runs", 3_000); run++) {
      StringBuilder cell = new StringBuilder();
      for (int i = random.nextInt(1, 8); i > 0; i--) {
        cell.append(parts[random.nextInt(parts.length)]);
      }
      String text = cell.toString();
      for (Function<String, Reading<?>> grammar : grammars) {
        Reading<?> read = grammar.apply(text);
        assertTrue(read.value().isPresent() || !read.remarks().isEmpty(), text);
      }
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "9:30 | 34200",
        "09.30 | 34200",
        "0930 | 34200",
        "3:10 | 54600",
        "3pm | 54000",
        "3 p.m. | 54000",
        "11:20 a.m. | 40800",
        "15:00:20 | 54020",
        "noon | 43200",
        "24:10 | bad-time",
        "9-10 | bad-time",
        "0.4375 | time-became-number",
        "1899-12-30 | date-1900"
      })
  void clockTimes(String cell, String expected) {
    assertEquals(expected, said(ClockGrammar.read(cell, new WallSpan(28_800, 64_800))));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "12 | 720",
        "7.5 | 450",
        "7,5 | 450",
        "0.008 | 0",
        "600 | 36000",
        "601 | bad-number",
        "-1 | bad-number",
        "1e3 | bad-number",
        "9 min | bad-number"
      })
  void decimals(String cell, String expected) {
    assertEquals(expected, said(DecimalGrammar.read(cell, 60, 0, 36_000)));
  }

  /** The value as text, or the first code. */
  private static String said(Reading<?> reading) {
    return reading.value().map(Object::toString).orElseGet(() -> reading.remarks().get(0).code());
  }
}
