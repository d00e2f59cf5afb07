package dev.dogleg.model;

/** Where a booking stands. */
public enum BookingStatus {
  /** Agreed: leaving it out comes before any saving. */
  BOOKED,
  /** On the waiting list: served where there is room. */
  WAITING,
  /** Called off. */
  CANCELLED,
  /** Already done. */
  DONE;

  /** {@return whether the booking is still to be planned} */
  public boolean open() {
    return this == BOOKED || this == WAITING;
  }
}
