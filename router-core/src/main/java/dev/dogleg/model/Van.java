package dev.dogleg.model;

import java.util.List;
import java.util.Objects;
import java.util.OptionalInt;

/**
 * A van, apart from who drives it.
 *
 * @param id unique in a card
 * @param name as called
 * @param heightCentimetres with everything on the roof, 100..500
 * @param widthCentimetres with mirrors, 100..300
 * @param lengthCentimetres 200..2,000
 * @param weightKilograms permitted gross weight, 500..40,000
 * @param topSpeedKmh fastest it is ever driven, 30..130
 * @param ferries whether ferries may be used
 * @param freshLitres fresh-water tank, 0..2,000, or empty: water is not planned
 * @param greyLitres grey-water tank, 0..2,000, or empty
 * @param lift whether it has a lift or ramp table
 * @param tags what rules may ask of the van
 */
public record Van(
    String id,
    String name,
    int heightCentimetres,
    int widthCentimetres,
    int lengthCentimetres,
    int weightKilograms,
    int topSpeedKmh,
    boolean ferries,
    OptionalInt freshLitres,
    OptionalInt greyLitres,
    boolean lift,
    List<Tag> tags) {

  /** Checks the ranges. */
  public Van {
    tags = List.copyOf(tags);
    Ids.checked(id);
    Objects.requireNonNull(name, "name");
    check("heightCentimetres", heightCentimetres, 100, 500);
    check("widthCentimetres", widthCentimetres, 100, 300);
    check("lengthCentimetres", lengthCentimetres, 200, 2_000);
    check("weightKilograms", weightKilograms, 500, 40_000);
    check("topSpeedKmh", topSpeedKmh, 30, 130);
    freshLitres.ifPresent(litres -> check("freshLitres", litres, 0, 2_000));
    greyLitres.ifPresent(litres -> check("greyLitres", litres, 0, 2_000));
  }

  /**
   * A van without tags.
   *
   * @param id see the record
   * @param name see the record
   * @param heightCentimetres see the record
   * @param widthCentimetres see the record
   * @param lengthCentimetres see the record
   * @param weightKilograms see the record
   * @param topSpeedKmh see the record
   * @param ferries see the record
   * @param freshLitres see the record
   * @param greyLitres see the record
   * @param lift see the record
   */
  public Van(
      String id,
      String name,
      int heightCentimetres,
      int widthCentimetres,
      int lengthCentimetres,
      int weightKilograms,
      int topSpeedKmh,
      boolean ferries,
      OptionalInt freshLitres,
      OptionalInt greyLitres,
      boolean lift) {
    this(
        id,
        name,
        heightCentimetres,
        widthCentimetres,
        lengthCentimetres,
        weightKilograms,
        topSpeedKmh,
        ferries,
        freshLitres,
        greyLitres,
        lift,
        List.of());
  }

  private static void check(String name, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + " must lie in " + least + ".." + most + ", was " + value);
    }
  }
}
