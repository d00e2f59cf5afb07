package dev.dogleg.cli.terms;

import dev.dogleg.cli.words.MatchGrammar;
import dev.dogleg.cli.words.RuleGrammar;
import dev.dogleg.cli.words.WhenGrammar;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Where;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.model.DayLimits;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Place;
import dev.dogleg.model.RuleMinutes;
import dev.dogleg.model.RuleShape;
import dev.dogleg.model.Strength;
import dev.dogleg.model.TagMatch;
import dev.dogleg.model.TagRule;
import dev.dogleg.model.Van;
import dev.dogleg.model.WallSpan;
import dev.dogleg.model.When;
import dev.dogleg.time.WorkDay;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/**
 * A week of a test: van-days from Monday 1 March 2027 on, stops by id, and rules in a few words.
 */
final class Week {
  static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);
  private static final WallSpan SHIFT = new WallSpan(28_800, 64_800);

  final List<VanDay> days = new ArrayList<>();
  final List<DraftStop> stops = new ArrayList<>();
  final Faults faults = new Faults();

  Week(int count) {
    for (int d = 0; d < count; d++) {
      day(Set.of(), Set.of());
    }
  }

  /** One more day with tags of its own. */
  VanDay day(Set<String> tags, Set<String> crew) {
    LocalDate date = MONDAY.plusDays(days.size());
    Place home = new Place("2 Orchard Row", Optional.empty());
    TreeSet<String> all = new TreeSet<>(VanDays.weekday(date.getDayOfWeek()));
    all.addAll(tags);
    VanDay day =
        new VanDay(
            days.size(),
            new Groomer("robin", "Robin", 1_000, Map.of(), List.of(), home, "van-1"),
            van(OptionalInt.empty()),
            new WorkDay(date, ZoneOffset.UTC),
            SHIFT,
            home,
            home,
            Optional.empty(),
            all,
            new TreeSet<>(crew));
    days.add(day);
    return day;
  }

  static Van van(OptionalInt litres) {
    return new Van("van-1", "Van 1", 280, 225, 600, 3_500, 110, false, litres, litres, false);
  }

  /** A stop of one pet with some tags, of 3,600 s, on some days. */
  DraftStop stop(String id, Set<String> tags, int... on) {
    return stop(id, List.of(tags), DayLimits.NONE, false, on);
  }

  DraftStop stop(String id, List<Set<String>> pets, DayLimits limits, boolean told, int... on) {
    DraftStop stop = new DraftStop(id, id.toUpperCase(java.util.Locale.ROOT), true, told);
    for (int day : on) {
      stop.add(new DraftChoice(day, 1, limits, 3_600, pets, new WaterUse(30_000, 30_000)));
    }
    stops.add(stop);
    return stop;
  }

  /** Rules of each day after some rules have been applied. */
  List<List<DayRule>> apply(TagRule... rules) {
    return RuleTerms.apply(
        List.of(rules), days, stops, name -> Where.file("rules.csv").at(name), faults);
  }

  /** Codes of what was said, each with its place. */
  List<String> said() {
    return faults.all().stream().map(fault -> fault.code() + " " + fault.where().column()).toList();
  }

  /** A rule: its name is its shape. */
  static Rule rule(RuleShape shape, String a) {
    return new Rule(shape, match(a));
  }

  static TagMatch match(String text) {
    return MatchGrammar.read(text).value().orElseThrow();
  }

  static When when(String text) {
    return WhenGrammar.read(text, SHIFT).value().orElseThrow();
  }

  /** Words for a rule. */
  static final class Rule {
    private final RuleShape shape;
    private final TagMatch a;
    private TagMatch b = TagMatch.ANY;
    private TagMatch on = TagMatch.ANY;
    private Optional<When> hours = Optional.empty();
    private int number;
    private RuleMinutes minutes = RuleMinutes.NONE;
    private Strength strength = Strength.MUST;
    private Optional<LocalDate> until = Optional.empty();
    private String line = "";

    private Rule(RuleShape shape, TagMatch a) {
      this.shape = shape;
      this.a = a;
    }

    Rule b(String tags) {
      b = match(tags);
      return this;
    }

    Rule on(String tags) {
      on = match(tags);
      return this;
    }

    Rule hours(String text) {
      hours = Optional.of(when(text));
      return this;
    }

    Rule number(int most) {
      number = most;
      return this;
    }

    Rule minutes(String text) {
      minutes = RuleGrammar.minutes(text).value().orElseThrow();
      return this;
    }

    Rule places(String text) {
      minutes = RuleGrammar.places(text, minutes).value().orElseThrow();
      return this;
    }

    Rule rather(int price) {
      strength = Strength.rather(price);
      return this;
    }

    Rule until(LocalDate last) {
      until = Optional.of(last);
      return this;
    }

    Rule line(String text) {
      line = text;
      return this;
    }

    TagRule named(String name) {
      return new TagRule(name, shape, a, b, on, hours, number, minutes, strength, until, line);
    }

    TagRule get() {
      return named(shape.words());
    }
  }
}
