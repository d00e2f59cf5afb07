package dev.dogleg.groom.learn;

/**
 * How much the log is trusted. Spreads are standard deviations on the scale of logarithms; a
 * "pseudo" number says how many real ones the starting value counts as.
 *
 * @param halfLifeDays days after which a visit counts half, 1..100,000. Short: the last months
 *     decide and rare pets are forgotten; long: a pet that grew old stays as it was
 * @param paceSpread how far a groomer's pace may be from the card's before any visit is seen
 * @param serviceSpread how far services with coats differ from the tables, before any visit
 * @param breedSpread the same for breeds
 * @param petShare part of what the tables' spread of a new pet has on top that lies in the pet
 *     itself, 0..1; the rest lies in service and breed
 * @param daySpread spread that the grooms of a day share, before any visit
 * @param pseudoGroups how much the starting values for services and breeds count
 * @param pseudoPets how much the starting value for pets counts
 * @param pseudoVisits how much the starting value for single visits counts
 * @param pseudoDays how much the starting value for days counts
 * @param huber number of standard deviations beyond which a visit counts less (P. J. Huber 1964)
 * @param reject number of standard deviations, reckoned without the visit itself, beyond which it
 *     is left out and named
 */
public record LearnSettings(
    double halfLifeDays,
    double paceSpread,
    double serviceSpread,
    double breedSpread,
    double petShare,
    double daySpread,
    double pseudoGroups,
    double pseudoPets,
    double pseudoVisits,
    double pseudoDays,
    double huber,
    double reject) {

  /**
   * Planning estimates, chosen so that visits before the first have the tables' own spread; a pace
   * of 0.75 to 1.35 lies within two spreads of one. A half-life of a year keeps the last groom of a
   * pet that comes twice a year at two thirds or more.
   */
  public static final LearnSettings USUAL =
      new LearnSettings(365, 0.15, 0.08, 0.06, 0.75, 0.05, 10, 10, 10, 10, 2, 4.5);

  /** Checks the ranges. */
  public LearnSettings {
    if (!(halfLifeDays >= 1 && halfLifeDays <= 100_000)) {
      throw new IllegalArgumentException("halfLifeDays must lie in 1..100000");
    }
    double least = Math.min(Math.min(paceSpread, serviceSpread), Math.min(breedSpread, daySpread));
    if (!(least > 0 && petShare > 0 && petShare <= 1)) {
      throw new IllegalArgumentException("spreads and petShare must be over 0, petShare at most 1");
    }
    double pseudo =
        Math.min(Math.min(pseudoGroups, pseudoPets), Math.min(pseudoVisits, pseudoDays));
    if (!(pseudo >= 0 && huber >= 1 && reject > huber)) {
      throw new IllegalArgumentException("pseudo 0 or more, huber 1 or more, reject over huber");
    }
  }
}
