package dev.dogleg.cli.terms;

import dev.dogleg.cli.words.MatchGrammar;
import dev.dogleg.cli.words.Nearness;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.AddOnKind;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.StopQuestions;
import dev.dogleg.groom.TableRow;
import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Book;
import dev.dogleg.model.Business;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.RuleShape;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import dev.dogleg.model.Tag;
import dev.dogleg.model.TagMatch;
import dev.dogleg.model.TagRule;
import dev.dogleg.model.Zone;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * Says which tags of rules nobody bears: most likely misspelt. A tag of the starter rules that is
 * not borne yet is a mere note.
 */
public final class TagVocabulary {
  private final NavigableSet<String> stops = new TreeSet<>();
  private final NavigableSet<String> days = new TreeSet<>();
  private final NavigableSet<String> crews = new TreeSet<>();
  private final Set<String> starter = starterTags();

  /**
   * The tags of a book.
   *
   * @param book the book
   * @param tables groom tables in force, for the names of services
   */
  public TagVocabulary(Book book, GroomTables tables) {
    for (Enum<?>[] values :
        List.<Enum<?>[]>of(
            Species.values(),
            SizeClass.values(),
            Coat.values(),
            Behaviour.values(),
            CoatState.values())) {
      for (Enum<?> value : values) {
        stops.add(PetTags.word(value));
      }
    }
    stops.addAll(
        List.of(
            "flat-faced",
            StopQuestions.SENIOR_TAG,
            "puppy",
            "first-visit",
            "told",
            "waiting",
            StopTagger.ERRAND));
    tables.services().forEach(service -> stops.add(PetTags.name(service.name())));
    tables.addOns(AddOnKind.ADD_ON).forEach(addOn -> stops.add(PetTags.name(addOn.name())));
    book.pets().forEach(pet -> add(stops, pet.tags()));
    book.clients().forEach(client -> add(stops, client.tags()));
    for (DayOfWeek day : DayOfWeek.values()) {
      days.addAll(VanDays.weekday(day));
    }
    book.week().days().forEach(entry -> add(days, entry.tags()));
    crews(book.business(), book.week().days().stream().anyMatch(e -> e.helper().isPresent()));
  }

  private void crews(Business business, boolean helped) {
    business
        .groomers()
        .forEach(
            groomer -> {
              crews.add(groomer.id());
              add(crews, groomer.tags());
            });
    business
        .vans()
        .forEach(
            van -> {
              crews.add(van.id());
              add(crews, van.tags());
              if (van.lift()) {
                crews.add(VanDays.LIFT);
              }
            });
    business
        .week()
        .helpers()
        .forEach(
            helper -> {
              crews.add(helper.id());
              add(crews, helper.tags());
            });
    if (helped || !business.week().helpers().isEmpty()) {
      crews.add(VanDays.HELPER);
    }
  }

  private static void add(Set<String> names, List<Tag> tags) {
    tags.forEach(tag -> names.add(tag.name()));
  }

  private static Set<String> starterTags() {
    Set<String> names = new TreeSet<>();
    for (TableRow row : StarterTables.rows("rules.csv")) {
      for (String column : List.of("a", "b", "on")) {
        String cell = row.cells().get(column);
        if (!cell.isBlank()) {
          MatchGrammar.read(cell).value().ifPresent(match -> names.addAll(match.names()));
        }
      }
    }
    return names;
  }

  /**
   * Names tags of rules and zones that nobody bears.
   *
   * @param rules the rules
   * @param zones the zones
   * @param ruleRows where a rule stands, by its name
   * @param zoneRows where a zone stands, by its name
   * @param faults takes one fault a rule and side
   */
  public void check(
      List<TagRule> rules,
      List<Zone> zones,
      Function<String, Where> ruleRows,
      Function<String, Where> zoneRows,
      Faults faults) {
    for (TagRule rule : rules) {
      Where where = ruleRows.apply(rule.name());
      boolean ofDays = rule.shape() == RuleShape.ONLY_ON || rule.shape() == RuleShape.NEVER_ON;
      NavigableSet<String> other =
          ofDays ? days : rule.shape() == RuleShape.ONLY_WITH ? crews : stops;
      check(rule.a(), stops, "pet, client or place", where.at("a"), faults);
      check(rule.on(), days, "day", where.at("on"), faults);
      check(rule.b(), other, what(other), where.at("b"), faults);
    }
    for (Zone zone : zones) {
      check(zone.days(), days, "day", zoneRows.apply(zone.name()).at("days"), faults);
    }
  }

  private String what(NavigableSet<String> side) {
    return side == days ? "day" : side == crews ? "person, van or helper" : "pet, client or place";
  }

  private void check(
      TagMatch match, NavigableSet<String> borne, String what, Where where, Faults faults) {
    List<String> strange = new ArrayList<>();
    boolean known = true;
    for (String tag : match.names()) {
      if (!isBorne(tag, borne)) {
        strange.add(tag);
        known &= starter.contains(tag);
      }
    }
    if (strange.isEmpty()) {
      return;
    }
    Optional<String> near = Nearness.nearest(strange.get(0), borne);
    faults.add(
        new Fault(
            "rule-matches-nobody",
            known ? Severity.NOTE : Severity.LOOK,
            where,
            String.join("; ", strange),
            "no " + what + " of the book bears this tag",
            near.map(tag -> "nearest: " + tag).orElse("")));
  }

  private static boolean isBorne(String tag, NavigableSet<String> borne) {
    if (!tag.endsWith("*")) {
      return borne.contains(tag);
    }
    String begin = tag.substring(0, tag.length() - 1);
    String next = borne.ceiling(begin);
    return next != null && next.startsWith(begin);
  }
}
