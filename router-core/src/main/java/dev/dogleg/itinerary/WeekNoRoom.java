package dev.dogleg.itinerary;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A booking that a week leaves out: why on each van-day that it might have had, and what would make
 * room.
 *
 * @param bookingId the booking
 * @param days one reason for each of its choices, in their order; empty where it has none
 * @param change the smallest single change that would place it with nobody else left out, verified
 *     by planning again; empty where none of those tried does
 */
public record WeekNoRoom(String bookingId, List<OnDay> days, Optional<Change> change) {
  /** Checks that nothing is null. */
  public WeekNoRoom {
    Objects.requireNonNull(bookingId, "bookingId");
    days = List.copyOf(days);
    Objects.requireNonNull(change, "change");
  }

  /**
   * Why not on one van-day.
   *
   * @param day number of the van-day
   * @param reason as for a single day, the other visits being those that the plan has there
   */
  public record OnDay(int day, NoRoom reason) {
    /** Checks that nothing is null. */
    public OnDay {
      Objects.requireNonNull(reason, "reason");
    }
  }

  /** What kinds of change are tried. */
  public enum ChangeKind {
    /** Its arrival window longer by so many seconds. */
    WIDER_WINDOW,
    /** The van-day's end later by so many seconds. */
    LATER_END,
    /** Another booking moved to another van-day. */
    MOVE_OTHER
  }

  /**
   * A change that makes room.
   *
   * @param kind what changes
   * @param day number of the van-day on which the booking then has room
   * @param seconds by how many seconds, for window and end; 0 otherwise
   * @param otherId the booking moved, or empty
   * @param toDay where that one goes; -1 otherwise
   */
  public record Change(ChangeKind kind, int day, int seconds, String otherId, int toDay) {
    /** Checks that nothing is null. */
    public Change {
      Objects.requireNonNull(kind, "kind");
      Objects.requireNonNull(otherId, "otherId");
    }
  }
}
