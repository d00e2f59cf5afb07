package dev.dogleg.cli.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Where;
import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.ClockKind;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.model.BalanceWish;
import dev.dogleg.model.Strength;
import dev.dogleg.model.TagMatch;
import dev.dogleg.model.Zone;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Likes, zones, water, balance, and minutes as served. */
class WishesTest {

  @Test
  void likedDaysAndHoursHaveAPrice() {
    Week week = new Week(3);
    DraftStop a = week.stop("a", Set.of("dog"), 0, 1, 2);
    List<List<DayRule>> rules = List.of(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
    Likes.apply(Week.when("Mon; Tue 9-11, done by 12:00, first"), a, week.days, 900, rules);
    assertEquals(
        List.of(0L, 0L, 54_000L), a.choices().stream().map(DraftChoice::extraSixtieths).toList());
    OptionalLong price = OptionalLong.of(54_000);
    Set<String> who = Set.of("a");
    assertEquals(
        List.of(
            List.of(),
            List.of(
                new DayRule.Clock(
                    "liked by A",
                    price,
                    who,
                    ClockKind.ARRIVE,
                    List.of(new TimeWindow(32_400, 39_600))),
                new DayRule.Clock(
                    "liked by A",
                    price,
                    who,
                    ClockKind.DONE_BY,
                    List.of(new TimeWindow(0, 43_200))),
                new DayRule.PlaceInDay("liked by A", price, who, DayPlace.FIRST, 0)),
            List.of()),
        rules);
  }

  private static Zone zone(String name, String days, Strength strength) {
    return new Zone(
        name,
        Optional.empty(),
        List.of("X"),
        List.of(),
        Optional.empty(),
        OptionalInt.empty(),
        Week.match(days),
        Optional.empty(),
        strength);
  }

  @Test
  void zonesTakeDaysOrPriceThem() {
    Week week = new Week(3);
    DraftStop in = week.stop("in", Set.of("dog"), 0, 1, 2);
    DraftStop two = week.stop("two", Set.of("dog"), 0, 1, 2);
    DraftStop out = week.stop("out", Set.of("dog"), 0, 1, 2);
    DraftStop told =
        week.stop("told", List.of(Set.of("dog")), dev.dogleg.model.DayLimits.NONE, true, 2);
    Zone north = zone("North", "mon", Strength.MUST);
    Zone south = zone("South", "tue", Strength.rather(10));
    ZoneTerms.apply(
        List.of(north, south),
        week.days,
        week.stops,
        (zone, stop) -> stop == told || stop == two || (stop == in && zone.equals(south)),
        name -> Where.file("zones.csv").at(name));
    assertEquals(
        List.of(36_000L, 0L, 36_000L),
        in.choices().stream().map(DraftChoice::extraSixtieths).toList());
    assertEquals(
        List.of(0, 1),
        two.choices().stream().map(DraftChoice::day).toList(),
        "on the days of either zone, and only then, for one of them must hold");
    assertEquals(3, out.choices().size());
    assertEquals(1, told.choices().size());
  }

  @Test
  void waterOnlyWhereTheTankMayRunDry() {
    Week week = new Week(1);
    VanDay plain = week.days.get(0);
    week.stop("a", Set.of("dog"), 0);
    week.stop("b", Set.of("dog"), 0);
    List<WaterPlace> places = List.of(new WaterPlace(0, 1_200));
    assertEquals(Optional.empty(), WaterAndBalance.water(plain, week.stops, places, 1, false));
    VanDay tanks = with(plain, 59);
    assertEquals(
        Optional.of(
            new WaterTerms(
                new WaterUse(59_000, 59_000),
                Map.of("a", new WaterUse(30_000, 30_000), "b", new WaterUse(30_000, 30_000)),
                places,
                1)),
        WaterAndBalance.water(tanks, week.stops, places, 1, false));
    assertEquals(
        Optional.empty(),
        WaterAndBalance.water(with(plain, 60), week.stops, places, 1, false),
        "exactly the tank is enough");
    Faults faults = new Faults();
    WaterAndBalance.tooMuch(List.of(with(plain, 29)), week.stops, Where::file, faults);
    assertEquals(2, faults.all().size());
    assertEquals("too-much-water", faults.all().get(0).code());
  }

  private static VanDay with(VanDay day, int litres) {
    return new VanDay(
        day.number(),
        day.groomer(),
        Week.van(OptionalInt.of(litres)),
        day.day(),
        day.hours(),
        day.start(),
        day.end(),
        day.helper(),
        day.dayTags(),
        day.crewTags());
  }

  @Test
  void balanceHasAThresholdAndAPrice() {
    VanDay day = new Week(1).days.get(0);
    assertEquals(
        new BalanceTerms(20_000, 30, TimeWindow.DAY_END, 0),
        WaterAndBalance.balance(
            new BalanceWish(OptionalInt.empty(), 30, OptionalInt.empty(), 30), day, 20_000),
        "an even share, no end");
    assertEquals(
        new BalanceTerms(18_000, 20, 59_400, 40),
        WaterAndBalance.balance(
            new BalanceWish(OptionalInt.of(18_000), 20, OptionalInt.of(59_400), 40), day, 20_000));
  }

  @Test
  void minutesAsServed() {
    List<DayRule> rules =
        List.of(
            new DayRule.PlaceMinutes("tired", Set.of("a", "b"), 2, 3, 1_500, 60),
            new DayRule.Changeover("wipe", Set.of("c"), Set.of("a"), 600));
    // a first: as asked. c second: not meant. a third: 1,000 x 1.5 + 60, and 600 after c.
    assertEquals(
        Map.of("b", 1_000, "c", 1_000, "a", 2_160),
        ServedSeconds.of(
            List.of("b", "c", "a"), Map.of("a", 1_000, "b", 1_000, "c", 1_000), rules));
  }

  @Test
  void aStopWithAPriceIsNotCounted() {
    Week week = new Week(1);
    DraftStop a = week.stop("a", Set.of("dog"), 0);
    a.leftOutCosts(77);
    WeekBooking booking = a.booking();
    assertTrue(!booking.counted() && booking.leftOutSixtieths() == 77);
    assertEquals(77, booking.choices().get(0).visit().leftOutSixtieths());
    assertEquals(TagMatch.ANY, Week.match("any"));
  }
}
