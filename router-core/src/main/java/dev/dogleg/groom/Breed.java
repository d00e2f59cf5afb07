package dev.dogleg.groom;

import dev.dogleg.model.Coat;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.List;
import java.util.Objects;

/**
 * One row of the breed table.
 *
 * @param name name used in messages
 * @param species dog or cat
 * @param size usual size of a grown pet, and what else it could be
 * @param coat usual coat, and what else it could be
 * @param flatFaced whether heat is a danger sooner than to others
 * @param alsoCalled other names people use
 * @param provenance where the row comes from
 */
public record Breed(
    String name,
    Species species,
    Likely<SizeClass> size,
    Likely<Coat> coat,
    boolean flatFaced,
    List<String> alsoCalled,
    String provenance) {

  /** Checks that nothing is null. */
  public Breed {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(species, "species");
    Objects.requireNonNull(size, "size");
    Objects.requireNonNull(coat, "coat");
    Objects.requireNonNull(provenance, "provenance");
    alsoCalled = List.copyOf(alsoCalled);
  }
}
