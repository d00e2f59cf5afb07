package dev.dogleg.cli.export;

import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A table of times that may be told without asking again, and what is needed to show it.
 *
 * @param made when it was made
 * @param terms what it rests on
 * @param kinds columns: kinds of caller
 * @param zones blocks, each with a row a van-day
 * @param notPlanned worked days of the weeks asked for that nobody has planned, in order
 * @param notCounted who stands in the book and not in the plan and may be on several days
 */
public record OpeningsSheet(
    ZonedDateTime made,
    Terms terms,
    List<Kind> kinds,
    List<Zone> zones,
    List<NotPlanned> notPlanned,
    List<String> notCounted) {
  /** Copies the lists. */
  public OpeningsSheet {
    Objects.requireNonNull(made, "made");
    Objects.requireNonNull(terms, "terms");
    kinds = List.copyOf(kinds);
    zones = List.copyOf(zones);
    notPlanned = List.copyOf(notPlanned);
    notCounted = List.copyOf(notCounted);
  }

  /**
   * What a table rests on.
   *
   * @param spanSeconds width of a told span
   * @param stepSeconds spans begin on multiples of this
   * @param marginSeconds how much longer drives to an address may be than those to the known doors
   * @param enoughPercent the minutes at the door are enough in so many of 100 grooms
   * @param overtime whether overtime counts as room
   * @param keptPercent so many of 100 told times are to be kept
   */
  public record Terms(
      int spanSeconds,
      int stepSeconds,
      int marginSeconds,
      int enoughPercent,
      boolean overtime,
      int keptPercent) {}

  /**
   * A kind of caller.
   *
   * @param word its name
   * @param standsFor which dog stands for it
   * @param plannedSeconds minutes at the door that are reckoned with, the most of all days
   */
  public record Kind(String word, String standsFor, int plannedSeconds) {}

  /**
   * A zone.
   *
   * @param name its name
   * @param doors number of known doors in it
   * @param rows a row a van-day
   */
  public record Zone(String name, int doors, List<Row> rows) {
    /** Copies the list. */
    public Zone {
      rows = List.copyOf(rows);
    }
  }

  /**
   * A van-day of a zone.
   *
   * @param day date and time zone
   * @param groomer who works
   * @param cells one a kind
   */
  public record Row(WorkDay day, String groomer, List<Cell> cells) {
    /** Copies the list. */
    public Row {
      Objects.requireNonNull(day, "day");
      Objects.requireNonNull(groomer, "groomer");
      cells = List.copyOf(cells);
    }

    /** {@return the most that this day is liked less, over all kinds, in seconds of driving} */
    int dearerSeconds() {
      return cells.stream().mapToInt(Cell::dearerSeconds).max().orElse(0);
    }
  }

  /**
   * What may be told to one kind.
   *
   * @param allowed whether rules, zones and roads allow it on this day at every door
   * @param spans stretches: every told span that lies in one of them holds
   * @param proven whether it is proven that no other does
   * @param dearerSeconds by how much this day is liked less, in seconds of driving
   */
  public record Cell(boolean allowed, List<TimeWindow> spans, boolean proven, int dearerSeconds) {
    /** Copies the list. */
    public Cell {
      spans = List.copyOf(spans);
    }

    /**
     * The stretches as they are shown to a person, who reads stretches that overlap or touch as
     * one: the longest first, the others cut until they stand a step apart, or left out.
     *
     * @param terms width of a told span, and step
     * @return sorted stretches; every told span that lies in one of them holds
     */
    List<TimeWindow> shown(Terms terms) {
      List<TimeWindow> apart = new ArrayList<>();
      spans.stream()
          .sorted(Comparator.comparingInt(one -> one.fromSeconds() - one.toSeconds()))
          .forEach(one -> cut(one, apart, terms).ifPresent(apart::add));
      apart.sort(null);
      return apart;
    }

    private static Optional<TimeWindow> cut(TimeWindow span, List<TimeWindow> others, Terms terms) {
      int from = span.fromSeconds();
      int to = span.toSeconds();
      for (TimeWindow other : others) {
        if (other.fromSeconds() <= from) {
          from = Math.max(from, other.toSeconds() + terms.stepSeconds());
        } else {
          to = Math.min(to, other.fromSeconds() - terms.stepSeconds());
        }
      }
      return to - from >= terms.spanSeconds()
          ? Optional.of(new TimeWindow(from, to))
          : Optional.empty();
    }

    /**
     * What holds here and there.
     *
     * @param other the same kind on the same day at other doors
     * @param spanSeconds width of a told span
     * @return what holds at all doors
     */
    public Cell and(Cell other, int spanSeconds) {
      List<TimeWindow> both =
          spans.stream()
              .flatMap(
                  one ->
                      other.spans.stream()
                          .filter(
                              two ->
                                  Math.min(one.toSeconds(), two.toSeconds())
                                          - Math.max(one.fromSeconds(), two.fromSeconds())
                                      >= spanSeconds)
                          .map(
                              two ->
                                  new TimeWindow(
                                      Math.max(one.fromSeconds(), two.fromSeconds()),
                                      Math.min(one.toSeconds(), two.toSeconds()))))
              .toList();
      return new Cell(
          allowed && other.allowed,
          both,
          proven && other.proven,
          Math.max(dearerSeconds, other.dearerSeconds));
    }
  }

  /**
   * A day that nobody has planned.
   *
   * @param date the day
   * @param waiting who stands in the book for it, at least one
   */
  public record NotPlanned(LocalDate date, List<String> waiting) {
    /** Copies the list. */
    public NotPlanned {
      Objects.requireNonNull(date, "date");
      waiting = List.copyOf(waiting);
    }
  }
}
