package dev.dogleg.cli.settings;

import dev.dogleg.cli.words.DateGrammar;
import dev.dogleg.cli.words.DateOrder;
import dev.dogleg.cli.words.HoursGrammar;
import dev.dogleg.cli.words.PointGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Place;
import dev.dogleg.model.Tag;
import dev.dogleg.model.Van;
import dev.dogleg.model.WallSpan;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Reads the groomers and vans of a card. */
final class PeopleAndVans {
  private final CardLog log;
  private final CardMap top;
  private final DateOrder order;

  PeopleAndVans(CardLog log, CardMap top, DateOrder order) {
    this.log = log;
    this.top = top;
    this.order = order;
  }

  List<Van> vans() {
    List<Van> vans = new ArrayList<>();
    List<CardMap> sections = top.maps("vans");
    if (sections.isEmpty()) {
      log.stop("missing-key", top.where("vans"), "", "at least one van is needed", "vans:");
    }
    for (CardMap section : sections) {
      Optional<String> name = section.required("name", "name: Blue van");
      Van van =
          new Van(
              Slug.of(name.orElse("van")),
              name.orElse("van"),
              metres(section, "height_m", 100, 500, 280, "2.80"),
              metres(section, "width_m", 100, 300, 225, "2.25"),
              metres(section, "length_m", 200, 2_000, 600, "6.00"),
              section.whole("weight_kg", 500, 40_000, 3_500),
              section.whole("top_speed_kmh", 30, 130, 110),
              section.yes("ferries", false),
              litres(section, "fresh_litres"),
              litres(section, "grey_litres"),
              section.yes("lift", false),
              WeekCard.tags(log, section, order));
      section.close();
      if (vans.stream().anyMatch(other -> other.id().equals(van.id()))) {
        log.stop("duplicate-key", section.where("name"), van.name(), "is the name of two vans", "");
      } else {
        vans.add(van);
      }
    }
    return vans;
  }

  private static int metres(
      CardMap section, String key, int least, int most, int usual, String as) {
    return section.read(key, usual, as, text -> CardMap.scaled(text, least, most, 2));
  }

  private static OptionalInt litres(CardMap section, String key) {
    return section.text(key).isEmpty()
        ? OptionalInt.empty()
        : OptionalInt.of(section.whole(key, 0, 2_000, 0));
  }

  List<Groomer> groomers(List<Van> vans) {
    List<Groomer> groomers = new ArrayList<>();
    List<CardMap> sections = top.maps("groomers");
    if (sections.isEmpty()) {
      log.stop(
          "missing-key", top.where("groomers"), "", "at least one groomer is needed", "groomers:");
    }
    for (CardMap section : sections) {
      Optional<String> name = section.required("name", "name: Robin");
      int pace = section.read("pace", 1_000, "1.00", text -> CardMap.scaled(text, 500, 2_000, 3));
      Map<DayOfWeek, WallSpan> hours = hours(section);
      List<DateSpan> daysOff = daysOff(section);
      Optional<Place> home = home(section);
      Optional<String> van = van(section, vans);
      List<Tag> tags = WeekCard.tags(log, section, order);
      section.close();
      if (home.isEmpty() || van.isEmpty()) {
        continue;
      }
      String id = Slug.of(name.orElse("groomer"));
      if (groomers.stream().anyMatch(other -> other.id().equals(id))) {
        log.stop("duplicate-key", section.where("name"), name.orElse(""), "is the name of two", "");
      } else {
        groomers.add(
            new Groomer(
                id, name.orElse("groomer"), pace, hours, daysOff, home.get(), van.get(), tags));
      }
    }
    return groomers;
  }

  private Map<DayOfWeek, WallSpan> hours(CardMap section) {
    Map<DayOfWeek, WallSpan> hours = new EnumMap<>(DayOfWeek.class);
    Optional<CardMap> week = section.map("hours");
    if (week.isEmpty()) {
      if (!section.has("hours")) {
        log.stop(
            "missing-key",
            section.where("hours"),
            "",
            "hours are needed",
            "hours: {mon: 8:00-18:00}");
      }
      return hours;
    }
    CardMap days = week.get();
    for (DayOfWeek day : DayOfWeek.values()) {
      String full = day.name().toLowerCase(Locale.ROOT);
      String key = days.has(full) ? full : full.substring(0, 3);
      Optional<String> text = days.text(key);
      if (text.isPresent() && !text.get().equalsIgnoreCase("off")) {
        days.said(key, text.get(), HoursGrammar.read(text.get()))
            .ifPresent(span -> hours.put(day, span));
      }
    }
    days.close();
    if (hours.isEmpty() && !log.stopped()) {
      log.stop("missing-key", days.where(), "", "at least one working day is needed", "");
    }
    return hours;
  }

  private List<DateSpan> daysOff(CardMap section) {
    List<DateSpan> off = new ArrayList<>();
    for (ScalarNode node : section.texts("days_off")) {
      for (String text : node.getValue().split(",")) {
        if (text.isBlank()) {
          continue;
        }
        Reading<DateSpan> span = DateGrammar.read(text.strip(), order);
        span.value().ifPresent(off::add);
        for (Remark remark : span.remarks()) {
          Severity severity = span.value().isEmpty() ? Severity.STOP : remark.severity();
          log.add(remark.at(log.where(node, "days_off"), text.strip()).as(severity));
        }
      }
    }
    log.inForce(
        "days_off",
        off.isEmpty()
            ? "none"
            : off.stream().map(DateSpan::toString).collect(Collectors.joining(", ")),
        off.isEmpty() ? "default" : section.where("days_off").toString());
    return off;
  }

  private Optional<Place> home(CardMap section) {
    Optional<String> address = section.text("home");
    Optional<String> pin = section.text("home_pin");
    if (address.isEmpty() && pin.isEmpty()) {
      log.stop(
          "missing-key",
          section.where("home"),
          "",
          "home or home_pin is needed",
          "home: 2 Mill Lane");
      return Optional.empty();
    }
    address.ifPresent(text -> log.inForce("home", text, section.where("home")));
    Optional<GeoPoint> point = Optional.empty();
    if (pin.isPresent()) {
      point = section.said("home_pin", pin.get(), PointGrammar.read(pin.get(), Optional.empty()));
      if (point.isEmpty()) {
        return Optional.empty();
      }
    }
    return Optional.of(new Place(address.orElse(""), point));
  }

  private Optional<String> van(CardMap section, List<Van> vans) {
    Optional<String> name = section.text("van");
    if (name.isEmpty()) {
      return vans.stream().findFirst().map(Van::id);
    }
    Optional<Van> van =
        vans.stream()
            .filter(one -> Slug.fold(one.name()).equals(Slug.fold(name.get())))
            .findFirst();
    if (van.isEmpty()) {
      log.stop(
          "unknown-van",
          section.where("van"),
          name.get(),
          "the name of a van of this card was expected",
          "vans: " + vans.stream().map(Van::name).collect(Collectors.joining(", ")));
    }
    return van.map(Van::id);
  }
}
