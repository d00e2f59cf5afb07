package dev.dogleg.cli.export;

import java.util.List;
import java.util.Objects;

/**
 * How a visit is shown: what the groomer needs at the door, and no phone or gate code.
 *
 * @param visitId the visit
 * @param bookings ids of its bookings, at least one
 * @param client whose pets
 * @param pets names of the pets
 * @param serviceSeconds from groom start to ready to leave, stop minutes and all grooms
 * @param booked false for a visit of the waiting list
 * @param note short remarks, empty where there are none
 * @param errand whether it is an errand of the groomer's own
 */
public record StopLabel(
    String visitId,
    List<String> bookings,
    String client,
    List<String> pets,
    int serviceSeconds,
    boolean booked,
    String note,
    boolean errand) {
  /** Checks that nothing is null. */
  public StopLabel {
    Objects.requireNonNull(visitId, "visitId");
    Objects.requireNonNull(client, "client");
    Objects.requireNonNull(note, "note");
    bookings = List.copyOf(bookings);
    pets = List.copyOf(pets);
  }

  /**
   * A visit of a client.
   *
   * @param visitId see the record
   * @param bookings see the record
   * @param client see the record
   * @param pets see the record
   * @param serviceSeconds see the record
   * @param booked see the record
   * @param note see the record
   */
  public StopLabel(
      String visitId,
      List<String> bookings,
      String client,
      List<String> pets,
      int serviceSeconds,
      boolean booked,
      String note) {
    this(visitId, bookings, client, pets, serviceSeconds, booked, note, false);
  }

  /**
   * The same stop taking another time.
   *
   * @param seconds whole service
   * @return the label
   */
  public StopLabel taking(int seconds) {
    return new StopLabel(visitId, bookings, client, pets, seconds, booked, note, errand);
  }

  /**
   * The same stop with one more remark.
   *
   * @param remark short remark
   * @return the label
   */
  public StopLabel noting(String remark) {
    String both = note.isEmpty() ? remark : note + "; " + remark;
    return new StopLabel(visitId, bookings, client, pets, serviceSeconds, booked, both, errand);
  }

  /** {@return client and pets in one line} */
  public String who() {
    return pets.isEmpty() ? client : client + ": " + String.join(", ", pets);
  }
}
