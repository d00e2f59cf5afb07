package dev.dogleg.groom.learn;

import java.util.Map;

/**
 * What is true in a made-up log; spreads are standard deviations on the scale of logarithms.
 *
 * @param pace the groomer's minutes for one minute of the tables
 * @param serviceSpread how far services with coats differ from the tables
 * @param breedSpread how far breeds do
 * @param petSpread how far pets do
 * @param daySpread what the grooms of a day share
 * @param visitScale noise of one visit in units of the tables' spread of a known pet
 * @param bandFactor driven over planned seconds by traffic band
 * @param driveSpread noise of one drive
 */
public record Truth(
    double pace,
    double serviceSpread,
    double breedSpread,
    double petSpread,
    double daySpread,
    double visitScale,
    Map<String, Double> bandFactor,
    double driveSpread) {

  /** A slow groomer whose pets differ as the trade's tables suppose. */
  public static final Truth PLAIN =
      new Truth(
          1.12,
          0.08,
          0.06,
          0.20,
          0.05,
          0.95,
          Map.of("morning peak", 1.20, "midday", 1.00, "afternoon peak", 0.90),
          0.12);

  /** A fast groomer, pets that differ much, steady visits, uneven days. */
  public static final Truth STEADY =
      new Truth(0.88, 0.05, 0.03, 0.30, 0.10, 0.70, Map.of("midday", 1.05), 0.10);

  /** The tables are right on the whole and visits are wild. */
  public static final Truth WILD =
      new Truth(1.00, 0.10, 0.10, 0.15, 0.03, 1.40, Map.of("midday", 1.00), 0.20);
}
