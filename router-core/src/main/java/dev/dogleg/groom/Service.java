package dev.dogleg.groom;

import dev.dogleg.model.Species;
import java.util.List;
import java.util.Objects;

/**
 * One service of the trade.
 *
 * @param name plain word, for example {@code bath}
 * @param species for which animals it is offered
 * @param alsoCalled other words people use
 * @param whatItIs what is done, in a few words
 * @param provenance where the row comes from
 */
public record Service(
    String name,
    List<Species> species,
    List<String> alsoCalled,
    String whatItIs,
    String provenance) {

  /** Copies the lists. */
  public Service {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(whatItIs, "whatItIs");
    Objects.requireNonNull(provenance, "provenance");
    species = List.copyOf(species);
    alsoCalled = List.copyOf(alsoCalled);
  }
}
