package dev.dogleg.roads;

/** The side of the road on which a country drives; it says which turn crosses oncoming traffic. */
public enum DrivingSide {
  /** Right-hand traffic: a left turn crosses oncoming traffic. */
  RIGHT,
  /** Left-hand traffic: a right turn crosses oncoming traffic. */
  LEFT
}
