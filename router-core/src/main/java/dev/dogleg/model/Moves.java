package dev.dogleg.model;

/** Whether an agreed booking may be moved to another day of the run. */
public enum Moves {
  /** It stays on its date or in its span. */
  NEVER,
  /** The client may be asked, at the card's price of an ask. */
  ASK,
  /** The client does not mind: any day costs no more than a change. */
  ANY_TIME
}
