package dev.dogleg.cli.terms;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.AllBefore;
import dev.dogleg.itinerary.DayRule.AtMost;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.itinerary.DayRule.NotTogether;
import dev.dogleg.itinerary.DayRule.PlaceInDay;
import dev.dogleg.itinerary.DayRule.Together;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;

/**
 * Names rules that must hold and never can, all at once, before planning. It looks at stops that
 * have one van-day only and at what two rules ask of them; it does not plan.
 */
final class RuleContradictions {
  private final List<VanDay> days;
  private final List<DraftStop> stops;
  private final List<List<DayRule>> rules;
  private final Function<String, Where> rows;
  private final Faults faults;
  private final Set<String> said = new HashSet<>();
  private final Map<String, DraftStop> byId = new HashMap<>();

  RuleContradictions(
      List<VanDay> days,
      List<DraftStop> stops,
      List<List<DayRule>> rules,
      Function<String, Where> rows,
      Faults faults) {
    this.days = days;
    this.stops = stops;
    this.rules = rules;
    this.rows = rows;
    this.faults = faults;
    stops.forEach(stop -> byId.put(stop.id(), stop));
  }

  void name() {
    together();
    for (VanDay day : days) {
      List<DayRule> must = rules.get(day.number()).stream().filter(DayRule::must).toList();
      if (!must.isEmpty()) {
        ofDay(day, must);
      }
    }
  }

  private void ofDay(VanDay day, List<DayRule> must) {
    List<DraftStop> fixed = stops.stream().filter(stop -> stop.fixedOn(day.number())).toList();
    for (DayRule rule : must) {
      if (rule instanceof AtMost most) {
        int points = fixed.stream().mapToInt(s -> most.points().getOrDefault(s.id(), 0)).sum();
        if (points > most.most()) {
          say(rule, rule, day.title(), points + " are fixed on this day, at most " + most.most());
        }
      }
      if (rule instanceof NotTogether apart) {
        List<String> names = names(fixed, apart.visits());
        if (names.size() > 1) {
          say(rule, rule, String.join(", ", names), "are all fixed on " + day.title());
        }
      }
    }
    places(day, must, fixed);
    List<Order> orders = orders(must, fixed);
    for (Order one : orders) {
      for (Order other : orders) {
        boolean against = one.first().equals(other.then()) && one.then().equals(other.first());
        if (against && one.first().compareTo(one.then()) < 0) {
          say(
              other.rule(),
              one.rule(),
              name(one.first()) + ", " + name(one.then()),
              "each would have to come before the other on " + day.title());
        }
      }
    }
  }

  /** One stop before another. */
  private record Order(String first, String then, DayRule rule) {}

  private static List<Order> orders(List<DayRule> must, List<DraftStop> fixed) {
    List<Order> orders = new ArrayList<>();
    for (DayRule rule : must) {
      for (DraftStop one : fixed) {
        for (DraftStop other : fixed) {
          if (one != other && before(rule, one.id(), other.id())) {
            orders.add(new Order(one.id(), other.id(), rule));
          }
        }
      }
    }
    return orders;
  }

  private static boolean before(DayRule rule, String one, String other) {
    if (rule instanceof AllBefore all) {
      return all.earlier().contains(one) && all.later().contains(other);
    }
    return rule instanceof PlaceInDay place
        && ((place.where() == DayPlace.FIRST && place.visits().contains(one))
            || (place.where() == DayPlace.LAST && place.visits().contains(other)));
  }

  /** The same stop first and not first, or last and not last. */
  private void places(VanDay day, List<DayRule> must, List<DraftStop> fixed) {
    for (DraftStop stop : fixed) {
      DayRule first = find(must, stop, DayPlace.FIRST);
      DayRule notFirst = find(must, stop, DayPlace.NOT_FIRST);
      DayRule last = find(must, stop, DayPlace.LAST);
      DayRule notLast = find(must, stop, DayPlace.NOT_LAST);
      boolean asked = stop.on(day.number()).orElseThrow().limits().first();
      if (first != null && notFirst != null) {
        say(notFirst, first, stop.name(), "would have to be first and not first");
      } else if (asked && notFirst != null) {
        say(notFirst, notFirst, stop.name(), "asks in its own times to be first");
      }
      if (last != null && notLast != null) {
        say(notLast, last, stop.name(), "would have to be last and not last");
      }
    }
  }

  private static DayRule find(List<DayRule> must, DraftStop stop, DayPlace where) {
    for (DayRule rule : must) {
      if (rule instanceof PlaceInDay place
          && place.where() == where
          && place.visits().contains(stop.id())) {
        return rule;
      }
    }
    return null;
  }

  private void together() {
    Set<DayRule> seen = new HashSet<>();
    for (List<DayRule> ofDay : rules) {
      for (DayRule rule : ofDay) {
        if (rule instanceof Together together && rule.must() && seen.add(rule)) {
          common(together);
          for (DayRule other : ofDay) {
            if (other instanceof NotTogether apart && other.must()) {
              List<String> both = names(stops, together.visits());
              both.retainAll(names(stops, apart.visits()));
              if (both.size() > 1) {
                say(
                    other,
                    rule,
                    String.join(", ", both),
                    "would have to be on one day and on different days");
              }
            }
          }
        }
      }
    }
  }

  private void common(Together rule) {
    boolean some =
        days.stream()
            .anyMatch(
                day ->
                    rule.visits().stream()
                        .allMatch(id -> byId.get(id).on(day.number()).isPresent()));
    if (!some) {
      say(
          rule,
          rule,
          String.join(", ", names(stops, rule.visits())),
          "have no day of the run in common");
    }
  }

  private static List<String> names(List<DraftStop> among, Set<String> ids) {
    List<String> names = new ArrayList<>();
    among.stream().filter(s -> ids.contains(s.id())).map(DraftStop::name).forEach(names::add);
    return names;
  }

  private String name(String id) {
    return byId.get(id).name();
  }

  private void say(DayRule at, DayRule other, String seen, String what) {
    String with = at.name().equals(other.name()) ? "" : " with the rule \"" + other.name() + "\"";
    Fault fault =
        new Fault(
            "rules-contradict",
            Severity.LOOK,
            rows.apply(at.name()),
            seen,
            "the rule \"" + at.name() + "\" can never hold" + with + ": " + what,
            "change a rule, a tag or a date, or let one of them rather hold");
    if (said.add(fault.toString())) {
      faults.add(fault);
    }
  }
}
