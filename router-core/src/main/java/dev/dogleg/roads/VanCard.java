package dev.dogleg.roads;

import java.util.Objects;

/**
 * What a van needs of a road. Size and weight are hard limits against {@code maxheight}, {@code
 * maxwidth}, {@code maxlength} and {@code maxweight}; a van exactly as high as the sign passes.
 *
 * @param heightCm height with everything on the roof, 100..500 centimetres
 * @param widthCm width with mirrors, 100..300 centimetres
 * @param lengthCm length, 200..2000 centimetres
 * @param weightKg permitted gross weight, 500..40,000 kilograms
 * @param topSpeedKmh fastest it is ever driven, 30..130 kilometres an hour
 * @param turns seconds that turns add
 * @param drivingSide side of the road on which the country drives
 * @param ferries whether ferries may be used; their time is the crossing without the wait
 */
public record VanCard(
    int heightCm,
    int widthCm,
    int lengthCm,
    int weightKg,
    int topSpeedKmh,
    TurnSeconds turns,
    DrivingSide drivingSide,
    boolean ferries) {

  /** Checks the ranges. */
  public VanCard {
    check("height in cm", heightCm, 100, 500);
    check("width in cm", widthCm, 100, 300);
    check("length in cm", lengthCm, 200, 2000);
    check("weight in kg", weightKg, 500, 40_000);
    check("top speed in km/h", topSpeedKmh, 30, 130);
    Objects.requireNonNull(turns, "turns");
    Objects.requireNonNull(drivingSide, "drivingSide");
  }

  private static void check(String what, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          what + " must lie in " + least + ".." + most + ", was " + value);
    }
  }

  /**
   * A high-roof van of the common 3.5 tonne class: 280 cm high, 225 cm wide with mirrors, 600 cm
   * long, 3,500 kg, 110 km/h, right-hand traffic, no ferries (common practice, no source).
   *
   * @return the starter card
   */
  public static VanCard starter() {
    return new VanCard(280, 225, 600, 3500, 110, TurnSeconds.starter(), DrivingSide.RIGHT, false);
  }

  /**
   * The same van with other measures.
   *
   * @param height centimetres
   * @param width centimetres
   * @param length centimetres
   * @param weight kilograms
   * @return the card
   */
  public VanCard withSize(int height, int width, int length, int weight) {
    return new VanCard(height, width, length, weight, topSpeedKmh, turns, drivingSide, ferries);
  }

  // Written out: what a record brings along spins classes at its first call, anew in each start.

  /** {@return name and value of each, as they stand in the key of a road cache} */
  @Override
  public String toString() {
    return "VanCard[heightCm="
        + heightCm
        + ", widthCm="
        + widthCm
        + ", lengthCm="
        + lengthCm
        + ", weightKg="
        + weightKg
        + ", topSpeedKmh="
        + topSpeedKmh
        + ", turns="
        + turns
        + ", drivingSide="
        + drivingSide
        + ", ferries="
        + ferries
        + "]";
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof VanCard card && toString().equals(card.toString());
  }

  @Override
  public int hashCode() {
    return toString().hashCode();
  }
}
