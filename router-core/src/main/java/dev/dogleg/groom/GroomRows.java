package dev.dogleg.groom;

import java.util.List;

/**
 * Rows of the five groom tables; any list may be empty. Columns: {@code docs/formats-seeds.md}.
 *
 * @param groomTimes rows of {@code groom-times.csv}
 * @param addOns rows of {@code add-ons.csv}
 * @param breeds rows of {@code breeds.csv}
 * @param services rows of {@code services.csv}
 * @param words rows of {@code words.csv}
 */
public record GroomRows(
    List<TableRow> groomTimes,
    List<TableRow> addOns,
    List<TableRow> breeds,
    List<TableRow> services,
    List<TableRow> words) {

  /** Copies the lists. */
  public GroomRows {
    groomTimes = List.copyOf(groomTimes);
    addOns = List.copyOf(addOns);
    breeds = List.copyOf(breeds);
    services = List.copyOf(services);
    words = List.copyOf(words);
  }

  /** {@return whether there are no rows at all} */
  public boolean isEmpty() {
    return groomTimes.isEmpty()
        && addOns.isEmpty()
        && breeds.isEmpty()
        && services.isEmpty()
        && words.isEmpty();
  }
}
