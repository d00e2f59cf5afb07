package dev.dogleg.cli.prepare;

import dev.dogleg.cli.words.Nearness;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Zone;
import java.util.List;
import java.util.Optional;

/** Tells which zone a person means by a name. */
public final class ZoneName {
  private ZoneName() {}

  /**
   * The zone that is meant.
   *
   * @param typed as typed; case and accents do not matter
   * @param zones zones of the book; without any there is one, {@link ZoneDoors#EVERYWHERE}
   * @param faults takes a fault that stops, with the nearest name, where there is no such zone
   * @return its name, or empty
   */
  public static Optional<String> of(String typed, List<Zone> zones, Faults faults) {
    List<String> names =
        zones.isEmpty() ? List.of(ZoneDoors.EVERYWHERE) : zones.stream().map(Zone::name).toList();
    Optional<String> found =
        names.stream().filter(name -> Slug.fold(name).equals(Slug.fold(typed))).findFirst();
    if (found.isEmpty()) {
      faults.add(
          new Fault(
              "unknown-zone",
              Severity.STOP,
              Where.file("--zone"),
              typed,
              "a zone of the book was expected",
              Nearness.nearest(typed, names)
                  .map(near -> "did you mean " + near + "?")
                  .orElse("zones: " + String.join(", ", names))));
    }
    return found;
  }
}
