package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.NoRoom.Why;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekNoRoom;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomTerms;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.oracle.WeekOracle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** The best weeks of the oracle, reasons by enumeration: the audit agrees with every figure. */
class RandomWeekAuditTest {
  private static final int BOOKINGS = 4;

  @Test
  void theBestWeekIsSoundAndAWeekThatForgetsABookingIsRefuted() {
    int together = 0;
    int refuted = 0;
    for (int seed = 1; seed <= 40; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      List<DayRequest> asked = new ArrayList<>();
      for (int day = 0; day < 2; day++) {
        DayRequest free = RandomDay.request(random, BOOKINGS, false);
        asked.add(RandomTerms.on(seed * 2L + day, free));
      }
      WeekRequest request = RandomWeeks.of(random, asked);
      WeekOracle.Best best = WeekOracle.best(request);
      WeekPlan plan = plan(request, best.choices());
      assertEquals(best.leftOutCounted(), plan.leftOutCounted(), "seed " + seed);
      assertEquals(best.costSixtieths(), plan.costSixtieths(), "seed " + seed);
      assertEquals(List.of(), WeekAudit.check(request, plan), "seed " + seed + request + plan);
      together +=
          plan.noRoom().stream()
                  .flatMap(left -> left.days().stream())
                  .anyMatch(on -> on.reason().why() == Why.IMPOSSIBLE_TOGETHER)
              ? 1
              : 0;
      refuted += forgetting(request, best) ? 1 : 0;
    }
    String seen = together + " weeks with conflicts, " + refuted + " refuted";
    assertTrue(together >= 3 && refuted >= 6, seen);
  }

  /** Drops a counted booking where its day stays possible without it. */
  private static boolean forgetting(WeekRequest request, WeekOracle.Best best) {
    for (int b = 0; b < BOOKINGS; b++) {
      WeekBooking booking = request.bookings().get(b);
      if (best.choices().get(b) < 0 || !booking.counted()) {
        continue;
      }
      List<Integer> fewer = new ArrayList<>(best.choices());
      fewer.set(b, -1);
      int day = booking.choices().get(best.choices().get(b)).day();
      if (!possible(request, day, served(request, fewer, day))) {
        continue;
      }
      WeekPlan plan = plan(request, fewer);
      List<String> codes =
          WeekAudit.check(request, plan).stream().map(f -> f.finding().code()).distinct().toList();
      assertEquals(List.of("proof-refuted"), codes, request + " " + plan);
      return true;
    }
    return false;
  }

  private static WeekPlan plan(WeekRequest request, List<Integer> choices) {
    List<DayPlan> days = new ArrayList<>();
    long cost = 0;
    for (int day = 0; day < request.days().size(); day++) {
      DayRequest asked = asked(request, day, served(request, choices, day));
      DayOracle.Best best = DayOracle.best(allBooked(asked));
      List<PlannedStop> stops = best.stops();
      if (!stops.isEmpty()) {
        stops = SecondBySecond.figures(asked, stops);
      }
      days.add(RandomDay.plan(asked, stops, best.costSixtieths()));
      cost += best.costSixtieths();
    }
    List<WeekNoRoom> noRoom = new ArrayList<>();
    int counted = 0;
    for (int b = 0; b < choices.size(); b++) {
      WeekBooking booking = request.bookings().get(b);
      if (choices.get(b) >= 0) {
        cost += booking.choices().get(choices.get(b)).extraSixtieths();
        continue;
      }
      counted += booking.counted() ? 1 : 0;
      cost += booking.leftOutSixtieths();
      List<WeekNoRoom.OnDay> reasons = new ArrayList<>();
      for (DayChoice choice : booking.choices()) {
        List<Visit> there = served(request, choices, choice.day());
        NoRoom reason = reason(request, choice, there);
        reasons.add(new WeekNoRoom.OnDay(choice.day(), reason));
      }
      noRoom.add(new WeekNoRoom(booking.id(), reasons, Optional.empty()));
    }
    noRoom.sort(Comparator.comparing(WeekNoRoom::bookingId));
    return SmallWeek.plan(days, noRoom, counted, cost);
  }

  /** Thins those who are there until leaving out any one of them makes room. */
  private static NoRoom reason(WeekRequest request, DayChoice choice, List<Visit> there) {
    Visit visit = choice.visit();
    if (!possible(request, choice.day(), List.of(visit))) {
      DayRequest asked = asked(request, choice.day(), with(there, visit));
      return alone(asked, visit);
    }
    List<Visit> conflict = new ArrayList<>(there);
    boolean none = possible(request, choice.day(), with(conflict, visit));
    for (Visit drop : there) {
      List<Visit> fewer = new ArrayList<>(conflict);
      fewer.remove(drop);
      if (!none && !possible(request, choice.day(), with(fewer, visit))) {
        conflict = fewer;
      }
    }
    if (none) {
      return new NoRoom(visit.id(), Why.NOT_FOUND, "", 0, List.of());
    }
    List<String> ids = conflict.stream().map(Visit::id).sorted().toList();
    return new NoRoom(visit.id(), Why.IMPOSSIBLE_TOGETHER, "", 0, ids);
  }

  /** The audit's own name for what blocks; that it blocks is known from enumeration. */
  private static NoRoom alone(DayRequest asked, Visit visit) {
    RoomTerms terms = RoomTerms.of(asked);
    AloneRoom company = new AloneRoom(asked, visit, terms.passingOverCompany());
    List<String> rules =
        new ArrayList<>(List.of("arrive-within", "done-by", "van-within", "day-end", "water"));
    if (company.exists()) {
      return said(visit, terms.broken(List.of(visit.id())).get(0), 0);
    }
    rules.addAll(terms.passingOverCompany().broken(List.of(visit.id())));
    if (!company.hasRoads()) {
      return said(visit, "no-road", 0);
    }
    for (String rule : rules) {
      if (company.blockedBy(rule)) {
        return said(visit, rule, company.missedBy(rule).orElse(0));
      }
    }
    return said(visit, "day-end", company.missedBy("day-end").orElse(0));
  }

  private static NoRoom said(Visit visit, String rule, int shortBy) {
    return new NoRoom(visit.id(), Why.IMPOSSIBLE_ALONE, rule, shortBy, List.of());
  }

  private static List<Visit> with(List<Visit> visits, Visit one) {
    List<Visit> all = new ArrayList<>(visits);
    all.add(one);
    return all;
  }

  private static boolean possible(WeekRequest request, int day, List<Visit> visits) {
    long[] costs = DayOracle.costsBySet(asked(request, day, visits));
    return costs[costs.length - 1] < DayOracle.NEVER;
  }

  private static List<Visit> served(WeekRequest request, List<Integer> choices, int day) {
    List<Visit> visits = new ArrayList<>();
    for (int b = 0; b < choices.size(); b++) {
      if (choices.get(b) >= 0) {
        DayChoice choice = request.bookings().get(b).choices().get(choices.get(b));
        if (choice.day() == day) {
          visits.add(choice.visit());
        }
      }
    }
    return visits;
  }

  private static DayRequest asked(WeekRequest request, int day, List<Visit> visits) {
    DayRequest all = request.asking(day);
    return new DayRequest(
        all.shift(), visits, all.travel(), all.prices(), all.terms(), all.seed(), all.effort());
  }

  private static DayRequest allBooked(DayRequest day) {
    List<Visit> visits = day.visits().stream().map(Visit::mustServe).toList();
    return new DayRequest(
        day.shift(), visits, day.travel(), day.prices(), day.terms(), day.seed(), day.effort());
  }
}
