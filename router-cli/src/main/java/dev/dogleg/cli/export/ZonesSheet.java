package dev.dogleg.cli.export;

import dev.dogleg.plan.zone.ZoneDayPlan;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * What there is to say about the zones of a planned round.
 *
 * @param days van-days in their order
 * @param lines zones in the book's order, then what lies in none, other stops, the way home
 * @param gaps clients in no zone
 * @param shared clients in several zones
 * @param sharedAreas zones whose areas overlap
 * @param wrongDays visits on a day that is none of their zones'
 * @param proposal other days for the zones, where there is anything to choose
 * @param otherTimes whether the plan on file has other times than the best order of its visits
 * @param unknown bookings and errands of the plan that the book has no more, or not open
 */
public record ZonesSheet(
    List<Day> days,
    List<Line> lines,
    List<Who> gaps,
    List<Shared> shared,
    List<SharedArea> sharedAreas,
    List<WrongDay> wrongDays,
    Optional<Proposal> proposal,
    boolean otherTimes,
    int unknown) {
  /** Copies the lists. */
  public ZonesSheet {
    days = List.copyOf(days);
    lines = List.copyOf(lines);
    gaps = List.copyOf(gaps);
    shared = List.copyOf(shared);
    sharedAreas = List.copyOf(sharedAreas);
    wrongDays = List.copyOf(wrongDays);
    Objects.requireNonNull(proposal, "proposal");
  }

  /**
   * A van-day.
   *
   * @param date its date
   * @param groomer who works, as shown
   */
  public record Day(LocalDate date, String groomer) {}

  /**
   * A client as the groomer knows it.
   *
   * @param id id of the client
   * @param name its name
   */
  public record Who(String id, String name) {}

  /** What a line of the table is about. */
  public enum About {
    /** A zone. */
    ZONE,
    /** Clients in no zone. */
    NO_ZONE,
    /** Errands and water. */
    OTHER,
    /** Legs that lead home. */
    HOME
  }

  /**
   * A line of the table.
   *
   * @param about what it is about
   * @param name name of the zone, else empty
   * @param days days of the zone as written and its strength, else empty
   * @param clients clients of the book that live there, those in several zones in each; 0 for other
   *     stops and home
   * @param cells one each van-day
   */
  public record Line(About about, String name, String days, int clients, List<Cell> cells) {
    /** Copies the cells. */
    public Line {
      cells = List.copyOf(cells);
    }

    /** {@return the sum of its cells} */
    public Cell sum() {
      return cells.stream().reduce(Cell.NONE, Cell::plus);
    }
  }

  /**
   * What one van-day has of a line.
   *
   * @param visits number of visits
   * @param wrongDay how many of them are on a day that is none of their zones'
   * @param groomSeconds at their doors, stop minutes included
   * @param driveSeconds legs that lead to their doors
   */
  public record Cell(int visits, int wrongDay, long groomSeconds, long driveSeconds) {
    /** Nothing. */
    public static final Cell NONE = new Cell(0, 0, 0, 0);

    /**
     * The sum of this and another.
     *
     * @param other the other
     * @return the sum
     */
    public Cell plus(Cell other) {
      return new Cell(
          visits + other.visits,
          wrongDay + other.wrongDay,
          groomSeconds + other.groomSeconds,
          driveSeconds + other.driveSeconds);
    }
  }

  /**
   * Clients that lie in the same several zones.
   *
   * @param zones names, two or more
   * @param clients at least one
   */
  public record Shared(List<String> zones, List<Who> clients) {
    /** Copies the lists. */
    public Shared {
      zones = List.copyOf(zones);
      clients = List.copyOf(clients);
    }
  }

  /**
   * Two zones whose areas overlap.
   *
   * @param one name
   * @param other name
   * @param squareMetres size of what both hold, more than 0
   */
  public record SharedArea(String one, String other, double squareMetres) {}

  /**
   * A visit on a day that is none of its zones'.
   *
   * @param who whose
   * @param bookings ids of its bookings
   * @param day number of its van-day
   * @param zones names of its zones
   * @param told whether its time was told: it stays
   * @param extraDriveSeconds driving of that day with it less that without it; empty where the day
   *     was not planned within the limit
   * @param zoneDay van-day of its zones on which it would take the least extra driving, all others
   *     staying; empty where none has room or it keeps its day
   * @param zoneDayDriveSeconds extra driving there; present with {@code zoneDay}
   * @param keepsDay whether it may be on no other day
   */
  public record WrongDay(
      Who who,
      List<String> bookings,
      int day,
      List<String> zones,
      boolean told,
      OptionalInt extraDriveSeconds,
      OptionalInt zoneDay,
      OptionalInt zoneDayDriveSeconds,
      boolean keepsDay) {
    /** Copies the lists. */
    public WrongDay {
      bookings = List.copyOf(bookings);
      zones = List.copyOf(zones);
    }
  }

  /**
   * Days proposed for the zones.
   *
   * @param zones names, in the order of the answer
   * @param answer the planned weeks it rests on
   * @param weeks calendar weeks that the plan touches
   * @param visits planned visits
   * @param free visits that might have been on another day of their week
   * @param changed visits that the proposal has on another day than the plan on file
   * @param plannedDriveSeconds driving of the plan on file
   */
  public record Proposal(
      List<String> zones,
      ZoneDayPlan answer,
      int weeks,
      int visits,
      int free,
      int changed,
      int plannedDriveSeconds) {
    /** Copies the list. */
    public Proposal {
      zones = List.copyOf(zones);
      Objects.requireNonNull(answer, "answer");
    }

    /** {@return seconds of driving that the proposed days save against those of now} */
    public int savedSeconds() {
      return answer.now().driveSeconds() - answer.best().driveSeconds();
    }

    /** {@return so many more visits have room with the proposed days; 0 or more} */
    public int moreRoom() {
      return answer.now().plan().leftOutCounted() - answer.best().plan().leftOutCounted();
    }

    /** {@return whether the proposed days serve as many visits, are better and drive less} */
    public boolean saves() {
      return answer.better() && moreRoom() == 0 && savedSeconds() > 0;
    }

    /** {@return whether there is something to propose} */
    public boolean worthwhile() {
      return saves() || moreRoom() > 0;
    }
  }

  /** {@return whether several people work} */
  public boolean severalGroomers() {
    return days.stream().map(Day::groomer).distinct().count() > 1;
  }
}
