package dev.dogleg.cli.terms;

import dev.dogleg.cli.terms.StopTagger.TaggedPet;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.TableRow;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Litres of a bath by service, size and coat: {@code seeds/water.csv}; the narrowest row holds. */
final class WaterLitres {
  private static final String ANY = "any";

  private final Map<String, Integer> litres = new HashMap<>();

  private WaterLitres() {}

  static WaterLitres starter() {
    WaterLitres table = new WaterLitres();
    for (TableRow row : StarterTables.rows("water.csv")) {
      Map<String, String> cells = row.cells();
      table.litres.put(
          key(cells.get("service"), cells.get("size"), cells.get("coat")),
          Integer.parseInt(cells.get("litres")));
    }
    return table;
  }

  /** Litres of a pet: its own, else the table's for its main service, size and coat. */
  int of(TaggedPet tagged) {
    if (tagged.pet().litres().isPresent()) {
      return tagged.pet().litres().getAsInt();
    }
    String service = PetTags.services(tagged.booked(), tagged.pet()).get(0);
    String size = tagged.look().size().taken().name();
    String coat = tagged.look().coat().taken().name();
    for (String one : List.of(service, ANY)) {
      for (String[] rest :
          List.of(
              new String[] {size, coat},
              new String[] {size, ANY},
              new String[] {ANY, coat},
              new String[] {ANY, ANY})) {
        Integer found = litres.get(key(one, rest[0], rest[1]));
        if (found != null) {
          return found;
        }
      }
    }
    throw new IllegalStateException("water.csv has no row for " + service + ", " + size);
  }

  private static String key(String service, String size, String coat) {
    return service + "/" + size + "/" + coat;
  }
}
