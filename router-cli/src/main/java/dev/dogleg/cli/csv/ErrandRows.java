package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.DateGrammar;
import dev.dogleg.cli.words.MinutesGrammar;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.cli.words.WhenGrammar;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.Errand;
import dev.dogleg.model.When;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes errands of the rows of {@code errands.csv}. */
final class ErrandRows {
  private static final int MOST_MINUTES = 720;
  private static final int USUAL_MINUTES = 15;

  private ErrandRows() {}

  static List<Errand> read(List<Cells> rows, Context context, Set<String> taken, Sources sources) {
    List<Errand> errands = new ArrayList<>();
    Set<String> ids = new HashSet<>(taken);
    for (Cells cells : rows) {
      Optional<Errand> errand = errand(cells, context);
      if (errand.isPresent() && !ids.add(errand.get().id())) {
        cells.aside(
            "duplicate-row",
            Column.ERRAND,
            "this errand stands in an earlier row for the same date",
            "give it another name");
      } else {
        errand.ifPresent(
            found -> {
              errands.add(found);
              sources.errand(found.id(), cells.row());
            });
      }
    }
    return errands;
  }

  private static Optional<Errand> errand(Cells cells, Context context) {
    for (Column needed : List.of(Column.ERRAND, Column.DATE, Column.ADDRESS)) {
      if (!cells.has(needed)) {
        cells.aside("missing-cell", needed, "a cell " + needed.label() + " was expected", "");
        return Optional.empty();
      }
    }
    Optional<DateSpan> dates =
        cells.read(Column.DATE, text -> DateGrammar.read(text, context.dateOrder()));
    Optional<When> when =
        cells.read(Column.WHEN, text -> WhenGrammar.read(text, context.usualHours()));
    int minutes =
        cells
            .read(Column.MINUTES, text -> MinutesGrammar.read(text, 1, MOST_MINUTES))
            .orElse(USUAL_MINUTES);
    Optional<String> groomer = CrewCells.groomer(cells, context);
    if (cells.bad() || dates.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        new Errand(
            "errand." + Slug.of(cells.text(Column.ERRAND)) + "@" + dates.get(),
            cells.text(Column.ERRAND),
            dates.get(),
            when.orElse(When.ANY),
            60 * minutes,
            context.placed(cells.text(Column.ADDRESS)),
            groomer,
            cells.text(Column.NOTE)));
  }
}
