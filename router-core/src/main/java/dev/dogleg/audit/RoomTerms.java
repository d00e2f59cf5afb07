package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/** The terms under which it is asked whether there is room: rules that must hold, and tanks. */
final class RoomTerms {
  /** How a reason names the tanks. */
  static final String WATER = "water";

  /** How a reason begins that names a rule. */
  static final String RULE = "rule:";

  private final DayRequest request;
  private final List<DayRule> rules;
  private final WaterTerms water;
  private final ServedSeconds served;

  private RoomTerms(DayRequest request, List<DayRule> rules, WaterTerms water) {
    this.request = request;
    this.rules = rules;
    this.water = water;
    this.served = new ServedSeconds(rules);
  }

  /** Every must rule of a day, and its tanks. */
  static RoomTerms of(DayRequest request) {
    List<DayRule> must = request.terms().rules().stream().filter(DayRule::must).toList();
    return new RoomTerms(request, must, request.terms().water().orElse(null));
  }

  /** The same without the rules that a day may break for want of other visits alone. */
  RoomTerms passingOverCompany() {
    return keeping(rule -> !wantsCompany(rule));
  }

  /** The same without one thing that a reason may name; unknown names drop nothing. */
  RoomTerms without(String reason) {
    if (reason.equals(WATER)) {
      return new RoomTerms(request, rules, null);
    }
    return keeping(rule -> !reason.equals(RULE + rule.name()));
  }

  private RoomTerms keeping(Predicate<DayRule> kept) {
    return new RoomTerms(request, rules.stream().filter(kept).toList(), water);
  }

  private boolean wantsCompany(DayRule rule) {
    if (rule instanceof DayRule.PlaceInDay place) {
      return Set.of(DayPlace.NOT_FIRST, DayPlace.NOT_LAST, DayPlace.EXACTLY)
          .contains(place.where());
    }
    if (rule instanceof DayRule.Together together) {
      Set<String> asked = new HashSet<>();
      request.visits().forEach(visit -> asked.add(visit.id()));
      return asked.containsAll(together.visits());
    }
    return false;
  }

  /** Whether a reason may name this. */
  boolean knows(String reason) {
    return (reason.equals(WATER) && water != null)
        || rules.stream().anyMatch(rule -> reason.equals(RULE + rule.name()));
  }

  /** What a reason may call each rule that a day of these visits in this order breaks. */
  List<String> broken(List<String> ids) {
    return rules.stream()
        .filter(rule -> !OrderRules.breaches(rule, ids).isEmpty())
        .map(rule -> RULE + rule.name())
        .toList();
  }

  int served(Visit visit, int place, String before) {
    return served.of(visit, place, before);
  }

  Optional<WaterTerms> water() {
    return Optional.ofNullable(water);
  }

  /** Tanks after one more visit; empty where one of them does not last for it. */
  Optional<WaterUse> after(WaterUse used, Visit visit) {
    if (water == null) {
      return Optional.of(used);
    }
    WaterUse more = water.useOf(visit.id());
    int fresh = used.freshMillilitres() + more.freshMillilitres();
    int grey = used.greyMillilitres() + more.greyMillilitres();
    boolean lasts =
        fresh <= water.tank().freshMillilitres() && grey <= water.tank().greyMillilitres();
    return lasts ? Optional.of(new WaterUse(fresh, grey)) : Optional.empty();
  }
}
