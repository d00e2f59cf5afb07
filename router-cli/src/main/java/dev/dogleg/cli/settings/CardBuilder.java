package dev.dogleg.cli.settings;

import dev.dogleg.cli.words.ClockGrammar;
import dev.dogleg.cli.words.DateOrder;
import dev.dogleg.cli.words.HoursGrammar;
import dev.dogleg.cli.words.LanguageGrammar;
import dev.dogleg.cli.words.MoneyGrammar;
import dev.dogleg.cli.words.PhoneGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.WeightGrammar;
import dev.dogleg.model.BreakWish;
import dev.dogleg.model.Business;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Van;
import dev.dogleg.model.WallSpan;
import dev.dogleg.model.WeekWishes;
import dev.dogleg.model.Worth;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Builds a {@link Card} out of the mapping at a card's top. */
final class CardBuilder {
  private static final int FORMAT = 1;

  /** Countries that drive on the left and where a card most likely comes from; from memory. */
  private static final Set<String> LEFT =
      Set.of(
          "AU", "CY", "GB", "GG", "HK", "IE", "IM", "IN", "JE", "JP", "KE", "LK", "MT", "MY", "NZ",
          "SG", "TH", "ZA");

  private final CardLog log;
  private final CardMap top;
  private final Path folder;

  CardBuilder(CardLog log, CardMap top, Path folder) {
    this.log = log;
    this.top = top;
    this.folder = folder;
  }

  Optional<Card> build() {
    if (!formatKnown()) {
      return Optional.empty();
    }
    String name = top.read("name", "", "", Reading::of);
    Optional<String> country = country();
    Currency currency = currency(country.orElse("US"));
    Optional<ZoneId> zone = zone();
    boolean left =
        top.read(
            "drive_on",
            country.filter(LEFT::contains).isPresent(),
            country.filter(LEFT::contains).isPresent() ? "left" : "right",
            CardBuilder::side);
    DateOrder order = top.read("date_order", DateOrder.ISO, "iso", CardBuilder::dateOrder);
    boolean pounds = country.filter("US"::equals).isPresent();
    WeightGrammar.Unit unit =
        top.read(
            "weight_unit",
            pounds ? WeightGrammar.Unit.LB : WeightGrammar.Unit.KG,
            pounds ? "lb" : "kg",
            CardBuilder::unit);
    Optional<Path> map = map();
    List<Van> vans = new PeopleAndVans(log, top, order).vans();
    List<Groomer> groomers = new PeopleAndVans(log, top, order).groomers(vans);
    Optional<BreakWish> dailyBreak = dailyBreak();
    int overtime = 60 * top.whole("overtime_minutes", 0, 720, 60);
    int stop = 60 * top.whole("stop_minutes", 0, 120, 18);
    int further = 60 * top.whole("further_pet_minutes", 0, 60, 7);
    int percent = top.whole("plan_percent", 1, 99, 50);
    Optional<CardMap> prices = top.map("prices");
    Worth worth = worth(currency, prices);
    WeekWishes week = new WeekCard(log, top, order).read(prices);
    prices.ifPresent(CardMap::close);
    TextWishes texts = texts();
    top.close();
    if (log.stopped() || country.isEmpty() || zone.isEmpty()) {
      return Optional.empty();
    }
    Business business =
        new Business(
            name,
            country.get(),
            currency,
            zone.get(),
            left,
            map,
            groomers,
            vans,
            dailyBreak,
            overtime,
            stop,
            further,
            percent,
            worth,
            week);
    return Optional.of(new Card(business, order, unit, texts, log.inForce()));
  }

  private boolean formatKnown() {
    int format = top.whole("format", 1, 1_000_000, FORMAT);
    if (format > FORMAT) {
      log.stop(
          "newer-format",
          top.where("format"),
          String.valueOf(format),
          "format " + FORMAT + " is the newest this program reads",
          "use a newer program");
      return false;
    }
    return true;
  }

  private Optional<String> country() {
    return top.required("country", "two letters (ISO 3166), for example country: US")
        .flatMap(
            text -> {
              String code = text.toUpperCase(Locale.ROOT);
              boolean known =
                  Set.of(Locale.getISOCountries()).contains(code) && PhoneGrammar.knows(code);
              return top.said(
                  "country",
                  text,
                  known
                      ? Reading.of(code)
                      : Reading.none(bad("two letters of a country (ISO 3166) were expected")));
            });
  }

  private Currency currency(String country) {
    Currency usual = Currency.getInstance(Locale.US);
    try {
      Currency own = Currency.getInstance(new Locale.Builder().setRegion(country).build());
      usual = own == null ? usual : own;
    } catch (IllegalArgumentException e) {
      // A country without a currency of its own: the starter currency stays the default.
    }
    return top.read(
        "currency",
        usual,
        usual.getCurrencyCode(),
        text -> {
          try {
            return Reading.of(Currency.getInstance(text.toUpperCase(Locale.ROOT)));
          } catch (IllegalArgumentException e) {
            return Reading.none(bad("three letters of a currency (ISO 4217) were expected"));
          }
        });
  }

