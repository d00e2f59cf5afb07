package dev.dogleg.model;

import java.util.Objects;
import java.util.OptionalInt;

/**
 * A van, apart from who drives it.
 *
 * @param id unique in a card
 * @param name as called
 * @param heightCentimetres 100..450
 * @param widthCentimetres 100..300, without mirrors
 * @param lengthCentimetres 200..1,500
 * @param weightKilograms laden, 500..20,000
 * @param freshLitres fresh-water tank, 0..2,000, or empty: water is not planned
 * @param greyLitres grey-water tank, 0..2,000, or empty
 * @param lift whether it has a lift or ramp table
 */
public record Van(
    String id,
    String name,
    int heightCentimetres,
    int widthCentimetres,
    int lengthCentimetres,
    int weightKilograms,
    OptionalInt freshLitres,
    OptionalInt greyLitres,
    boolean lift) {

  /** Checks the ranges. */
  public Van {
    Ids.checked(id);
    Objects.requireNonNull(name, "name");
    check("heightCentimetres", heightCentimetres, 100, 450);
    check("widthCentimetres", widthCentimetres, 100, 300);
    check("lengthCentimetres", lengthCentimetres, 200, 1_500);
    check("weightKilograms", weightKilograms, 500, 20_000);
    freshLitres.ifPresent(litres -> check("freshLitres", litres, 0, 2_000));
    greyLitres.ifPresent(litres -> check("greyLitres", litres, 0, 2_000));
  }

  private static void check(String name, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + " must lie in " + least + ".." + most + ", was " + value);
    }
  }
}
