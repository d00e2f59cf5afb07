package dev.dogleg.sampletown.draw;

/** How the houses of a street are numbered. */
public enum HouseStyle {
  /** No houses. */
  NONE,
  /** Odd on the left, even on the right, counted on from the start of the street. */
  COUNTED,
  /** As counted, but far apart, as on a country road. */
  SCATTERED,
  /** As counted, but each crossing begins a new hundred. */
  HUNDREDS,
  /** Number of the crossing, hyphen, number of the house. */
  HYPHENED,
  /** Only the first and last house between crossings, and a line between them. */
  INTERPOLATED
}
