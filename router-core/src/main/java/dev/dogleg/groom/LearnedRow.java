package dev.dogleg.groom;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * One thing learned from the visit log.
 *
 * @param kind what it speaks of
 * @param what whose it is: id of a groomer or pet, {@code dog full curly}, a breed, {@code midday},
 *     {@code midday/main}; empty for spreads and the day
 * @param factorPermille factor in thousandths, 200..5,000; 1,000 changes nothing
 * @param spreadPermille spread in thousandths, 0..1,500: of a pet how uncertain its minutes are, of
 *     days and drives the spread itself; 0 for the other kinds
 * @param visits from how many visits, drives or days, 0 or more
 * @param last date of the last of them, where there is one
 * @param keep whether a person wants it kept as it is when the log is learned from again
 * @param note text for the reader
 */
public record LearnedRow(
    LearnedKind kind,
    String what,
    int factorPermille,
    int spreadPermille,
    int visits,
    Optional<LocalDate> last,
    boolean keep,
    String note) {

  /** Least factor, in thousandths. */
  public static final int LEAST_FACTOR = 200;

  /** Most factor, in thousandths. */
  public static final int MOST_FACTOR = 5_000;

  /** Most spread, in thousandths. */
  public static final int MOST_SPREAD = 1_500;

  /** Checks the ranges. */
  public LearnedRow {
    Objects.requireNonNull(kind, "kind");
    Objects.requireNonNull(what, "what");
    Objects.requireNonNull(last, "last");
    Objects.requireNonNull(note, "note");
    check("factorPermille", factorPermille, LEAST_FACTOR, MOST_FACTOR);
    check("spreadPermille", spreadPermille, 0, MOST_SPREAD);
    check("visits", visits, 0, Integer.MAX_VALUE);
  }

  private static void check(String name, int value, int least, int most) {
    if (value < least || value > most) {
      throw new IllegalArgumentException(
          name + " must lie in " + least + ".." + most + ", was " + value);
    }
  }

  /** {@return the factor, 1 where it changes nothing} */
  double factor() {
    return factorPermille / 1000.0;
  }

  /** {@return the square of the spread} */
  double variance() {
    return spreadPermille / 1000.0 * (spreadPermille / 1000.0);
  }

  private String unit() {
    return switch (kind) {
      case DRIVE, DRIVE_LEG -> "drive";
      case DAY, DRIVE_DAY -> "day";
      default -> "visit";
    };
  }

  /** {@return {@code learned from 5 visits}, or whose number it is where a person keeps it} */
  String provenance() {
    String unit = unit();
    return keep
        ? "kept by hand in learned.csv"
        : "learned from " + visits + " " + unit + (visits == 1 ? "" : "s");
  }
}
