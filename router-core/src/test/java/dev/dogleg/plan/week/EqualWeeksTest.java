package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.plan.SeededDays;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Of equal weeks the one that docs/WEEK.md names, by trying all of them. */
class EqualWeeksTest {
  private WeekRequest week;
  private List<WeekBooking> bookings;
  private final List<long[]> costsBySet = new ArrayList<>();
  private int[] dayOf;
  private int[] least;
  private int equal;
  private int fewest;
  private long cheapest;

  @Test
  void theLeastOfEqualWeeksIsTaken() {
    int ties = 0;
    for (int seed = 1; seed <= 60; seed++) {
      week = alike(seed, 3 + seed % 3, 2 + seed % 2);
      enumerate();
      ties += equal > 1 ? 1 : 0;
      WeekPlan plan = WeekPlanner.plan(week);
      assertEquals(fewest, plan.leftOutCounted(), "seed " + seed);
      assertEquals(cheapest, plan.costSixtieths(), "seed " + seed);
      for (int b = 0; b < bookings.size(); b++) {
        assertEquals(least[b], servedOn(plan, bookings.get(b).id()), "seed " + seed + " " + b);
      }
    }
    assertTrue(ties >= 30, ties + " weeks with ties");
  }

  /** Van-days that are one and the same, but for who may be served there: most weeks have twins. */
  private static WeekRequest alike(int seed, int visits, int days) {
    SplittableRandom random = new SplittableRandom(seed);
    DayRequest day = SeededDays.day(seed, visits, 1, false);
    WeekRequest drawn = RandomWeeks.of(random, Collections.nCopies(days, day));
    List<WeekBooking> plain = new ArrayList<>();
    for (WeekBooking booking : drawn.bookings()) {
      List<DayChoice> choices =
          booking.choices().stream().map(c -> new DayChoice(c.day(), c.visit(), 0)).toList();
      plain.add(
          new WeekBooking(booking.id(), booking.counted(), booking.leftOutSixtieths(), choices));
    }
    return new WeekRequest(drawn.days(), plain, drawn.prices(), drawn.seed(), drawn.effort());
  }

  private static int servedOn(WeekPlan plan, String id) {
    for (int day = 0; day < plan.days().size(); day++) {
      DayPlan one = plan.days().get(day);
      if (one.stops().stream().anyMatch(stop -> stop.visitId().equals(id))) {
        return day;
      }
    }
    return -1;
  }

  private void enumerate() {
    bookings = week.bookings().stream().sorted(Comparator.comparing(WeekBooking::id)).toList();
    costsBySet.clear();
    for (int day = 0; day < week.days().size(); day++) {
      costsBySet.add(DayOracle.costsBySet(week.asking(day)));
    }
    dayOf = new int[bookings.size()];
    fewest = Integer.MAX_VALUE;
    equal = 0;
    give(0);
  }

  /** Days first, in their order, then left out: so the first of equal weeks is the least. */
  private void give(int booking) {
    if (booking == dayOf.length) {
      consider();
      return;
    }
    for (DayChoice choice : bookings.get(booking).choices()) {
      dayOf[booking] = choice.day();
      give(booking + 1);
    }
    dayOf[booking] = -1;
    give(booking + 1);
  }

  private void consider() {
    int out = 0;
    long cost = 0;
    int[] sets = new int[costsBySet.size()];
    int[] asked = new int[costsBySet.size()];
    for (WeekBooking booking : week.bookings()) {
      int day = dayOf[bookings.indexOf(booking)];
      out += day < 0 && booking.counted() ? 1 : 0;
      cost += day < 0 ? booking.leftOutSixtieths() : 0;
      for (DayChoice choice : booking.choices()) {
        sets[choice.day()] |= choice.day() == day ? 1 << asked[choice.day()] : 0;
        asked[choice.day()]++;
      }
    }
    for (int day = 0; day < sets.length; day++) {
      if (costsBySet.get(day)[sets[day]] >= DayOracle.NEVER) {
        return;
      }
      cost += costsBySet.get(day)[sets[day]];
    }
    boolean better = out < fewest || (out == fewest && cost < cheapest);
    equal = better ? 1 : equal + (out == fewest && cost == cheapest ? 1 : 0);
    if (better) {
      fewest = out;
      cheapest = cost;
      least = dayOf.clone();
    }
  }
}
