package dev.dogleg.cli.settings;

import dev.dogleg.cli.words.DateOrder;
import dev.dogleg.cli.words.MinutesGrammar;
import dev.dogleg.cli.words.PointGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.cli.words.TagGrammar;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.BalanceWish;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Helper;
import dev.dogleg.model.Place;
import dev.dogleg.model.PromiseWish;
import dev.dogleg.model.Remedy;
import dev.dogleg.model.RemedyPrices;
import dev.dogleg.model.Tag;
import dev.dogleg.model.WaterWish;
import dev.dogleg.model.WeekWishes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads what a card says about planning several days together. */
final class WeekCard {
  private final CardLog log;
  private final CardMap top;
  private final DateOrder order;

  WeekCard(CardLog log, CardMap top, DateOrder order) {
    this.log = log;
    this.top = top;
    this.order = order;
  }

  WeekWishes read(Optional<CardMap> prices) {
    List<Remedy> whenFull = whenFull();
    RemedyPrices usual = RemedyPrices.of(whenFull);
    RemedyPrices remedy = usual;
    if (prices.isPresent()) {
      CardMap own = prices.get();
      remedy =
          new RemedyPrices(
              usual.overtimeTimes(),
              own.whole("ask_seconds", 0, 1_000_000, usual.askSeconds()),
              own.whole("next_week_seconds", 0, 1_000_000, usual.nextWeekSeconds()),
              own.whole("like_seconds", 0, 36_000, usual.likeSeconds()));
    }
    return new WeekWishes(whenFull, remedy, water(), balance(), helpers(), promises(prices));
  }

  private PromiseWish promises(Optional<CardMap> prices) {
    PromiseWish usual = PromiseWish.STARTER;
    int broken =
        prices
            .map(own -> own.whole("broken_promise_seconds", 0, 1_000_000, usual.brokenSeconds()))
            .orElse(usual.brokenSeconds());
    int kept = top.whole("kept_percent", 50, 99, usual.keptPercent());
    return new PromiseWish(kept, broken);
  }

  private List<Remedy> whenFull() {
    List<Remedy> remedies = new ArrayList<>();
    List<ScalarNode> nodes = top.texts("when_full");
    for (ScalarNode node : nodes) {
      for (String text : node.getValue().split(",", -1)) {
        String words = text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
        Optional<Remedy> remedy =
            Arrays.stream(Remedy.values()).filter(one -> one.words().equals(words)).findFirst();
        if (remedy.isPresent() && !remedies.contains(remedy.get())) {
          remedies.add(remedy.get());
        } else if (!words.isEmpty() && !words.equals("none")) {
          log.stop(
              "bad-card-value",
              log.where(node, "when_full"),
              text.strip(),
              "longer day, ask or next week was expected, each once",
              "when_full: [longer day, ask, next week]");
        }
      }
    }
    List<Remedy> inForce = nodes.isEmpty() ? WeekWishes.USUAL_ORDER : remedies;
    log.inForce(
        "when_full",
        inForce.stream().map(Remedy::words).collect(Collectors.joining(", ")),
        nodes.isEmpty() ? "default" : top.where("when_full").toString());
    return inForce;
  }

  private WaterWish water() {
    Optional<CardMap> section = top.map("water");
    if (section.isEmpty()) {
      return WaterWish.STARTER;
    }
    CardMap water = section.get();
    boolean home = false;
    List<Place> places = new ArrayList<>();
    List<ScalarNode> nodes = water.texts("places");
    for (ScalarNode node : nodes) {
      String text = node.getValue().strip();
      if (text.equalsIgnoreCase("home")) {
        home = true;
      } else if (!text.isEmpty()) {
        places.add(place(text));
      }
    }
    int minutes = water.read("minutes", 20, "20", text -> MinutesGrammar.read(text, 0, 240));
    int most = water.whole("most", 0, 4, 1);
    water.close();
    return new WaterWish(home || nodes.isEmpty(), places, 60 * minutes, most);
  }

  /** An address, or latitude and longitude. */
  static Place place(String text) {
    Optional<GeoPoint> pin = PointGrammar.read(text, Optional.empty()).value();
    return new Place(text, pin);
  }

  private Optional<BalanceWish> balance() {
    Optional<CardMap> section = top.map("balance");
    if (section.isEmpty()) {
      log.inForce("balance", "none", "default");
      return Optional.empty();
    }
    CardMap own = section.get();
    int groom =
        own.read(
            "groom_minutes",
            -1,
            "even share",
            text ->
                text.equalsIgnoreCase("even")
                    ? Reading.of(-1)
                    : MinutesGrammar.read(text, 0, 1_440));
    int groomPrice = own.whole("groom_minute_seconds", 0, 3_600, 30);
    int end = own.read("end", -1, "none", WeekCard::clock);
    int endPrice = own.whole("end_minute_seconds", 0, 3_600, 30);
    own.close();
    return Optional.of(
        new BalanceWish(
            groom < 0 ? OptionalInt.empty() : OptionalInt.of(60 * groom),
            groomPrice,
            end < 0 ? OptionalInt.empty() : OptionalInt.of(end),
            endPrice));
  }

  private static Reading<Integer> clock(String text) {
    if (text.equalsIgnoreCase("none")) {
      return Reading.of(-1);
    }
    if (text.matches("([01]?\\d|2[0-3])[:.][0-5]\\d")) {
      String[] parts = text.split("[:.]", -1);
      return Reading.of(3_600 * Integer.parseInt(parts[0]) + 60 * Integer.parseInt(parts[1]));
    }
    return Reading.none(Remark.aside("bad-card-value", "a time like 16:30 was expected", ""));
  }

  private List<Helper> helpers() {
    List<Helper> helpers = new ArrayList<>();
    for (CardMap section : top.maps("helpers")) {
      Optional<String> name = section.required("name", "name: Sam");
      List<Tag> tags = tags(log, section, order);
      section.close();
      if (name.isEmpty()) {
        continue;
      }
      String id = Slug.of(name.get());
      if (helpers.stream().anyMatch(other -> other.id().equals(id))) {
        log.stop("duplicate-key", section.where("name"), name.get(), "is the name of two", "");
      } else {
        helpers.add(new Helper(id, name.get(), tags));
      }
    }
    return helpers;
  }

  /** Tags of a person or van. */
  static List<Tag> tags(CardLog log, CardMap section, DateOrder order) {
    List<Tag> tags = new ArrayList<>();
    for (ScalarNode node : section.texts("tags")) {
      Reading<List<Tag>> read = TagGrammar.read(node.getValue(), order);
      read.value().ifPresent(tags::addAll);
      for (Remark remark : read.remarks()) {
        log.add(
            remark
                .at(log.where(node, "tags"), node.getValue())
                .as(remark.severity() == Severity.NOTE ? Severity.NOTE : Severity.STOP));
      }
    }
    return tags;
  }
}
