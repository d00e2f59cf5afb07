package dev.dogleg.groom;

import java.util.List;
import java.util.Objects;

/**
 * What was asked for: one service and any add-ons.
 *
 * @param service main service
 * @param addOns add-ons, in the order asked
 */
public record ServiceOrder(Service service, List<AddOn> addOns) {

  /** Copies the list. */
  public ServiceOrder {
    Objects.requireNonNull(service, "service");
    addOns = List.copyOf(addOns);
  }

  /** {@return the service and its add-ons, joined by {@code " + "}} */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(service.name());
    addOns.forEach(addOn -> text.append(" + ").append(addOn.name()));
    return text.toString();
  }
}
