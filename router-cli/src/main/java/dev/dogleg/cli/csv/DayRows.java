package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.DateGrammar;
import dev.dogleg.cli.words.HoursGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.TagGrammar;
import dev.dogleg.cli.words.YesNo;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.DayEntry;
import dev.dogleg.model.Place;
import dev.dogleg.model.Tag;
import dev.dogleg.model.WallSpan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Makes special days of the rows of {@code days.csv}. */
final class DayRows {
  private DayRows() {}

  static List<DayEntry> read(List<Cells> rows, Context context) {
    List<DayEntry> days = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    for (Cells cells : rows) {
      for (DayEntry entry : entries(cells, context)) {
        if (seen.add(entry.date() + " " + entry.groomerId().orElse(""))) {
          days.add(entry);
        } else {
          cells.aside(
              "duplicate-row",
              Column.DATE,
              entry.date() + " stands in an earlier row already",
              "put both into one row");
          break;
        }
      }
    }
    return days;
  }

  /** One entry a day of the row's date or span. */
  private static List<DayEntry> entries(Cells cells, Context context) {
    if (!cells.has(Column.DATE)) {
      cells.aside("missing-cell", Column.DATE, "a date was expected", "2027-03-02");
      return List.of();
    }
    Optional<DateSpan> span =
        cells.read(Column.DATE, text -> DateGrammar.read(text, context.dateOrder()));
    Optional<String> groomer = CrewCells.groomer(cells, context);
    boolean off = cells.read(Column.OFF, DayRows::yes).orElse(false);
    Optional<WallSpan> hours = cells.read(Column.HOURS, HoursGrammar::read);
    List<Tag> tags =
        cells
            .readOrLook(Column.TAGS, text -> TagGrammar.read(text, context.dateOrder()))
            .orElse(List.of());
    Optional<Place> start = place(cells, Column.START, context);
    Optional<Place> end = place(cells, Column.END, context);
    if (off && (cells.has(Column.HOURS) || cells.has(Column.HELPER))) {
      cells.aside("two-values", Column.OFF, "hours or off was expected, not both", "");
    }
    if (cells.bad() || span.isEmpty()) {
      return List.of();
    }
    Optional<String> helper =
        Optional.of(cells.text(Column.HELPER)).filter(text -> !text.isEmpty() && !isNo(text));
    List<DayEntry> entries = new ArrayList<>();
    for (LocalDate date : span.get().from().datesUntil(span.get().to().plusDays(1)).toList()) {
      entries.add(new DayEntry(date, groomer, hours, start, end, helper, off, tags));
    }
    return entries;
  }

  private static Optional<Place> place(Cells cells, Column column, Context context) {
    return cells.has(column) ? Optional.of(context.placed(cells.text(column))) : Optional.empty();
  }

  private static boolean isNo(String text) {
    return Set.of("no", "none", "nobody", "-").contains(text.toLowerCase(Locale.ROOT));
  }

  private static Reading<Boolean> yes(String text) {
    return text.equalsIgnoreCase("off") ? Reading.of(true) : YesNo.read(text);
  }
}
