package dev.dogleg.cli.prepare;

import dev.dogleg.fault.Where;

/**
 * Where a door stands in the book: a fault points there, and says where its pin may be put.
 *
 * @param address the address
 * @param pin the pin
 * @param pinAdvice how to give a pin there
 */
record DoorSource(Where address, Where pin, String pinAdvice) {

  /** The door of a client. */
  static DoorSource client(Where row) {
    return new DoorSource(row.at("address"), row.at("pin"), "paste lat,lon into the column pin");
  }

  /** The home of a groomer: a key of the card, beside which stands that of the pin. */
  static DoorSource home(Where key) {
    return new DoorSource(
        key, key.at(key.column() + "_pin"), "write home_pin: lat,lon under home in the card");
  }

  /** Where the door comes from: a pin wins. */
  Where cell(boolean pinned) {
    return pinned ? pin : address;
  }

  // Written out: what a record brings along spins classes at its first call, anew in each start.

  @Override
  public boolean equals(Object other) {
    return other instanceof DoorSource source
        && address.equals(source.address)
        && pin.equals(source.pin)
        && pinAdvice.equals(source.pinAdvice);
  }

  @Override
  public int hashCode() {
    return 31 * (31 * address.hashCode() + pin.hashCode()) + pinAdvice.hashCode();
  }
}
