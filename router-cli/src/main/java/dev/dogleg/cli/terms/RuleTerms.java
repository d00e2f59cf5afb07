package dev.dogleg.cli.terms;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.model.TagRule;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * Turns rules by tag into the planner's terms: first what is settled before planning (choices taken
 * away or priced, limits narrowed, minutes added), then rules on what is left of each van-day, then
 * what cannot hold is named.
 */
public final class RuleTerms {
  private final List<VanDay> days;
  private final List<DraftStop> stops;
  private final Function<String, Where> rows;
  private final Faults faults;

  private RuleTerms(
      List<VanDay> days, List<DraftStop> stops, Function<String, Where> rows, Faults faults) {
    this.days = days;
    this.stops = stops;
    this.rows = rows;
    this.faults = faults;
  }

  /**
   * Applies rules.
   *
   * @param rules the rules, in their order
   * @param days van-days
   * @param stops stops with their choices; the rules shape them
   * @param rows where a rule stands, by its name
   * @param faults takes what cannot hold
   * @return rules of each van-day, by its number
   */
  public static List<List<DayRule>> apply(
      List<TagRule> rules,
      List<VanDay> days,
      List<DraftStop> stops,
      Function<String, Where> rows,
      Faults faults) {
    RuleTerms terms = new RuleTerms(days, stops, rows, faults);
    rules.forEach(terms::settle);
    List<List<DayRule>> perDay = terms.dayRules(rules);
    NoDayLeft.name(stops, faults);
    new RuleContradictions(days, stops, perDay, rows, faults).name();
    return perDay;
  }

  private void settle(TagRule rule) {
    for (VanDay day : days) {
      if (rule.holdsOn(day.day().date(), day.dayTags())) {
        for (DraftStop stop : stops) {
          stop.on(day.number())
              .filter(choice -> Members.matches(rule.a(), choice))
              .ifPresent(choice -> settle(rule, day, stop, choice));
        }
      }
    }
  }

  private void settle(TagRule rule, VanDay day, DraftStop stop, DraftChoice choice) {
    if (!rule.line().isEmpty()) {
      choice.line(rule.line());
    }
    switch (rule.shape()) {
      case ONLY_ON -> unless(rule.b().matches(day.dayTags()), rule, stop, choice);
      case NEVER_ON -> unless(!rule.b().matches(day.dayTags()), rule, stop, choice);
      case ONLY_WITH -> unless(rule.b().matches(day.crewTags()), rule, stop, choice);
      case MINUTES -> {
        if (rule.minutes().everyPlace()) {
          long times = (long) choice.seconds() * rule.minutes().timesThousandths();
          choice.seconds((int) ((times + 500) / 1_000) + rule.minutes().plusSeconds());
        }
      }
      case ARRIVE, DONE_BY, VAN -> {
        if (rule.strength().must()) {
          narrow(rule, day, stop, choice);
        }
      }
      default -> {
        // The other shapes speak of the day as planned.
      }
    }
  }

  private void unless(boolean holds, TagRule rule, DraftStop stop, DraftChoice choice) {
    if (holds) {
      return;
    }
    if (rule.strength().must()) {
      stop.remove(choice.day(), rule.name(), rows.apply(rule.name()));
    } else {
      choice.dearer(Price.ofMinutes(rule.strength().ratherMinutes()));
    }
  }

  private void narrow(TagRule rule, VanDay day, DraftStop stop, DraftChoice choice) {
    boolean narrowed = ClockTerms.narrow(rule, day, stop.told(), choice);
    if (narrowed) {
      return;
    }
    if (stop.told()) {
      faults.add(
          fault(
              "told-against-rule",
              rule,
              stop.name() + ", " + day.day().date(),
              "the told time of this stop breaks the rule \"" + rule.name() + "\"; it binds",
              "was the right time told?"));
    } else {
      stop.remove(choice.day(), rule.name(), rows.apply(rule.name()));
    }
  }

  private List<List<DayRule>> dayRules(List<TagRule> rules) {
    List<List<DayRule>> perDay = new ArrayList<>();
    for (VanDay day : days) {
      List<DayRule> ofDay = new ArrayList<>();
      Members members = new Members(day.number(), stops);
      for (TagRule rule : rules) {
        if (rule.holdsOn(day.day().date(), day.dayTags())) {
          ofDay.addAll(DayRules.of(rule, day, members));
        }
      }
      perDay.add(List.copyOf(ofDay));
    }
    return perDay;
  }

  private Fault fault(String code, TagRule rule, String seen, String expected, String hint) {
    return new Fault(code, Severity.LOOK, rows.apply(rule.name()), seen, expected, hint);
  }
}
