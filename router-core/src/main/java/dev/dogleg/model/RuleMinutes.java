package dev.dogleg.model;

/**
 * Minutes that a rule adds.
 *
 * @param timesThousandths factor of the stop's seconds, 0..10,000 thousandths
 * @param plusSeconds added after the factor, -43,200..43,200
 * @param fromPlace first place in the day it speaks of, counted from 1
 * @param toPlace last place; {@link #NO_END} for every later one
 */
public record RuleMinutes(int timesThousandths, int plusSeconds, int fromPlace, int toPlace) {
  /** No last place. */
  public static final int NO_END = 1_000;

  /** Nothing added. */
  public static final RuleMinutes NONE = new RuleMinutes(1_000, 0, 1, NO_END);

  /** Checks the ranges. */
  public RuleMinutes {
    if (timesThousandths < 0
        || timesThousandths > 10_000
        || Math.abs(plusSeconds) > 43_200
        || fromPlace < 1
        || toPlace < fromPlace
        || toPlace > NO_END) {
      throw new IllegalArgumentException("minutes of a rule out of range");
    }
  }

  /** {@return whether every place in the day is meant} */
  public boolean everyPlace() {
    return fromPlace == 1 && toPlace == NO_END;
  }
}
