package dev.dogleg.cli.tell;

import dev.dogleg.model.Client;
import dev.dogleg.model.WallSpan;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A visit of a plan, and the span that can be told of it.
 *
 * @param bookings ids of its bookings, at least one
 * @param client whose door
 * @param pets names of the pets
 * @param date the day
 * @param groomer name of the groomer
 * @param arriveWall when the plan has the van at the door, wall-clock seconds, 0..86,400
 * @param span the span to tell, by the wall clock; it has an end
 * @param promised what binds already: told before, or written in the book; empty where nothing does
 * @param booked false where it is on the waiting list
 * @param agreedDay empty where the day is one of the booking's own; else the day it was agreed for
 * @param toBeAsked whether the owner has to agree to this day first
 */
public record AtDoor(
    List<String> bookings,
    Client client,
    List<String> pets,
    LocalDate date,
    String groomer,
    int arriveWall,
    WallSpan span,
    Optional<WallSpan> promised,
    boolean booked,
    Optional<LocalDate> agreedDay,
    boolean toBeAsked) {
  /** Checks that there is a booking and an end. */
  public AtDoor {
    bookings = List.copyOf(bookings);
    pets = List.copyOf(pets);
    Objects.requireNonNull(client, "client");
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(groomer, "groomer");
    Objects.requireNonNull(promised, "promised");
    Objects.requireNonNull(agreedDay, "agreedDay");
    if (bookings.isEmpty() || span.toSeconds() == WallSpan.OPEN) {
      throw new IllegalArgumentException("a visit needs a booking and a span with an end");
    }
  }
}
