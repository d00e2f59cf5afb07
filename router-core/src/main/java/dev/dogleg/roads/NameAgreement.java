package dev.dogleg.roads;

/** How the name of the road under a place fits the street of its address. */
public enum NameAgreement {
  /** The same street, after folding case, accents, punctuation and common abbreviations. */
  AGREES,
  /** Another street: the place may stand on a corner, or the address may be wrong. */
  DIFFERS,
  /** The road has no name, as many driveways have none. */
  ROAD_UNNAMED,
  /** No street name was given to compare with. */
  NOT_ASKED
}
