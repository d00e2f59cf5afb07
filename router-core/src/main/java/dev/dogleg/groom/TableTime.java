package dev.dogleg.groom;

/**
 * What the tables alone say of one groom, modifiers and add-ons included, without anybody's pace.
 *
 * @param minutes median, over 0
 * @param spreadKnown standard deviation of the logarithm for a known pet
 * @param spreadNew the same for a new pet, without what is guessed
 * @param guessVariance variance of the logarithm because size or coat are guessed
 */
public record TableTime(
    double minutes, double spreadKnown, double spreadNew, double guessVariance) {

  /** {@return variance of the logarithm that a new pet has on top of a known one, 0 or more} */
  public double newPetVariance() {
    return Math.max(0, spreadNew * spreadNew - spreadKnown * spreadKnown);
  }
}
