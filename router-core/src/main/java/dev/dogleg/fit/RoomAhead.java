package dev.dogleg.fit;

import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntConsumer;

/**
 * Times that may be told without asking again: for each kind of client, zone and van-day.
 *
 * <p>A time may be told where, <i>whichever</i> door of the zone the client lives at, the van-day
 * keeps all its visits and every told time and serves the client within that time. It speaks of one
 * more client: whoever is taken uses room, and then one asks again.
 *
 * @param rooms by ask, then by van-day
 */
public record RoomAhead(List<Room> rooms) {
  /** Copies the list. */
  public RoomAhead {
    rooms = List.copyOf(rooms);
  }

  /**
   * What may be told to one kind of client of one zone on one van-day.
   *
   * @param ask number of the ask
   * @param day number of the van-day
   * @param allowed whether it may be on this van-day at every door
   * @param spans stretches, each as long as it can be, sorted by their begins; they may overlap:
   *     every told span of the question's width that begins on a multiple of its step and lies in
   *     one of them holds
   * @param proven whether it is proven of every other time that it does not hold at some door
   * @param extraSixtieths the dearest price of this choice over all doors, besides the day's cost:
   *     a day or zone liked less; 0 where it is not allowed
   */
  public record Room(
      int ask,
      int day,
      boolean allowed,
      List<TimeWindow> spans,
      boolean proven,
      long extraSixtieths) {
    /** Copies the list. */
    public Room {
      spans = List.copyOf(spans);
    }
  }

  /**
   * Asks a planned week.
   *
   * @param week the week's request, in which the bookings asked about stand; what is neither placed
   *     nor asked about is passed over
   * @param placed number of the van-day that serves a booking, by id
   * @param question what is asked
   * @param progress hears the number of van-days done
   * @return the answer
   * @throws IllegalArgumentException where a booking asked about is placed, or a van-day cannot
   *     serve what it has
   */
  public static RoomAhead of(
      WeekRequest week, Map<String, Integer> placed, RoomQuestion question, IntConsumer progress) {
    Set<String> asked = new HashSet<>();
    for (RoomAsk ask : question.asks()) {
      for (WeekBooking door : ask.doors()) {
        if (placed.containsKey(door.id()) || !asked.add(door.id())) {
          throw new IllegalArgumentException("already in the plan or asked twice: " + door.id());
        }
      }
    }
    AskedDays days = new AskedDays(week, asked);
    FitWeek before = FitWeek.of(days.without(), placed, Set.of());
    List<List<Room>> byDay = new ArrayList<>();
    for (int number = 0; number < week.days().size(); number++) {
      byDay.add(new DayRoom(days, before.days().get(number), question).rooms());
      progress.accept(number + 1);
    }
    List<Room> rooms = new ArrayList<>();
    for (int ask = 0; ask < question.asks().size(); ask++) {
      for (List<Room> day : byDay) {
        rooms.add(day.get(ask));
      }
    }
    return new RoomAhead(rooms);
  }

  /**
   * One cell of the table.
   *
   * @param ask number of the ask
   * @param day number of the van-day
   * @return what may be told
   */
  public Room room(int ask, int day) {
    return rooms.stream()
        .filter(room -> room.ask() == ask && room.day() == day)
        .findFirst()
        .orElseThrow();
  }
}
