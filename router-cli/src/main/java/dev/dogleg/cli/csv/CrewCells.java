package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.Slug;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Van;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Cells that name a groomer or a van of the card. */
final class CrewCells {
  private CrewCells() {}

  static Optional<String> groomer(Cells cells, Context context) {
    return one(
        cells,
        Column.GROOMER,
        context.card().map(card -> card.business().groomers()).orElse(List.of()),
        Groomer::id,
        Groomer::name);
  }

  static Optional<String> van(Cells cells, Context context) {
    return one(
        cells,
        Column.VAN,
        context.card().map(card -> card.business().vans()).orElse(List.of()),
        Van::id,
        Van::name);
  }

  private static <T> Optional<String> one(
      Cells cells, Column column, List<T> among, Function<T, String> id, Function<T, String> name) {
    if (!cells.has(column) || among.isEmpty()) {
      return Optional.empty();
    }
    String seen = cells.text(column);
    Optional<String> found =
        among.stream()
            .filter(
                one ->
                    id.apply(one).equals(seen)
                        || Slug.fold(name.apply(one)).equals(Slug.fold(seen)))
            .map(id)
            .findFirst();
    if (found.isEmpty()) {
      cells.aside(
          "unknown-" + column.label(),
          column,
          "a " + column.label() + " of the card was expected",
          "in the card: " + among.stream().map(name).collect(Collectors.joining(", ")));
    }
    return found;
  }
}
