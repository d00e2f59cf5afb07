package dev.dogleg.model;

import java.util.Objects;
import java.util.Optional;

/**
 * A door as its owner named it: an address, a pin, or both (the pin wins).
 *
 * @param address as typed, may be empty where there is a pin
 * @param pin point pasted by hand or taken from a corrections file
 */
public record Place(String address, Optional<GeoPoint> pin) {
  /** Checks that it names something. */
  public Place {
    Objects.requireNonNull(address, "address");
    Objects.requireNonNull(pin, "pin");
    if (address.isBlank() && pin.isEmpty()) {
      throw new IllegalArgumentException("a place needs an address or a pin");
    }
  }

  // Written out: what a record brings along spins classes at its first call, anew in each start.

  @Override
  public boolean equals(Object other) {
    return other instanceof Place place && address.equals(place.address) && pin.equals(place.pin);
  }

  @Override
  public int hashCode() {
    return 31 * address.hashCode() + pin.hashCode();
  }
}
