package dev.dogleg.plan;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.schedule.RuleMiss;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The terms under which it is asked whether there is room: rules that must hold, and tanks.
 *
 * <p>Rules that a day breaks only for want of other visits are passed over while another reason is
 * sought ({@code docs/WEEK.md}).
 */
final class RoomTerms {
  private final DayTerms terms;

  private RoomTerms(DayTerms terms) {
    this.terms = terms;
  }

  /** Every must rule of a day, and its tanks. */
  static RoomTerms must(DayRequest request) {
    return new RoomTerms(keeping(request.terms(), DayRule::must));
  }

  /** Those that do not want other visits. */
  static RoomTerms passingOverCompany(DayRequest request) {
    Set<String> asked =
        request.visits().stream().map(Visit::id).collect(Collectors.toUnmodifiableSet());
    return new RoomTerms(
        keeping(request.terms(), rule -> rule.must() && !wantsCompany(rule, asked)));
  }

  private static boolean wantsCompany(DayRule rule, Set<String> asked) {
    if (rule instanceof DayRule.PlaceInDay place) {
      return switch (place.where()) {
        case FIRST, LAST -> false;
        case NOT_FIRST, NOT_LAST, EXACTLY -> true;
      };
    }
    return rule instanceof DayRule.Together together && asked.containsAll(together.visits());
  }

  private static DayTerms keeping(DayTerms terms, Predicate<DayRule> kept) {
    return new DayTerms(
        terms.rules().stream().filter(kept).toList(), terms.water(), Optional.empty());
  }

  /** {@return names of all that can be dropped, as a reason names them} */
  List<String> names() {
    Stream<String> water = terms.water().stream().map(tanks -> RuleMiss.WATER);
    return Stream.concat(
            water, terms.rules().stream().map(rule -> RuleMiss.RULE + rule.name()).distinct())
        .toList();
  }

  /** {@return the terms but for what a reason names} */
  RoomTerms without(String name) {
    if (name.equals(RuleMiss.WATER)) {
      return new RoomTerms(new DayTerms(terms.rules(), Optional.empty(), Optional.empty()));
    }
    return new RoomTerms(keeping(terms, rule -> !name.equals(RuleMiss.RULE + rule.name())));
  }

  /** {@return the terms themselves} */
  DayTerms terms() {
    return terms;
  }
}
