package dev.dogleg.cli.words;

/** In which order a card's dates are written where they are not written year first. */
public enum DateOrder {
  /** Year first only; what reads both ways is refused. */
  ISO,
  /** {@code 02/03/2027} is the second of March. */
  DAY_FIRST,
  /** {@code 02/03/2027} is the third of February. */
  MONTH_FIRST
}
