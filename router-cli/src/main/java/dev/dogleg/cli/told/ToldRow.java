package dev.dogleg.cli.told;

import dev.dogleg.model.HowToTell;
import dev.dogleg.model.WallSpan;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One row of {@code told.csv}.
 *
 * @param written when it was written
 * @param event what it says
 * @param run number of the run, from 1; for an answer that of the text answered; 0 where no run is
 *     meant
 * @param of how many rows that run prepared; 0 where it is no prepared row
 * @param client id of the client; empty where a whole run is meant
 * @param told what was told; empty where the row is about no visit
 * @param file for prepared rows the file that takes the texts; else empty
 */
public record ToldRow(
    OffsetDateTime written,
    ToldEvent event,
    int run,
    int of,
    String client,
    Optional<Told> told,
    String file) {

  /** Checks that nothing is null or negative. */
  public ToldRow {
    Objects.requireNonNull(written, "written");
    Objects.requireNonNull(event, "event");
    Objects.requireNonNull(client, "client");
    Objects.requireNonNull(told, "told");
    Objects.requireNonNull(file, "file");
    if (run < 0 || of < 0 || (event == ToldEvent.PREPARED && (run == 0 || told.isEmpty()))) {
      throw new IllegalArgumentException("no such row: " + event + ", run " + run + " of " + of);
    }
  }

  /**
   * What was told of one visit.
   *
   * @param bookings ids of its bookings, at least one
   * @param date the day
   * @param span span for arrival at the door, by that day's wall clock; it has an end
   * @param occasion why
   * @param how how it was told
   * @param sendAt when it goes out
   */
  public record Told(
      List<String> bookings,
      LocalDate date,
      WallSpan span,
      Occasion occasion,
      HowToTell how,
      OffsetDateTime sendAt) {
    /** Checks that there is a booking and an end. */
    public Told {
      bookings = List.copyOf(bookings);
      Objects.requireNonNull(date, "date");
      Objects.requireNonNull(occasion, "occasion");
      Objects.requireNonNull(how, "how");
      Objects.requireNonNull(sendAt, "sendAt");
      if (bookings.isEmpty() || span.toSeconds() == WallSpan.OPEN) {
        throw new IllegalArgumentException("told needs a booking and a span with an end");
      }
    }

    /**
     * {@return whether it speaks of a booking, by its id or by what is left of it without dates}
     */
    boolean speaksOf(String bookingId) {
      return bookings.contains(bookingId)
          || bookings.stream().anyMatch(id -> stem(id).equals(stem(bookingId)));
    }
  }

  /**
   * A booking's id without the dates at its end: ids made from names change with the date.
   *
   * @param bookingId for example {@code nell-ottery.fern@2027-03-01}
   * @return for example {@code nell-ottery.fern}
   */
  public static String stem(String bookingId) {
    return bookingId.replaceFirst("@\\d{4}-\\d\\d-\\d\\d(\\.\\.\\d{4}-\\d\\d-\\d\\d)?$", "");
  }
}
