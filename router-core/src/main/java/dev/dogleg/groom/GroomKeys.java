package dev.dogleg.groom;

import java.util.Objects;

/**
 * Whose groom it is, so that what was learned of the two is found.
 *
 * @param petId id of the pet, empty where it is none of a book
 * @param groomerId id of the groomer, empty where nobody in particular is meant
 */
public record GroomKeys(String petId, String groomerId) {

  /** No pet and no groomer of a book. */
  public static final GroomKeys NONE = new GroomKeys("", "");

  /** Checks that nothing is null. */
  public GroomKeys {
    Objects.requireNonNull(petId, "petId");
    Objects.requireNonNull(groomerId, "groomerId");
  }
}
