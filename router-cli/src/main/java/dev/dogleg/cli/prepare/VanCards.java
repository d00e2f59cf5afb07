package dev.dogleg.cli.prepare;

import dev.dogleg.model.Business;
import dev.dogleg.model.Van;
import dev.dogleg.roads.DrivingSide;
import dev.dogleg.roads.VanCard;

/** What a van of the business card needs of a road. */
final class VanCards {
  private VanCards() {}

  /**
   * The card of a van.
   *
   * @param van the van
   * @param business whose van it is, for the driving side
   * @return the card; turn seconds as the starter has them
   */
  static VanCard of(Van van, Business business) {
    return new VanCard(
        van.heightCentimetres(),
        van.widthCentimetres(),
        van.lengthCentimetres(),
        van.weightKilograms(),
        van.topSpeedKmh(),
        VanCard.starter().turns(),
        business.drivesOnLeft() ? DrivingSide.LEFT : DrivingSide.RIGHT,
        van.ferries());
  }
}
