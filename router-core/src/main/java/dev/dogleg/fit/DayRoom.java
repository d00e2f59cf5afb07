package dev.dogleg.fit;

import dev.dogleg.fit.RoomAhead.Room;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.schedule.LegMemory;
import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Room on one van-day for every kind of client at every door.
 *
 * <p>Maintainers: a time that one door refuses is asked of no other door of the zone. What holds
 * for a longer visit at a door holds for a shorter one there, and what the shorter has no room for
 * neither has the longer, wherever {@link SameRoom} says that they nest: so the longest comes
 * first, then the shortest, then those between.
 */
final class DayRoom {
  private final AskedDays days;
  private final PlannedVanDay before;
  private final RoomQuestion question;
  private final DayShift shift;
  private final RoomGrid grid;
  private final DoorRoom doors;
  private final RoomOdds odds;
  private final List<Known> known = new ArrayList<>();
  private final List<Cell> cells = new ArrayList<>();

  /**
   * What is known of a visit: the times asked for, those that hold, and whether the others are
   * proven not to.
   */
  private record Known(Visit visit, BitSet asked, BitSet holds, boolean proven) {}

  /** One visit to be asked about. */
  private record Door(Cell cell, DayChoice choice) {}

  /** A kind of client in a zone, with the times that every door so far has room for. */
  private static final class Cell {
    private final int ask;
    private BitSet open;
    private boolean allowed = true;
    private boolean proven = true;
    private long extraSixtieths;

    Cell(int ask, BitSet open) {
      this.ask = ask;
      this.open = open;
    }
  }

  DayRoom(AskedDays days, PlannedVanDay before, RoomQuestion question) {
    this.days = days;
    this.before = before;
    this.question = question;
    DayShift given = days.week().days().get(before.number()).shift();
    shift = question.overtime() ? given : given.endingBy(latestEnd(given));
    grid = RoomGrid.of(shift.hours(), question);
    TravelTimes travel = days.week().days().get(before.number()).travel();
    doors = new DoorRoom(days.week(), before, grid, LegMemory.of(travel, shift), question.effort());
    odds = new RoomOdds(before, question.keptPermille().orElse(0));
  }

  /** The shift's end, or as late as the day ends already. */
  private int latestEnd(DayShift given) {
    int size = before.plan().stops().size();
    int end = size == 0 ? 0 : before.plan().stops().get(size - 1).arriveSeconds();
    return Math.max(given.hours().toSeconds(), end);
  }

  /** Rooms by ask. */
  List<Room> rooms() {
    List<Door> all = new ArrayList<>();
    for (int ask = 0; ask < question.asks().size(); ask++) {
      BitSet every = new BitSet();
      every.set(0, grid.count());
      Cell cell = new Cell(ask, every);
      cells.add(cell);
      for (WeekBooking door : question.asks().get(ask).doors()) {
        Optional<DayChoice> choice = FitWeek.on(door, before.number());
        if (choice.isPresent()) {
          all.add(new Door(cell, choice.get()));
        } else {
          cell.allowed = false;
          cell.open.clear();
        }
      }
    }
    inOrder(all).forEach(this::ask);
    return cells.stream().map(this::room).toList();
  }

  private Room room(Cell cell) {
    return new Room(
        cell.ask,
        before.number(),
        cell.allowed,
        cell.allowed ? grid.stretches(cell.open) : List.of(),
        cell.proven,
        cell.allowed ? cell.extraSixtieths : 0);
  }

  /** Far doors first, since they refuse most; at a door the longest visit, then the shortest. */
  private List<Door> inOrder(List<Door> all) {
    List<Door> sorted = new ArrayList<>(all);
    sorted.sort(
        Comparator.comparingInt((Door door) -> -driveSeconds(door.choice.visit().place()))
            .thenComparingInt(door -> door.choice.visit().place())
            .thenComparingInt(door -> -door.choice.visit().serviceSeconds())
            .thenComparing(door -> door.choice.visit().id()));
    List<Door> order = new ArrayList<>();
    for (int from = 0; from < sorted.size(); ) {
      int to = from + 1;
      while (to < sorted.size()
          && sorted.get(to).choice.visit().place() == sorted.get(from).choice.visit().place()) {
        to++;
      }
      order.add(sorted.get(from));
      if (to - from > 1) {
        order.add(sorted.get(to - 1));
        order.addAll(sorted.subList(from + 1, to - 1));
      }
      from = to;
    }
    return order;
  }

  /** From the start in the morning; more than any drive where no road leads. */
  private int driveSeconds(int place) {
    TravelTimes travel = days.week().days().get(before.number()).travel();
    return travel.reaches(shift.startPlace(), place)
        ? travel.driveSeconds(shift.startPlace(), place, shift.hours().fromSeconds())
        : Integer.MAX_VALUE;
  }

  private void ask(Door door) {
    Cell cell = door.cell;
    cell.extraSixtieths = Math.max(cell.extraSixtieths, door.choice.extraSixtieths());
    Visit visit = door.choice.visit().mustServe();
    BitSet asked = (BitSet) cell.open.clone();
    asked.and(grid.within(visit));
    WeekDay day = day(visit.id());
    BitSet holds = new BitSet();
    BitSet open = (BitSet) asked.clone();
    boolean proven = true;
    known.removeIf(one -> one.visit.place() != visit.place());
    for (Known one : known) {
      if (SameRoom.nests(visit, one.visit, day.terms())) {
        holds.or(one.holds);
      }
      if (SameRoom.nests(one.visit, visit, day.terms())) {
        BitSet refused = (BitSet) one.asked.clone();
        refused.andNot(one.holds);
        proven &= one.proven || !refused.intersects(open);
        open.andNot(refused);
      }
    }
    holds.and(asked);
    open.andNot(holds);
    if (!open.isEmpty()) {
      DoorRoom.Found found = doors.of(day, withMargin(visit), open);
      holds.or(found.starts());
      proven &= found.proven();
    }
    cell.proven &= proven;
    known.add(new Known(visit, asked, holds, proven));
    cell.open =
        question.keptPermille().isPresent()
            ? doors.likely(day, withMargin(visit), holds, odds)
            : (BitSet) holds.clone();
  }

  private WeekDay day(String id) {
    WeekDay day = days.with(before.number(), id);
    return new WeekDay(shift, day.travel(), day.terms());
  }

  /** A drive that is longer by the margin on either side is as a longer stay. */
  private Visit withMargin(Visit visit) {
    return visit.lasting(
        Math.min(Visit.LONGEST_SERVICE, visit.serviceSeconds() + 2 * question.marginSeconds()));
  }
}
