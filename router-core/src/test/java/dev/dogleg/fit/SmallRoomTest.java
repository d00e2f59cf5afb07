package dev.dogleg.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fit.RoomAhead.Room;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Every cell of small weeks with every term there is, against an oracle that tries every order and
 * every second and shares no code with the planner: each told time that is printed holds at each
 * door, and each that is not does not hold at some door.
 */
class SmallRoomTest {
  private static final int SEEDS = Integer.getInteger("dogleg.room.seeds", 45);
  private static final int ASKED = 4;

  private int holding;
  private int refused;

  @Test
  void everyToldTimeIsWhatTheOracleFinds() {
    for (int seed = 1; seed <= SEEDS; seed++) {
      week(seed);
    }
    System.out.println(holding + " told times hold, " + refused + " do not");
    assertTrue(holding > 200 && refused > 200, holding + " hold, " + refused + " do not");
  }

  private void week(int seed) {
    WeekRequest drawn = RandomWeeks.week(seed, 2 + seed % 2 + ASKED, 2, seed % 3 != 0);
    int planned = drawn.bookings().size() - ASKED;
    List<WeekBooking> doors = new ArrayList<>();
    for (int k = 0; k < ASKED; k++) {
      doors.add(wide(drawn.bookings().get(planned + k), seed));
    }
    // The second kind is the first with a shorter stay at the same doors.
    doors.set(2, shorter(doors.get(2).id(), doors.get(0)));
    doors.set(3, shorter(doors.get(3).id(), doors.get(1)));
    List<WeekBooking> before = drawn.bookings().subList(0, planned);
    List<WeekBooking> all = new ArrayList<>(before);
    all.addAll(doors);
    WeekRequest week = with(drawn, all);
    WeekPlan plan = WeekPlanner.plan(new AskedDays(week, ids(doors)).without());
    Map<String, Integer> placed = ForcedDays.placed(plan);
    int span = 30 + seed % 5 * 12;
    RoomQuestion question =
        new RoomQuestion(
            List.of(
                new RoomAsk("zone", "long", doors.subList(0, 2)),
                new RoomAsk("zone", "short", doors.subList(2, 4))),
            span,
            11 + seed % 4,
            seed % 2 * 7,
            seed % 4 != 1,
            OptionalInt.empty(),
            DayRequest.USUAL_EFFORT);
    List<Integer> days = new ArrayList<>();
    RoomAhead answer = RoomAhead.of(week, placed, question, days::add);
    assertEquals(List.of(1, 2), days);
    assertEquals(4, answer.rooms().size());
    for (Room room : answer.rooms()) {
      cell("seed " + seed, week, placed, question, room);
    }
  }

  private void cell(
      String name,
      WeekRequest week,
      Map<String, Integer> placed,
      RoomQuestion question,
      Room room) {
    assertTrue(room.proven(), name);
    DayShift shift = shift(week, placed, question, room.day());
    int step = question.stepSeconds();
    int span = question.spanSeconds();
    int first = (shift.hours().fromSeconds() + step - 1) / step * step;
    for (int from = first; from + span <= shift.hours().toSeconds(); from += step) {
      int begin = from;
      boolean told =
          room.spans().stream()
              .anyMatch(one -> one.fromSeconds() <= begin && begin + span <= one.toSeconds());
      boolean holds =
          question.asks().get(room.ask()).doors().stream()
              .allMatch(door -> holds(week, placed, question, shift, room.day(), door, begin));
      assertEquals(
          holds, told, name + " ask " + room.ask() + " day " + room.day() + " from " + from);
      holding += holds ? 1 : 0;
      refused += holds ? 0 : 1;
    }
  }

