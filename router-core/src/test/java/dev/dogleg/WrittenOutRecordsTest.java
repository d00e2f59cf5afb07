package dev.dogleg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.dogleg.fault.Where;
import dev.dogleg.groom.Likely;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Place;
import dev.dogleg.model.WallSpan;
import dev.dogleg.roads.DrivingSide;
import dev.dogleg.roads.TurnSeconds;
import dev.dogleg.roads.VanCard;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import java.lang.reflect.Constructor;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Records that write out what they bring along still compare every one of their components. */
class WrittenOutRecordsTest {

  /** A record, its components, and another value for each. */
  record Case(Class<? extends Record> type, List<Object> values, List<Object> others) {
    @Override
    public String toString() {
      return type.getSimpleName();
    }
  }

  static Stream<Case> cases() {
    TimeWindow hours = new TimeWindow(30_000, 60_000);
    BreakRule rest = new BreakRule(1_800, new TimeWindow(40_000, 50_000));
    return Stream.of(
        new Case(Where.class, List.of("a.csv", 3, "pet"), List.of("b.csv", 4, "size")),
        new Case(
            Place.class,
            List.of("12 Mill Lane", Optional.of(new GeoPoint(1, 2))),
            List.of("14 Mill Lane", Optional.empty())),
        new Case(WallSpan.class, List.of(60, 120), List.of(61, 121)),
        new Case(TimeWindow.class, List.of(60, 120), List.of(61, 121)),
        new Case(Likely.class, List.of("a", List.of("b")), List.of("c", List.of("d"))),
        new Case(
            VanCard.class,
            List.of(280, 225, 600, 3500, 110, TurnSeconds.starter(), DrivingSide.RIGHT, false),
            List.of(
                281, 226, 601, 3501, 111, new TurnSeconds(3, 6, 8, 41), DrivingSide.LEFT, true)),
        new Case(
            DayShift.class,
            List.of(
                "g",
                "v",
                new WorkDay(LocalDate.of(2027, 3, 1), ZoneOffset.UTC),
                0,
                1,
                hours,
                600,
                Optional.of(rest)),
            List.of(
                "h",
                "w",
                new WorkDay(LocalDate.of(2027, 3, 2), ZoneOffset.UTC),
                2,
                3,
                TimeWindow.ALWAYS,
                601,
                Optional.empty())));
  }

  @ParameterizedTest
  @MethodSource("cases")
  void everyComponentCounts(Case one) throws ReflectiveOperationException {
    Record record = made(one.type(), one.values());
    Record twin = made(one.type(), one.values());
    assertEquals(record, twin);
    assertEquals(record.hashCode(), twin.hashCode());
    assertNotEquals(record, null);
    for (int component = 0; component < one.values().size(); component++) {
      Object[] values = one.values().toArray();
      values[component] = one.others().get(component);
      assertNotEquals(record, made(one.type(), Arrays.asList(values)), "component " + component);
    }
  }

  private static Record made(Class<? extends Record> type, List<Object> values)
      throws ReflectiveOperationException {
    Constructor<?> whole = type.getDeclaredConstructors()[0];
    return (Record) whole.newInstance(values.toArray());
  }

  /** The text is part of the key under which roads lie in the cache. */
  @Test
  void aVanCardSaysAllItsNumbers() {
    assertEquals(
        "VanCard[heightCm=280, widthCm=225, lengthCm=600, weightKg=3500, topSpeedKmh=110,"
            + " turns=TurnSeconds[nearSide=3, crossing=6, sharp=8, uTurn=40], drivingSide=RIGHT,"
            + " ferries=false]",
        VanCard.starter().toString());
  }
}
