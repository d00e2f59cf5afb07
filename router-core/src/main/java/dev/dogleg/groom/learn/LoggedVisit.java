package dev.dogleg.groom.learn;

import dev.dogleg.fault.Where;
import dev.dogleg.model.BookedPet;
import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * One row of the visit log, sound in itself.
 *
 * @param where its row, for what is to be said about it
 * @param date the day
 * @param groomerId who groomed; an id of the card
 * @param pets what was done with which pets of the book, at least one; each pet once
 * @param groomSeconds from the start of the first groom to the end of the last, 60..43,200; 0 where
 *     the outcome is neither done nor cut short
 * @param outcome how it ended
 * @param drive the drive to it, where the log has planned and driven minutes
 */
public record LoggedVisit(
    Where where,
    LocalDate date,
    String groomerId,
    List<BookedPet> pets,
    int groomSeconds,
    VisitOutcome outcome,
    Optional<LoggedDrive> drive) {

  /** Copies the list and checks the range. */
  public LoggedVisit {
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(date, "date");
    Objects.requireNonNull(groomerId, "groomerId");
    Objects.requireNonNull(outcome, "outcome");
    Objects.requireNonNull(drive, "drive");
    pets = List.copyOf(pets);
    if (pets.isEmpty()) {
      throw new IllegalArgumentException("a visit needs a pet");
    }
    boolean timed = outcome == VisitOutcome.DONE || outcome == VisitOutcome.CUT_SHORT;
    if (timed ? groomSeconds < 60 || groomSeconds > 43_200 : groomSeconds != 0) {
      throw new IllegalArgumentException("groomSeconds out of range: " + groomSeconds);
    }
  }

  /** {@return whether a pet was groomed in it} */
  boolean has(String petId) {
    return pets.stream().anyMatch(pet -> pet.petId().equals(petId));
  }
}
