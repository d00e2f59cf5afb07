package dev.dogleg.model;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * One wish for a groom.
 *
 * @param id unique in a book, same form as a client's
 * @param clientId whose pets
 * @param pets at least one, all of that client
 * @param dates the day or the days of which one is to be used; empty: not dated
 * @param when limits by weekday and time
 * @param minutes the groomer's own groom minutes for all its pets together, without stop minutes,
 *     3..720; empty: from the pets and the tables
 * @param told a told time, binding on the (single) date; empty where none was told
 * @param status where it stands
 * @param note free text
 * @param terms what it says for planning several days
 */
public record Booking(
    String id,
    String clientId,
    List<BookedPet> pets,
    Optional<DateSpan> dates,
    When when,
    OptionalInt minutes,
    Optional<ToldTime> told,
    BookingStatus status,
    String note,
    BookingTerms terms) {

  /** Checks ids and ranges. */
  public Booking {
    Objects.requireNonNull(terms, "terms");
    Ids.checked(id);
    Ids.checked(clientId);
    pets = List.copyOf(pets);
    Objects.requireNonNull(when, "when");
    Objects.requireNonNull(status, "status");
    Objects.requireNonNull(note, "note");
    if (pets.isEmpty()) {
      throw new IllegalArgumentException("booking " + id + " has no pet");
    }
    if (minutes.isPresent() && (minutes.getAsInt() < 3 || minutes.getAsInt() > 720)) {
      throw new IllegalArgumentException("minutes must lie in 3..720, was " + minutes.getAsInt());
    }
    if (told.isPresent() && dates.isPresent() && !dates.get().single()) {
      throw new IllegalArgumentException("booking " + id + ": a told time needs one date");
    }
  }

  /**
   * A booking that says nothing for planning several days.
   *
   * @param id see the record
   * @param clientId see the record
   * @param pets see the record
   * @param dates see the record
   * @param when see the record
   * @param minutes see the record
   * @param told see the record
   * @param status see the record
   * @param note see the record
   */
  public Booking(
      String id,
      String clientId,
      List<BookedPet> pets,
      Optional<DateSpan> dates,
      When when,
      OptionalInt minutes,
      Optional<ToldTime> told,
      BookingStatus status,
      String note) {
    this(id, clientId, pets, dates, when, minutes, told, status, note, BookingTerms.NONE);
  }

  /**
   * The same booking of another client.
   *
   * @param otherId id of the client
   * @return the booking
   */
  public Booking madeBy(String otherId) {
    return new Booking(id, otherId, pets, dates, when, minutes, told, status, note, terms);
  }
}
