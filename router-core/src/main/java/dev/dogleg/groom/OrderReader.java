package dev.dogleg.groom;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Species;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Reads what was asked for: the whole text as a service, else as parts joined by +, comma, and. */
final class OrderReader {
  private static final Pattern JOINTS =
      Pattern.compile("[+,;/&]|\\b(and|with|plus)\\b", Pattern.CASE_INSENSITIVE);

  private final NameIndex<Service> services;
  private final NameIndex<AddOn> addOns;

  OrderReader(Collection<Service> services, Collection<AddOn> addOns) {
    this.services = new NameIndex<>(services, Service::name, Service::alsoCalled);
    this.addOns = new NameIndex<>(addOns, AddOn::name, AddOn::alsoCalled);
  }

  Match<Service> service(String text) {
    return services.find(text);
  }

  Match<AddOn> addOn(String text) {
    return addOns.find(text);
  }

  Optional<ServiceOrder> read(Species species, String text, Where where, Faults faults) {
    Optional<Service> whole = services.sure(text);
    if (whole.isPresent()) {
      return offered(new ServiceOrder(whole.get(), List.of()), species, text, where, faults);
    }
    List<String> parts =
        Arrays.stream(JOINTS.split(text)).map(String::strip).filter(p -> !p.isEmpty()).toList();
    Service main = null;
    List<AddOn> extras = new ArrayList<>();
    List<String> unread = new ArrayList<>();
    for (String part : parts) {
      Optional<Service> service = services.sure(part);
      Optional<AddOn> extra = addOns.sure(part);
      if (main == null && service.isPresent()) {
        main = service.get();
      } else if (extra.isPresent()) {
        extras.add(extra.get());
      } else {
        unread.add(part);
      }
    }
    if (main != null && unread.isEmpty()) {
      return offered(new ServiceOrder(main, extras), species, text, where, faults);
    }
    Match<Service> near = services.find(text);
    if (near.value().isPresent()) {
      Service taken = near.value().get();
      faults.add(
          new Fault(
              "near-service",
              Severity.LOOK,
              where,
              text,
              "a service; taken as " + taken.name(),
              "mend the spelling if that is right"));
      return offered(new ServiceOrder(taken, List.of()), species, text, where, faults);
    }
    faults.add(unknown(text, unread, where));
    return Optional.empty();
  }

  private Fault unknown(String text, List<String> unread, Where where) {
    List<String> nearest = new ArrayList<>();
    for (String part : unread.isEmpty() ? List.of(text) : unread) {
      nearest.addAll(services.find(part).nearest());
      nearest.addAll(addOns.find(part).nearest());
    }
    String hint =
        nearest.isEmpty()
            ? "services: " + String.join(", ", services.names())
            : "nearest: " + String.join(", ", nearest.stream().distinct().limit(3).toList());
    return new Fault(
        "unknown-service",
        Severity.ASIDE,
        where,
        text,
        unread.isEmpty() || unread.equals(List.of(text))
            ? "a known service"
            : "one known service and add-ons; not understood: " + String.join(", ", unread),
        hint);
  }

  private Optional<ServiceOrder> offered(
      ServiceOrder order, Species species, String text, Where where, Faults faults) {
    if (order.service().species().contains(species)) {
      return Optional.of(order);
    }
    faults.add(
        new Fault(
            "service-not-for-species",
            Severity.ASIDE,
            where,
            text,
            "a service for a " + species.name().toLowerCase(Locale.ROOT),
            order.service().name() + " is not done for it in services.csv, column for"));
    return Optional.empty();
  }
}
