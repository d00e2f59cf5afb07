package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.MapBounds;
import dev.dogleg.groom.GroomTables;
import java.nio.file.Path;
import java.util.Objects;
import java.util.Optional;

/**
 * How a book is to be read.
 *
 * @param tables starter tables; they know breeds, services and the words for them. A book's own
 *     tables are laid over them
 * @param business the card where a bookings file is read alone ({@code --business}); in a book
 *     folder it takes the place of {@code business.yaml}; empty otherwise
 * @param bounds box of the map, so that swapped latitude and longitude are seen; empty where not
 *     known yet
 * @param strict whether a row that would be set aside stops the run ({@code --strict})
 */
public record ReadOptions(
    GroomTables tables, Optional<Path> business, Optional<MapBounds> bounds, boolean strict) {

  /** Checks that nothing is null. */
  public ReadOptions {
    Objects.requireNonNull(tables, "tables");
    Objects.requireNonNull(business, "business");
    Objects.requireNonNull(bounds, "bounds");
  }

  /**
   * Options with defaults.
   *
   * @param tables starter tables
   * @return no card of its own, no bounds, not strict
   */
  public static ReadOptions of(GroomTables tables) {
    return new ReadOptions(tables, Optional.empty(), Optional.empty(), false);
  }
}
