package dev.dogleg.plan.zone;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.WeekAudit;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.model.Strength;
import dev.dogleg.oracle.WeekOracle;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Days for zones against every assignment there is, each with its best week by enumeration. */
class ZoneDayPlannerTest {
  private static final int ENOUGH = 10_000;

  /** The least of all assignments, by the oracle of small weeks and rules of its own. */
  private static WeekOracle.Best enumerated(ZoneWeek problem) {
    List<List<Set<DayOfWeek>>> all = List.of(List.of());
    for (ZoneDays zone : problem.zones()) {
      List<List<Set<DayOfWeek>>> longer = new ArrayList<>();
      for (List<Set<DayOfWeek>> before : all) {
        for (Set<DayOfWeek> days : subsets(zone.possible(), zone.now().size())) {
          List<Set<DayOfWeek>> one = new ArrayList<>(before);
          one.add(days);
          longer.add(one);
        }
      }
      all = longer;
    }
    WeekOracle.Best best = null;
    for (List<Set<DayOfWeek>> days : all) {
      WeekOracle.Best one = WeekOracle.best(plain(problem, days));
      if (best == null
          || one.leftOutCounted() < best.leftOutCounted()
          || (one.leftOutCounted() == best.leftOutCounted()
              && one.costSixtieths() < best.costSixtieths())) {
        best = one;
      }
    }
    return best;
  }

  private static List<Set<DayOfWeek>> subsets(Set<DayOfWeek> of, int size) {
    List<DayOfWeek> days = List.copyOf(of);
    List<Set<DayOfWeek>> found = new ArrayList<>();
    for (int bits = 0; bits < 1 << days.size(); bits++) {
      if (Integer.bitCount(bits) == size) {
        Set<DayOfWeek> some = EnumSet.noneOf(DayOfWeek.class);
        for (int d = 0; d < days.size(); d++) {
          if ((bits >> d & 1) == 1) {
            some.add(days.get(d));
          }
        }
        found.add(some);
      }
    }
    return found;
  }

  /** docs/formats-zones.md once more: what each visit pays, zone by zone, day by day. */
  private static WeekRequest plain(ZoneWeek problem, List<Set<DayOfWeek>> days) {
    List<WeekBooking> bookings = new ArrayList<>();
    for (WeekBooking booking : problem.week().bookings()) {
      List<DayChoice> choices = new ArrayList<>();
      for (DayChoice choice : booking.choices()) {
        var shift = problem.week().days().get(choice.day()).shift();
        boolean inAny = false;
        boolean welcome = false;
        boolean must = false;
        int minutes = Integer.MAX_VALUE;
        for (int number : problem.around().get(booking.id())) {
          ZoneDays zone = problem.zones().get(number);
          if (zone.groomerId().isEmpty() || zone.groomerId().get().equals(shift.groomerId())) {
            inAny = true;
            welcome |= days.get(number).contains(shift.day().date().getDayOfWeek());
            must |= zone.strength().must();
            minutes = Math.min(minutes, Math.max(0, zone.strength().ratherMinutes()));
          }
        }
        if (!inAny || welcome) {
          choices.add(choice);
        } else if (!must) {
          choices.add(
              new DayChoice(
                  choice.day(), choice.visit(), choice.extraSixtieths() + minutes * 3_600L));
        }
      }
      bookings.add(
          new WeekBooking(booking.id(), booking.counted(), booking.leftOutSixtieths(), choices));
    }
    WeekRequest week = problem.week();
    return new WeekRequest(week.days(), bookings, week.prices(), week.seed(), week.effort());
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 4})
  void noAssignmentIsBetter(int days) {
    int better = 0;
    int cut = 0;
    for (long seed = 1; seed <= 14; seed++) {
      int zones = 1 + (int) (seed % 3);
      ZoneWeek problem = RandomZones.of(seed, days == 4 ? 3 : 4, days, zones);
      ZoneDayPlan answer = ZoneDayPlanner.plan(problem, ENOUGH, weeks -> {});
      String where = "seed " + seed + ", " + days + " days, " + zones + " zones";
      WeekOracle.Best least = enumerated(problem);
      assertTrue(answer.proven(), where);
      assertEquals(least.leftOutCounted(), answer.best().plan().leftOutCounted(), where);
      assertEquals(least.costSixtieths(), answer.best().plan().costSixtieths(), where);
      WeekOracle.Best now = WeekOracle.best(plain(problem, problem.now()));
      assertEquals(now.costSixtieths(), answer.now().plan().costSixtieths(), where);
      for (int zone = 0; zone < zones; zone++) {
        Set<DayOfWeek> found = answer.best().days().get(zone);
        assertEquals(problem.zones().get(zone).now().size(), found.size(), where);
        assertTrue(problem.zones().get(zone).possible().containsAll(found), where);
      }
      assertEquals(
          List.of(), WeekAudit.check(answer.best().request(), answer.best().plan()), where);
      assertEquals(
          problem.with(answer.best().days()).bookings(), answer.best().request().bookings(), where);
      better += answer.better() ? 1 : 0;
      cut += answer.weeks() > 3 ? 1 : 0;
    }
    assertTrue(better >= 2, "other days are better in " + better + " of 14");
    assertTrue(days > 3 || cut >= 1, "the search was cut in two in " + cut + " of 14");
  }

  @Test
  void aLimitIsSaidAndItsBoundHolds() {
    int unproven = 0;
    for (long seed = 1; seed <= 16; seed++) {
      ZoneWeek problem = RandomZones.of(seed, 4, 3, 3);
      ZoneDayPlan early = ZoneDayPlanner.plan(problem, 2, weeks -> {});
      ZoneDayPlan whole = ZoneDayPlanner.plan(problem, ENOUGH, weeks -> {});
      String where = "seed " + seed;
      assertTrue(early.weeks() <= 2, where);
      assertTrue(early.leastLeftOut() <= whole.best().plan().leftOutCounted(), where);
      assertTrue(
          early.leastLeftOut() < whole.best().plan().leftOutCounted()
              || early.leastSixtieths() <= whole.best().plan().costSixtieths(),
          where);
      if (early.proven()) {
        assertEquals(
            whole.best().plan().costSixtieths(), early.best().plan().costSixtieths(), where);
      }
      unproven += early.proven() ? 0 : 1;
    }
    assertTrue(unproven >= 2, "unproven: " + unproven);
  }

  @Test
  void daysThatMayNotMoveStay() {
    ZoneWeek drawn = RandomZones.of(3, 4, 3, 2);
    List<ZoneDays> fixed =
        drawn.zones().stream()
            .map(z -> new ZoneDays(z.name(), z.groomerId(), Strength.MUST, z.now(), z.now()))
            .toList();
    ZoneDayPlan answer =
        ZoneDayPlanner.plan(new ZoneWeek(drawn.week(), fixed, drawn.around()), ENOUGH, w -> {});
    assertFalse(answer.better());
    assertTrue(answer.proven());
    assertEquals(1, answer.weeks(), "now and free are one week");
    assertThrows(IllegalArgumentException.class, () -> ZoneDayPlanner.plan(drawn, 1, weeks -> {}));
  }
}
