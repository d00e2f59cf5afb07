package dev.dogleg.groom;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Coat;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Checks that every groom that may be asked for has its minutes, and drops what has not. */
final class Completeness {
  private Completeness() {}

  static void check(TableReader reader, Faults faults) {
    for (Service service : List.copyOf(reader.services.values())) {
      List<String> missing = gaps(reader.times, service);
      if (!missing.isEmpty()) {
        reader.services.remove(service.name());
        faults.add(
            new Fault(
                "service-without-minutes",
                Severity.LOOK,
                Where.file("groom-times.csv"),
                service.name(),
                "a row for " + String.join("; ", missing),
                "a row with size any and coat any serves for all; the service is left out"));
      }
    }
    for (Modifier modifier : Modifier.values()) {
      if (!reader.addOns.containsKey(TableReader.key(AddOnKind.MODIFIER, modifier.rowName()))) {
        faults.add(
            new Fault(
                "missing-row",
                Severity.LOOK,
                Where.file("add-ons.csv"),
                "",
                "a modifier " + modifier.rowName(),
                "0 minutes say that it adds nothing"));
      }
    }
    for (Species species : Species.values()) {
      boolean known =
          reader.breeds.values().stream()
              .anyMatch(
                  breed ->
                      breed.species() == species && breed.alsoCalled().contains(PetReader.UNKNOWN));
      if (!known) {
        throw new IllegalArgumentException(
            "the breed table needs a " + species + " that is also called " + PetReader.UNKNOWN);
      }
    }
  }

  static Optional<TimeCell> cell(
      Map<TimeKey, TimeCell> times, Species species, String service, SizeClass size, Coat coat) {
    return TimeKey.narrowestFirst(species, service, size, coat).stream()
        .map(times::get)
        .filter(java.util.Objects::nonNull)
        .findFirst();
  }

  private static List<String> gaps(Map<TimeKey, TimeCell> times, Service service) {
    List<String> missing = new ArrayList<>();
    for (Species species : service.species()) {
      for (SizeClass size : SizeClass.values()) {
        for (Coat coat : Coat.values()) {
          if (cell(times, species, service.name(), size, coat).isEmpty() && missing.size() < 3) {
            missing.add(species + " " + size + " " + coat);
          }
        }
      }
    }
    return missing;
  }
}
