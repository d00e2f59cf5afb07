package dev.dogleg.model;

import java.util.List;
import java.util.Objects;

/**
 * One pet of a booking and what is to be done with it.
 *
 * @param petId which pet
 * @param services names of the service table, the main service first, then add-ons; empty: the
 *     pet's usual service
 * @param coatState state of the coat on the day
 * @param stateGuessed whether the state was guessed from somebody's words
 */
public record BookedPet(
    String petId, List<String> services, CoatState coatState, boolean stateGuessed) {
  /** Copies the list. */
  public BookedPet {
    Ids.checked(petId);
    Objects.requireNonNull(coatState, "coatState");
    services = List.copyOf(services);
  }
}
