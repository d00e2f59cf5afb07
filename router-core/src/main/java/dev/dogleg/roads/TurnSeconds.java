package dev.dogleg.roads;

/**
 * Seconds that a turn at a junction adds to the drive. Junctions join three or more drivable
 * stretches; a bend of one road costs nothing.
 *
 * <p>The starter values are a judgement, no source: they stand for slowing down, looking and
 * waiting, without traffic lights. Set all to 0 and the shortest path zigzags through side streets;
 * set the crossing turn to a minute and the van drives round blocks to avoid it.
 *
 * @param nearSide turn away from oncoming traffic (right in right-hand traffic), 30 to 120 degrees
 * @param crossing turn across oncoming traffic, 30 to 120 degrees
 * @param sharp either side, more than 120 degrees
 * @param uTurn turning round on the same road, also at a dead end
 */
public record TurnSeconds(int nearSide, int crossing, int sharp, int uTurn) {

  /** Least change of direction that counts as a turn, in degrees. */
  public static final int TURN_FROM_DEGREES = 30;

  /** Change of direction beyond which a turn is sharp, in degrees. */
  public static final int SHARP_FROM_DEGREES = 120;

  /** Checks that each lies in 0..600 seconds. */
  public TurnSeconds {
    for (int seconds : new int[] {nearSide, crossing, sharp, uTurn}) {
      if (seconds < 0 || seconds > 600) {
        throw new IllegalArgumentException("turn seconds must lie in 0..600, was " + seconds);
      }
    }
  }

  /** {@return the starter values: 3, 6, 8 and 40 seconds} */
  public static TurnSeconds starter() {
    return new TurnSeconds(3, 6, 8, 40);
  }

  /** {@return name and value of each, as they stand in the key of a road cache} */
  @Override
  public String toString() {
    return "TurnSeconds[nearSide="
        + nearSide
        + ", crossing="
        + crossing
        + ", sharp="
        + sharp
        + ", uTurn="
        + uTurn
        + "]";
  }
}