  /** As the contract says: inside the hours in which the door may be reached, and the day fits. */
  private static boolean holds(
      WeekRequest week,
      Map<String, Integer> placed,
      RoomQuestion question,
      DayShift shift,
      int day,
      WeekBooking door,
      int from) {
    Optional<DayChoice> choice =
        door.choices().stream().filter(one -> one.day() == day).findFirst();
    int to = from + question.spanSeconds();
    if (choice.isEmpty()
        || choice.get().visit().arriveWithin().stream()
            .noneMatch(one -> one.fromSeconds() <= from && to <= one.toSeconds())) {
      return false;
    }
    int margin = question.marginSeconds();
    Visit visit = choice.get().visit();
    Visit told =
        visit
            .arriving(List.of(new TimeWindow(from, to - margin)))
            .lasting(visit.serviceSeconds() + 2 * margin);
    AskedDays days = new AskedDays(week, ids(allDoors(question)));
    DayRequest forced =
        ForcedDays.day(withDay(week, days, day, door.id(), shift), placed, day, List.of(told));
    return DayOracle.best(forced).leftOutBooked() == 0;
  }

  private static WeekRequest withDay(
      WeekRequest week, AskedDays days, int day, String id, DayShift shift) {
    List<WeekDay> all = new ArrayList<>(week.days());
    WeekDay one = days.with(day, id);
    all.set(day, new WeekDay(shift, one.travel(), one.terms()));
    return new WeekRequest(all, week.bookings(), week.prices(), week.seed(), week.effort());
  }

  private static List<WeekBooking> allDoors(RoomQuestion question) {
    return question.asks().stream().flatMap(ask -> ask.doors().stream()).toList();
  }

  /** Without overtime the day ends by its shift's end, or as late as it does already. */
  private static DayShift shift(
      WeekRequest week, Map<String, Integer> placed, RoomQuestion question, int day) {
    DayShift shift = week.days().get(day).shift();
    if (question.overtime()) {
      return shift;
    }
    WeekRequest without = new AskedDays(week, ids(allDoors(question))).without();
    List<PlannedStop> stops = FitWeek.of(without, placed, Set.of()).days().get(day).plan().stops();
    int end = stops.isEmpty() ? 0 : stops.get(stops.size() - 1).arriveSeconds();
    int overtime = Math.max(0, end - shift.hours().toSeconds());
    return new DayShift(
        shift.groomerId(),
        shift.vanId(),
        shift.day(),
        shift.startPlace(),
        shift.endPlace(),
        shift.hours(),
        overtime,
        shift.breakRule());
  }

  /** Two of three bookings asked about may be reached at any time, so that many times may hold. */
  private static WeekBooking wide(WeekBooking booking, int seed) {
    List<DayChoice> choices = new ArrayList<>();
    for (DayChoice choice : booking.choices()) {
      Visit visit = choice.visit();
      boolean any = (seed + choice.day()) % 3 != 0;
      choices.add(
          new DayChoice(
              choice.day(), any ? visit.arriving(Visit.ANY_TIME) : visit, choice.extraSixtieths()));
    }
    return new WeekBooking(booking.id(), booking.counted(), booking.leftOutSixtieths(), choices);
  }

  private static WeekBooking shorter(String id, WeekBooking like) {
    List<DayChoice> choices = new ArrayList<>();
    for (DayChoice choice : like.choices()) {
      Visit visit = choice.visit();
      Visit other =
          new Visit(
              id,
              visit.place(),
              visit.serviceSeconds() / 2,
              visit.booked(),
              0,
              visit.arriveWithin(),
              visit.doneBySeconds(),
              visit.vanWithin(),
              visit.first());
      choices.add(new DayChoice(choice.day(), other, choice.extraSixtieths()));
    }
    return new WeekBooking(id, like.counted(), like.leftOutSixtieths(), choices);
  }

  private static Set<String> ids(List<WeekBooking> bookings) {
    return bookings.stream().map(WeekBooking::id).collect(Collectors.toSet());
  }

  private static WeekRequest with(WeekRequest week, List<WeekBooking> bookings) {
    return new WeekRequest(week.days(), bookings, week.prices(), week.seed(), week.effort());
  }
}
