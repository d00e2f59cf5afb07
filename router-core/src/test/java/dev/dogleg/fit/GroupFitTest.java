package dev.dogleg.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.plan.week.WeekPlanner;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Newcomers whom a rule puts together with a planned booking, against the oracles: the days without
 * them are days of a smaller group, and the other newcomer of the group has not called.
 */
class GroupFitTest {
  private static final int SEEDS = 60;

  private int offers;
  private int refusedByTheRule;
  private int weeks;

  @Test
  void aGroupGrowsByWhoeverIsAskedAbout() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      WeekRequest plain = RandomWeeks.week(seed, 5, 2, seed % 2 == 0);
      List<WeekBooking> known = plain.bookings().subList(0, 3);
      WeekBooking newcomer = plain.bookings().get(3);
      WeekBooking other = plain.bookings().get(4);
      WeekRequest calm = week(plain, known, Set.of());
      Map<String, Integer> placed = ForcedDays.placed(WeekPlanner.plan(calm));
      String friend = known.get(0).id();
      if (!placed.containsKey(friend)) {
        continue;
      }
      weeks++;
      boolean must = seed % 3 != 0;
      WeekRequest both =
          week(plain, plain.bookings(), Set.of(together(must, friend, newcomer, other)));
      WeekRequest one = week(plain, plain.bookings(), Set.of(together(must, friend, newcomer)));
      Set<String> callers = Set.of(newcomer.id(), other.id());
      FitWeek prepared = FitWeek.of(both, placed, Set.of(), callers);
      FitQuestion question = FitQuestion.of(newcomer).withOtherDays(OtherDays.ALWAYS);
      String name = "seed " + seed;
      tierA(name, prepared.ask(question), calm, one, placed, newcomer);
      tierB(name, prepared.ask(question), one, placed, newcomer);
      FitWeek kept = prepared.readyForOtherDays(FitQuestion.USUAL_EFFORT);
      tierB(name + ", kept", kept.ask(question), one, placed, newcomer);
    }
    assertTrue(weeks > SEEDS / 2 && offers > 20, weeks + " weeks, " + offers + " offers");
    assertTrue(refusedByTheRule > 5, "refused by the rule: " + refusedByTheRule);
  }

  private void tierA(
      String name,
      FitAnswer answer,
      WeekRequest calm,
      WeekRequest one,
      Map<String, Integer> placed,
      WeekBooking newcomer) {
    for (DayChoice choice : newcomer.choices()) {
      int day = choice.day();
      DayOracle.Best best =
          DayOracle.best(ForcedDays.day(one, placed, day, List.of(choice.visit())));
      Optional<Offer> offer =
          answer.offers().stream().filter(found -> found.day() == day).findFirst();
      assertEquals(best.leftOutBooked() == 0, offer.isPresent(), name + " day " + day);
      DayOracle.Best free =
          DayOracle.best(ForcedDays.day(calm, placed, day, List.of(choice.visit())));
      refusedByTheRule += offer.isEmpty() && free.leftOutBooked() == 0 ? 1 : 0;
      if (offer.isPresent()) {
        offers++;
        long before = DayOracle.best(ForcedDays.day(calm, placed, day, List.of())).costSixtieths();
        assertEquals(
            best.costSixtieths() - before + choice.extraSixtieths(),
            offer.get().extraCostSixtieths(),
            name + " day " + day);
      }
    }
  }

  private static void tierB(
      String name,
      FitAnswer answer,
      WeekRequest one,
      Map<String, Integer> placed,
      WeekBooking newcomer) {
    WeekRequest forced = ForcedDays.week(one, placed, Set.of(), newcomer, one.effort());
    ForcedDays.asTheOracle(name, answer.otherDays().orElseThrow(), forced);
  }

  private static DayRule together(boolean must, String friend, WeekBooking... newcomers) {
    Set<String> visits = new HashSet<>(Set.of(friend));
    for (WeekBooking newcomer : newcomers) {
      visits.add(newcomer.id());
    }
    return new DayRule.Together(
        "group", must ? OptionalLong.empty() : OptionalLong.of(40_000), visits);
  }

  private static WeekRequest week(
      WeekRequest plain, List<WeekBooking> bookings, Set<DayRule> more) {
    List<WeekDay> days = new ArrayList<>();
    for (WeekDay day : plain.days()) {
      // Rules that the random week has may speak of the newcomers too: only the group's is wanted.
      List<DayRule> rules = new ArrayList<>(day.terms().rules());
      rules.removeIf(DayRule.Together.class::isInstance);
      rules.addAll(more);
      DayTerms terms = day.terms();
      days.add(
          new WeekDay(
              day.shift(),
              day.travel(),
              new DayTerms(rules, terms.water(), terms.balance(), terms.odds())));
    }
    return new WeekRequest(days, bookings, plain.prices(), plain.seed(), plain.effort());
  }
}
