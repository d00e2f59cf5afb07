package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.Slug;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.TableRow;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/** Names and hours of the traffic bands, by the wall clock. */
final class BandHours {
  private static final List<TableRow> ROWS = StarterTables.rows("traffic.csv");

  private BandHours() {}

  static List<String> names() {
    return ROWS.stream().map(row -> row.cell("band")).toList();
  }

  /** The band of a name, whatever its case and spaces. */
  static Optional<String> named(String name) {
    return names().stream().filter(band -> Slug.fold(band).equals(Slug.fold(name))).findFirst();
  }

  /** The band of a wall-clock second, 0 or more. */
  static String at(int seconds) {
    String found = ROWS.get(0).cell("band");
    for (TableRow row : ROWS) {
      if (LocalTime.parse(row.cell("from")).toSecondOfDay() <= seconds) {
        found = row.cell("band");
      }
    }
    return found;
  }
}
