package dev.dogleg.groom.learn;

import dev.dogleg.groom.LearnedKind;
import dev.dogleg.groom.LearnedRow;
import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;

/** Makes rows of what was fitted, inside their ranges. */
final class LearnedRows {
  private LearnedRows() {}

  /**
   * A row.
   *
   * @param logFactor logarithm of the factor
   * @param variance square of the spread
   */
  static LearnedRow row(
      LearnedKind kind,
      String what,
      double logFactor,
      double variance,
      int visits,
      Optional<LocalDate> last,
      String note) {
    long factor = Math.round(1000 * StrictMath.exp(logFactor));
    long spread = Math.round(1000 * StrictMath.sqrt(variance));
    return new LearnedRow(
        kind,
        what,
        (int) Math.max(LearnedRow.LEAST_FACTOR, Math.min(LearnedRow.MOST_FACTOR, factor)),
        (int) Math.min(LearnedRow.MOST_SPREAD, spread),
        visits,
        last,
        false,
        note);
  }

  static String text(String form, Object... values) {
    return String.format(Locale.ROOT, form, values);
  }
}
