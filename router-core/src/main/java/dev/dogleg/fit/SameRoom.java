package dev.dogleg.fit;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterUse;
import java.util.Set;

/**
 * Tells whether one visit has room wherever another has.
 *
 * <p>So it is where they differ in their service and water alone: a van that is ready earlier may
 * linger at the door, and then the day goes on as with the longer visit.
 */
final class SameRoom {
  private SameRoom() {}

  /** Whether {@code easy} fits at each time at which {@code hard} does, on a day with terms. */
  static boolean nests(Visit easy, Visit hard, DayTerms terms) {
    return easy.place() == hard.place()
        && easy.serviceSeconds() <= hard.serviceSeconds()
        && easy.first() == hard.first()
        && easy.doneBySeconds() == hard.doneBySeconds()
        && easy.arriveWithin().equals(hard.arriveWithin())
        && easy.vanWithin().equals(hard.vanWithin())
        && terms.water().stream()
            .allMatch(water -> within(water.useOf(easy.id()), water.useOf(hard.id())))
        && terms.rules().stream()
            .filter(DayRule::must)
            .allMatch(rule -> alike(rule, easy.id(), hard.id()));
  }

  private static boolean within(WaterUse less, WaterUse more) {
    return less.freshMillilitres() <= more.freshMillilitres()
        && less.greyMillilitres() <= more.greyMillilitres();
  }

  private static boolean alike(DayRule rule, String easy, String hard) {
    if (rule instanceof DayRule.Clock one) {
      return in(one.visits(), easy, hard);
    }
    if (rule instanceof DayRule.PlaceInDay one) {
      return in(one.visits(), easy, hard);
    }
    if (rule instanceof DayRule.AllBefore one) {
      return in(one.earlier(), easy, hard) && in(one.later(), easy, hard);
    }
    if (rule instanceof DayRule.NotRightAfter one) {
      return in(one.visits(), easy, hard) && in(one.after(), easy, hard);
    }
    if (rule instanceof DayRule.AtMost one) {
      return one.points().getOrDefault(easy, 0) <= one.points().getOrDefault(hard, 0);
    }
    if (rule instanceof DayRule.Changeover one) {
      return in(one.from(), easy, hard) && in(one.to(), easy, hard);
    }
    if (rule instanceof DayRule.PlaceMinutes one) {
      return in(one.visits(), easy, hard);
    }
    if (rule instanceof DayRule.Together one) {
      return in(one.visits(), easy, hard);
    }
    if (rule instanceof DayRule.NotTogether one) {
      return in(one.visits(), easy, hard);
    }
    throw new IllegalArgumentException("unknown rule: " + rule);
  }

  private static boolean in(Set<String> ids, String one, String other) {
    return ids.contains(one) == ids.contains(other);
  }
}
