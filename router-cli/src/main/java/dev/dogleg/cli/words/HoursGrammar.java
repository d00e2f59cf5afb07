package dev.dogleg.cli.words;

import dev.dogleg.model.WallSpan;
import dev.dogleg.model.When;
import dev.dogleg.model.WhenChoice;
import java.util.Optional;

/** Reads hours of a card: {@code 8:00-18:00}. */
public final class HoursGrammar {
  /** Where hours without am and pm are looked for: 5:00 to 22:00. */
  private static final WallSpan WAKING = new WallSpan(18_000, 79_200);

  private HoursGrammar() {}

  /**
   * Reads a cell.
   *
   * @param cell its text
   * @return a span with both ends; code {@code bad-hours}
   */
  public static Reading<WallSpan> read(String cell) {
    Reading<When> read = WhenGrammar.read(cell, WAKING);
    Optional<WallSpan> span =
        read.value()
            .filter(when -> when.choices().size() == 1)
            .map(when -> when.choices().get(0))
            .filter(choice -> choice.days().isEmpty() && !choice.first())
            .map(WhenChoice::arriveWithin)
            .filter(hours -> hours.toSeconds() != WallSpan.OPEN)
            .filter(hours -> hours.fromSeconds() < hours.toSeconds());
    return span.isPresent()
        ? new Reading<>(span, read.remarks())
        : Reading.none(
            Remark.aside("bad-hours", "hours like 8:00-18:00 were expected", "24-hour clock"));
  }
}
