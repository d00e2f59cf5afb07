package dev.dogleg.groom;

import java.util.Locale;

/** What a row of learned values speaks of. */
public enum LearnedKind {
  /** A groomer's pace: own minutes for one minute of the tables; takes the place of the card's. */
  PACE,
  /** Grooms of one service and coat: a factor on the minutes. */
  SERVICE,
  /** Grooms of one breed: a factor on the minutes. */
  BREED,
  /** Grooms of one pet: a factor on the minutes, with its own uncertainty as spread. */
  PET,
  /** Visits of known pets: a factor on the tables' spread of a known pet. */
  SPREAD_KNOWN,
  /** Visits of new pets: a factor on what the tables' spread of a new pet has on top. */
  SPREAD_NEW,
  /** Days: the spread that all grooms of a day share. */
  DAY,
  /** Drives of a traffic band, or of a band and road class: a factor on the planned minutes. */
  DRIVE,
  /** Days: the spread that all drives of a day share. */
  DRIVE_DAY,
  /** Drives: the spread of one by itself. */
  DRIVE_LEG;

  /** {@return the word used in the table, for example {@code spread-known}} */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
