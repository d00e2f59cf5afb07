package dev.dogleg.cli.export;

import dev.dogleg.fault.Fault;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;

/**
 * A row of the book that is left out of the run because it is at fault.
 *
 * @param fault what is wrong with it
 * @param cells the row as it stands in its file, the person's own columns included, by column name
 *     in the file's order; empty where the row itself could not be read
 */
public record SetAside(Fault fault, Map<String, String> cells) {
  /** Checks that nothing is null. */
  public SetAside {
    Objects.requireNonNull(fault, "fault");
    cells = java.util.Collections.unmodifiableMap(new LinkedHashMap<>(cells));
  }
}
