package dev.dogleg.fit;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.arrival.PromiseOdds;
import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.fit.RoomAhead.Room;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DaySpread;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Times that are to be kept often: each is told to a client of a planned week, who is then asked
 * for alone; the day found keeps all promises as often as wanted.
 */
class RoomOddsTest {
  private static final int SPAN = 3_600;
  private static final int QUARTER = 900;
  private static final int KEPT_PERMILLE = 950;

  private static final int DOORS = 2;

  /** So dear that no cost outweighs a promise. */
  private static final long BROKEN_SIXTIETHS = 1L << 36;

  /** Every so many told times are asked again: each plans a day with odds. */
  private static final int EVERY = 5;

  private final QuestionWeeks questions = QuestionWeeks.of(3, DOORS, 12);
  private final List<WeekBooking> doors = doors();
  private final WeekRequest week = week();

  @Test
  void whatMayBeToldIsKeptAsOftenAsWanted() {
    RoomAhead possible = ask(OptionalInt.empty());
    RoomAhead kept = ask(OptionalInt.of(KEPT_PERMILLE));
    FitWeek fit = FitWeek.of(week, questions.placed(), questions.told());
    int asked = 0;
    int fewer = 0;
    for (int day = 0; day < week.days().size(); day++) {
      List<Integer> starts = starts(kept.room(0, day));
      List<Integer> all = starts(possible.room(0, day));
      assertTrue(all.containsAll(starts), "day " + day);
      fewer += all.size() - starts.size();
      PlannedVanDay before = fit.days().get(day);
      boolean kind =
          new PromiseOdds(PlannedVanDay.request(week, week.days().get(day), before.visits()))
                  .priceSixtieths(before.plan().stops())
              == 0;
      for (int k = 0; k < starts.size() && kind; k += EVERY) {
        for (WeekBooking door : doors) {
          keeps(fit, door, day, starts.get(k));
          asked++;
        }
      }
    }
    System.out.println(asked + " told times asked again, " + fewer + " not kept often enough");
    assertTrue(asked > 5 && fewer > 5, asked + " asked, " + fewer + " fewer");
  }

  /** With the van at the door within the span, or as it begins. */
  private static void keeps(FitWeek fit, WeekBooking door, int day, int from) {
    boolean kept =
        price(fit, door, day, from, SPAN) == 0 || price(fit, door, day, from, QUARTER) == 0;
    assertTrue(kept, door.id() + " day " + day + " from " + from);
  }

  /** Price of what the day's promises fall short, an hour being told and the van there by then. */
  private static long price(FitWeek fit, WeekBooking door, int day, int from, int by) {
    Visit visit = door.choices().get(day).visit();
    Visit planned = visit.arriving(List.of(new TimeWindow(from, from + by)));
    WeekBooking booking =
        new WeekBooking(door.id(), true, 0, List.of(new DayChoice(day, planned, 0)));
    FitAnswer answer = fit.ask(FitQuestion.of(booking).withOtherDays(OtherDays.NEVER));
    if (answer.offers().isEmpty()) {
      return Long.MAX_VALUE;
    }
    DayRequest asked = answer.offers().get(0).request();
    Visit told = visit.arriving(List.of(new TimeWindow(from, from + SPAN)));
    DayRequest request =
        new DayRequest(
            asked.shift(),
            asked.visits().stream().map(one -> one.id().equals(door.id()) ? told : one).toList(),
            asked.travel(),
            asked.prices(),
            asked.terms(),
            asked.seed(),
            asked.effort());
    return new PromiseOdds(request).priceSixtieths(answer.offers().get(0).after().stops());
  }

  private static List<Integer> starts(Room room) {
    List<Integer> starts = new ArrayList<>();
    for (TimeWindow stretch : room.spans()) {
      for (int from = stretch.fromSeconds(); from + SPAN <= stretch.toSeconds(); from += QUARTER) {
        starts.add(from);
      }
    }
    return starts;
  }

  private RoomAhead ask(OptionalInt keptPermille) {
    return RoomAhead.of(
        week,
        questions.placed(),
        new RoomQuestion(
            List.of(new RoomAsk("zone", "kind", doors)),
            SPAN,
            QUARTER,
            0,
            true,
            keptPermille,
            DayRequest.USUAL_EFFORT),
        day -> {});
  }

  /** The newcomers' doors, asked for on every day and at any hour, an hour's stay. */
  private List<WeekBooking> doors() {
    List<WeekBooking> doors = new ArrayList<>();
    for (WeekBooking newcomer : questions.newcomers()) {
      String id = "caller-" + newcomer.id();
      List<DayChoice> choices = new ArrayList<>();
      for (int day = 0; day < questions.week().days().size(); day++) {
        int place = newcomer.choices().get(0).visit().place();
        choices.add(new DayChoice(day, Visit.booked(id, place, SPAN), 0));
      }
      doors.add(new WeekBooking(id, true, 0, choices));
    }
    return doors;
  }

  /** The week with everybody's spread, and callers who hold what they were told for a promise. */
  private WeekRequest week() {
    WeekRequest plain = questions.week();
    List<WeekBooking> all = new ArrayList<>(plain.bookings());
    all.addAll(doors);
    Map<String, ServiceSpread> services = new HashMap<>();
    for (WeekBooking booking : all) {
      int seconds = booking.choices().get(0).visit().serviceSeconds();
      services.put(booking.id(), new ServiceSpread(600, seconds - 600.0, 0.2));
    }
    Set<String> promised = new HashSet<>(questions.told());
    doors.forEach(door -> promised.add(door.id()));
    OddsTerms odds =
        new OddsTerms(services, DaySpread.STARTER, promised, KEPT_PERMILLE, BROKEN_SIXTIETHS);
    List<WeekDay> days =
        plain.days().stream()
            .map(day -> new WeekDay(day.shift(), day.travel(), day.terms().with(odds)))
            .toList();
    return new WeekRequest(days, all, plain.prices(), plain.seed(), plain.effort());
  }
}
