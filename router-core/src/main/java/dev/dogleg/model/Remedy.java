package dev.dogleg.model;

import java.util.Locale;

/** What may be done where a week has not room for all agreed bookings. */
public enum Remedy {
  /** Overtime. */
  LONGER_DAY,
  /** Ask a client who may be asked. */
  ASK,
  /** Leave to the next week what is due after the run too. */
  NEXT_WEEK;

  /** {@return the words of the card} */
  public String words() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
