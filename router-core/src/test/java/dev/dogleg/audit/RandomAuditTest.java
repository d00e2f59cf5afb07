package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomTerms;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The audit against {@link SecondBySecond}: they agree on every seeded plan, sound or spoilt. */
class RandomAuditTest {
  private static final int DAYS = 160;
  private static final int EDITS = 25;

  @Test
  void soundPlansHaveNoFindingAndEveryEditThatSpoilsOneIsFound() {
    int sound = 0;
    int spoilt = 0;
    int harmless = 0;
    for (long seed = 1; seed <= DAYS; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      DayRequest request = RandomDay.request(random);
      ReTimedDay timed = RandomDay.edited(random, request);
      Optional<String> wrong = SecondBySecond.wrongTimes(request, timed.stops());
      assertEquals(
          wrong.isEmpty(),
          timed.breaches().isEmpty(),
          "seed " + seed + " " + request + ": " + wrong + " / " + timed);
      if (wrong.isPresent()) {
        continue;
      }
      sound++;
      List<PlannedStop> stops = lingering(random, request, timed.stops());
      List<PlannedStop> right = SecondBySecond.figures(request, stops);
      long cost = SecondBySecond.cost(request, stops);
      DayPlan plan = RandomDay.plan(request, right, cost);
      assertEquals(List.of(), DayAudit.check(request, plan), "seed " + seed + " " + plan);
      int spoiltHere = spoiltEdits(random, request, plan, EDITS, "seed " + seed);
      spoilt += spoiltHere;
      harmless += EDITS - spoiltHere;
    }
    int soundDays = sound;
    assertTrue(sound >= 30, () -> "too few sound days to say anything: " + soundDays);
    int spoiltEdits = spoilt;
    int harmlessEdits = harmless;
    assertTrue(spoilt > 500 && harmless > 50, () -> spoiltEdits + " and " + harmlessEdits);
  }

  /**
   * Days with rules, tanks and balance: the oracle's best plan of each is sound and costs what the
   * oracle says, and every edit that spoils it is found.
   */
  @Test
  void theOraclesPlansUnderTermsAreSoundAndEveryEditThatSpoilsOneIsFound() {
    int spoilt = 0;
    int harmless = 0;
    int water = 0;
    for (long seed = 1; seed <= 60; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      int n = 2 + random.nextInt(4);
      DayRequest request = RandomTerms.on(seed, RandomDay.request(random, n, true));
      DayOracle.Best best = DayOracle.best(request);
      DayRequest served = RandomDay.onlyServed(request, best.stops());
      if (best.stops().isEmpty()) {
        continue;
      }
      String name = "seed " + seed + " " + served.terms();
      List<PlannedStop> right = SecondBySecond.figures(served, best.stops());
      long leftOut = RandomDay.leftOutPrice(request, served);
      DayPlan plan = RandomDay.plan(served, right, best.costSixtieths() - leftOut);
      assertEquals(List.of(), DayAudit.check(served, plan), name + plan);
      int spoiltHere = spoiltEdits(random, served, plan, 15, name);
      spoilt += spoiltHere;
      harmless += 15 - spoiltHere;
      water += right.stream().anyMatch(stop -> stop.kind() == Kind.WATER) ? 1 : 0;
    }
    String seen = spoilt + " spoilt, " + harmless + " harmless, " + water + " with water";
    assertTrue(spoilt > 400 && harmless > 15 && water >= 2, seen);
  }

  /** Orders, breaks and water stops of any kind under terms: sound for both or for neither. */
  @Test
  void handMadeOrdersUnderTermsAreJudgedAlike() {
    int broken = 0;
    int sound = 0;
    for (long seed = 1; seed <= 900; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      DayRequest request = RandomTerms.on(seed, RandomDay.request(random));
      ReTimedDay timed = RandomDay.edited(random, request);
      Optional<String> wrong = SecondBySecond.wrongTimes(request, timed.stops());
      String name = "seed " + seed + " " + request + ": " + wrong + " / " + timed;
      assertEquals(wrong.isEmpty(), timed.breaches().isEmpty(), name);
      broken += wrong.isPresent() ? 1 : 0;
      sound += wrong.isPresent() ? 0 : 1;
      if (wrong.isEmpty()) {
        assertEquals(SecondBySecond.figures(request, timed.stops()), timed.stops(), name);
      }
    }
    String seen = broken + " broken, " + sound + " sound";
    assertTrue(broken >= 120 && sound >= 120, seen);
  }

  private static int spoiltEdits(
      SplittableRandom random, DayRequest request, DayPlan plan, int edits, String name) {
    int spoilt = 0;
    for (int e = 0; e < edits; e++) {
      DayPlan edited = edit(random, request, plan);
      boolean stillSound = SecondBySecond.wrong(request, edited).isEmpty();
      List<Finding> found = DayAudit.check(request, edited);
      assertEquals(stillSound, found.isEmpty(), name + ": " + edited + " " + found);
      spoilt += stillSound ? 0 : 1;
    }
    return spoilt;
  }

  /** The day as it is, or with a door left later where that stays sound. */
  private static List<PlannedStop> lingering(
      SplittableRandom random, DayRequest request, List<PlannedStop> stops) {
    int later = 1 + random.nextInt(6);
    int from = random.nextInt(stops.size());
    List<PlannedStop> moved = new ArrayList<>(stops.subList(0, from));
    for (PlannedStop s : stops.subList(from, stops.size())) {
      boolean first = moved.size() == from && s.kind() != Kind.LEAVE;
      PlannedStop t = first ? s : StopEdit.ARRIVE.set(s, s.arriveSeconds() + later);
      t = first ? t : StopEdit.START.set(t, s.startSeconds() + later);
      moved.add(StopEdit.LEAVE.set(t, s.leaveSeconds() + later));
    }
    return SecondBySecond.wrongTimes(request, moved).isEmpty() ? moved : stops;
  }

  private static DayPlan edit(SplittableRandom random, DayRequest request, DayPlan plan) {
    List<PlannedStop> stops = new ArrayList<>(plan.stops());
    int k = random.nextInt(stops.size());
    PlannedStop stop = stops.get(k);
    switch (random.nextInt(8)) {
      case 0 -> stops.remove(k);
      case 1 -> stops.add(random.nextInt(stops.size() + 1), stop);
      case 2 -> stops.add(random.nextInt(stops.size()), stops.remove(k));
      case 3 -> {
        Kind kind = one(random, Kind.values());
        String id = random.nextBoolean() ? stop.visitId() : "v" + random.nextInt(7);
        stops.set(k, StopEdit.named(stop, kind, id));
      }
      default -> {
        StopEdit field = one(random, StopEdit.values());
        int size = request.travel().size();
        int by = random.nextInt(1, 6) * (random.nextBoolean() ? 1 : -1);
        int value = field == StopEdit.PLACE ? random.nextInt(size) : field.get(stop) + by;
        boolean notNegative = field == StopEdit.DRIVE || field == StopEdit.METRES;
        stops.set(k, field.set(stop, notNegative ? Math.max(0, value) : value));
      }
    }
    return RandomDay.plan(request, stops, plan.costSixtieths());
  }

  private static <T> T one(SplittableRandom random, T[] of) {
    return of[random.nextInt(of.length)];
  }
}
