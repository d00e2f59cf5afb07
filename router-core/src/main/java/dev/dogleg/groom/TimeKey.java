package dev.dogleg.groom;

import dev.dogleg.fault.Faults;
import dev.dogleg.model.Coat;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * For what a cell of the table of groom times holds.
 *
 * @param species dog or cat
 * @param service name of the service
 * @param size size, or empty for any
 * @param coat coat, or empty for any
 */
record TimeKey(Species species, String service, Optional<SizeClass> size, Optional<Coat> coat) {
  private static final String ANY = "any";

  /** From the narrowest row to the widest: the first that stands in the table holds. */
  static List<TimeKey> narrowestFirst(Species species, String service, SizeClass size, Coat coat) {
    return List.of(
        new TimeKey(species, service, Optional.of(size), Optional.of(coat)),
        new TimeKey(species, service, Optional.of(size), Optional.empty()),
        new TimeKey(species, service, Optional.empty(), Optional.of(coat)),
        new TimeKey(species, service, Optional.empty(), Optional.empty()));
  }

  /** Reads one row of groom-times.csv into the map, or says what is wrong with it. */
  static void read(TableRow row, Map<TimeKey, TimeCell> into, Faults faults) {
    Cells cells = new Cells(row, faults);
    Species species = cells.word("species", Species.class);
    String service = cells.needed("service");
    Optional<SizeClass> size =
        cells.text("size").equalsIgnoreCase(ANY)
            ? Optional.empty()
            : Optional.of(cells.word("size", SizeClass.class));
    Optional<Coat> coat =
        cells.text("coat").equalsIgnoreCase(ANY)
            ? Optional.empty()
            : Optional.of(cells.word("coat", Coat.class));
    TimeCell cell =
        new TimeCell(
            cells.whole("minutes", 1, 600),
            cells.share("spread_new", 0.01, 1.5),
            cells.share("spread_known", 0.01, 1.5),
            cells.needed("provenance"));
    if (cells.sound()) {
      into.put(new TimeKey(species, service, size, coat), cell);
    }
  }

  // Written out: what a record brings along spins classes at its first call, anew in each start.

  @Override
  public boolean equals(Object other) {
    return other instanceof TimeKey key
        && species == key.species
        && service.equals(key.service)
        && size.equals(key.size)
        && coat.equals(key.coat);
  }

  @Override
  public int hashCode() {
    return Objects.hash(species, service, size, coat);
  }
}
