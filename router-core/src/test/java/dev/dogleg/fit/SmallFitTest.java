package dev.dogleg.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.plan.week.WeekPlanner;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Questions about small weeks with every term there is, against oracles that try every order, every
 * second of leaving and every way to give visits to van-days, and share no code with the planner.
 */
class SmallFitTest {
  private static final int SEEDS = 110;

  private int offers;
  private int noes;
  private int otherDaysHelp;
  private int otherDaysNo;

  @Test
  void bothTiersSayWhatTheOraclesFind() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      WeekRequest all = RandomWeeks.week(seed, 3 + seed % 3, 2, seed % 2 == 0);
      WeekBooking newcomer = narrow(all.bookings().get(all.bookings().size() - 1), seed);
      WeekRequest week =
          new WeekRequest(
              all.days(),
              all.bookings().subList(0, all.bookings().size() - 1),
              all.prices(),
              all.seed(),
              all.effort());
      ask(seed, week, newcomer);
    }
    assertTrue(offers > 20 && noes > 20, offers + " offers, " + noes + " noes");
    assertTrue(otherDaysHelp >= 3 && otherDaysNo > 3, otherDaysHelp + ", " + otherDaysNo);
  }

  /** Two of three newcomers may come on one day only, so that others must make room. */
  private static WeekBooking narrow(WeekBooking booking, int seed) {
    boolean cut = seed % 3 != 0 && booking.choices().size() > 1;
    return new WeekBooking(
        booking.id(),
        booking.counted(),
        booking.leftOutSixtieths(),
        cut ? booking.choices().subList(seed % 2, seed % 2 + 1) : booking.choices());
  }

  private void ask(int seed, WeekRequest week, WeekBooking newcomer) {
    WeekPlan plan = WeekPlanner.plan(week);
    Map<String, Integer> placed = ForcedDays.placed(plan);
    Set<String> fixed =
        placed.keySet().stream().limit(1).collect(java.util.stream.Collectors.toSet());
    FitWeek prepared = FitWeek.of(week, plan, fixed);
    FitAnswer answer = prepared.ask(FitQuestion.of(newcomer).withOtherDays(OtherDays.ALWAYS));
    String name = "seed " + seed;
    for (DayChoice choice : newcomer.choices()) {
      DayRequest forced = ForcedDays.day(week, placed, choice.day(), List.of(choice.visit()));
      DayOracle.Best best = DayOracle.best(forced);
      Optional<Offer> offer =
          answer.offers().stream().filter(one -> one.day() == choice.day()).findFirst();
      assertEquals(best.leftOutBooked() == 0, offer.isPresent(), name + " day " + choice.day());
      if (offer.isPresent()) {
        offers++;
        DayPlan after = offer.get().after();
        assertEquals(best.costSixtieths(), after.costSixtieths(), name);
        assertTrue(offer.get().proven(), name);
        long before =
            DayOracle.best(ForcedDays.day(week, placed, choice.day(), List.of())).costSixtieths();
        assertEquals(
            best.costSixtieths() - before + choice.extraSixtieths(),
            offer.get().extraCostSixtieths(),
            name);
        assertEquals(List.of(), DayAudit.check(forced, after), name);
      } else {
        noes++;
        NoDay no =
            answer.noDays().stream()
                .filter(one -> one.day() == choice.day())
                .findFirst()
                .orElseThrow();
        assertTrue(no.proven(), name);
      }
    }
    otherDays(name, week, placed, fixed, newcomer, answer);
    FitAnswer kept =
        prepared
            .readyForOtherDays(FitQuestion.USUAL_EFFORT)
            .ask(FitQuestion.of(newcomer).withOtherDays(OtherDays.ALWAYS));
    otherDays(name + ", kept", week, placed, fixed, newcomer, kept);
  }

  private void otherDays(
      String name,
      WeekRequest week,
      Map<String, Integer> placed,
      Set<String> fixed,
      WeekBooking newcomer,
      FitAnswer answer) {
    WeekOffer offer = answer.otherDays().orElseThrow();
    WeekRequest forced = ForcedDays.week(week, placed, fixed, newcomer, week.effort());
    boolean fits = ForcedDays.asTheOracle(name, offer, forced);
    if (fits) {
      fixed.forEach(
          id ->
              assertEquals(
                  placed.get(id), ForcedDays.placed(offer.plan()).get(id), name + " " + id));
    }
    if (answer.offers().isEmpty()) {
      assertEquals(FitAnswer.Verdict.NEVER_FITS, answer.sameDays(), name);
      assertEquals(offer.verdict(), answer.verdict(), name);
      otherDaysHelp += fits ? 1 : 0;
      otherDaysNo += fits ? 0 : 1;
    }
  }
}