  private Optional<ZoneId> zone() {
    return top.required("time_zone", "for example time_zone: America/New_York")
        .flatMap(
            text -> {
              try {
                return top.said("time_zone", text, Reading.of(ZoneId.of(text)));
              } catch (DateTimeException e) {
                return top.said(
                    "time_zone",
                    text,
                    Reading.<ZoneId>none(bad("a time zone like Europe/London was expected")));
              }
            });
  }

  private Optional<Path> map() {
    Optional<String> text = top.text("map");
    if (text.isEmpty()) {
      return Optional.empty();
    }
    try {
      return top.said("map", text.get(), Reading.of(folder.resolve(text.get()).normalize()));
    } catch (InvalidPathException e) {
      return top.said("map", text.get(), Reading.<Path>none(bad("a file's path was expected")));
    }
  }

  private Optional<BreakWish> dailyBreak() {
    Optional<CardMap> section = top.map("break");
    if (section.isEmpty()) {
      if (!top.has("break")) {
        log.inForce("break", "none", "default");
      }
      return Optional.empty();
    }
    CardMap wish = section.get();
    int minutes = wish.whole("minutes", 1, 240, 30);
    WallSpan start =
        wish.read("start", new WallSpan(41_400, 50_400), "11:30-14:00", HoursGrammar::read);
    wish.close();
    return Optional.of(new BreakWish(60 * minutes, start));
  }

  private TextWishes texts() {
    Optional<CardMap> section = top.map("texts");
    if (section.isEmpty()) {
      return TextWishes.STARTER;
    }
    TextWishes usual = TextWishes.STARTER;
    CardMap wish = section.get();
    String language =
        wish.read("language", usual.language(), usual.language(), LanguageGrammar::read);
    int evening =
        wish.read(
            "evening",
            usual.eveningSeconds(),
            WallSpan.text(usual.eveningSeconds()),
            ClockGrammar::read);
    wish.close();
    return new TextWishes(language, evening);
  }

  /** The plain questions set starter prices; a price named under {@code prices} wins. */
  private Worth worth(Currency currency, Optional<CardMap> section) {
    boolean early = top.yes("home_early", false);
    boolean miles = top.yes("fewer_miles", false);
    boolean changes = top.yes("fewest_changes", true);
    int exponent = Math.max(0, currency.getDefaultFractionDigits());
    long usualHour = 45 * Math.round(Math.pow(10, exponent));
    long hour = top.read("hour_worth", usualHour, "45", text -> MoneyGrammar.read(text, currency));
    int waitingList = 60 * top.whole("waiting_list_minutes", 0, 1_440, 60);
    int kilometre = miles ? 60 : 20;
    int waiting = 20;
    int overtime = 120;
    int end = early ? 30 : 0;
    int change = changes ? 600 : 0;
    if (section.isPresent()) {
      CardMap own = section.get();
      kilometre = own.whole("kilometre_seconds", 0, 3_600, kilometre);
      waiting = own.whole("waiting_minute_seconds", 0, 3_600, waiting);
      overtime = own.whole("overtime_minute_seconds", 0, 36_000, overtime);
      end = own.whole("end_minute_seconds", 0, 3_600, end);
      change = own.whole("change_seconds", 0, 36_000, change);
    }
    if (hour < 1) {
      log.stop(
          "bad-card-value", top.where("hour_worth"), "0", "more than nothing was expected", "");
      hour = 1;
    }
    return new Worth(kilometre, waiting, overtime, end, change, hour, waitingList);
  }

  private static Reading<Boolean> side(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "left" -> Reading.of(true);
      case "right" -> Reading.of(false);
      default -> Reading.none(bad("left or right was expected"));
    };
  }

  private static Reading<DateOrder> dateOrder(String text) {
    return switch (text.toLowerCase(Locale.ROOT).replace('-', '_')) {
      case "iso" -> Reading.of(DateOrder.ISO);
      case "day_first" -> Reading.of(DateOrder.DAY_FIRST);
      case "month_first" -> Reading.of(DateOrder.MONTH_FIRST);
      default -> Reading.none(bad("iso, day_first or month_first was expected"));
    };
  }

  private static Reading<WeightGrammar.Unit> unit(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "kg" -> Reading.of(WeightGrammar.Unit.KG);
      case "lb", "lbs" -> Reading.of(WeightGrammar.Unit.LB);
      default -> Reading.none(bad("kg or lb was expected"));
    };
  }

  private static Remark bad(String expected) {
    return Remark.aside("bad-card-value", expected, "");
  }
}
