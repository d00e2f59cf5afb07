package dev.dogleg.cli.told;

import dev.dogleg.cli.told.ToldRow.Told;
import dev.dogleg.model.DateSpan;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * What the log says by now: what was told last, what was answered, who wants no texts, and whether
 * a run was cut short.
 *
 * <p>A run counts once all its prepared rows are there; one that was cut short before that has
 * handed nothing over and is void.
 */
public final class ToldBook {
  /** Nothing was told yet. */
  public static final ToldBook NOTHING = new ToldBook(List.of());

  private final List<ToldRow> prepared = new ArrayList<>();
  private final Map<String, ToldEvent> answers = new HashMap<>();
  private final Set<String> stopped = new HashSet<>();
  private final Set<Integer> handed = new HashSet<>();
  private int lastRun;

  private ToldBook(List<ToldRow> rows) {
    Map<Integer, List<ToldRow>> runs = new TreeMap<>();
    for (ToldRow row : rows) {
      lastRun = Math.max(lastRun, row.run());
      switch (row.event()) {
        case PREPARED -> runs.computeIfAbsent(row.run(), run -> new ArrayList<>()).add(row);
        case HANDED_OVER -> handed.add(row.run());
        case CONFIRMED, REFUSED, NO_ANSWER -> answers.put(key(row), row.event());
        case STOPPED -> stopped.add(row.client());
        case RESUMED -> stopped.remove(row.client());
      }
    }
    runs.values().stream()
        .filter(some -> some.size() == some.get(0).of())
        .forEach(prepared::addAll);
  }

  /**
   * What a log says.
   *
   * @param rows its rows, oldest first
   * @return the state after the last of them
   */
  public static ToldBook of(List<ToldRow> rows) {
    return new ToldBook(rows);
  }

  private static String key(ToldRow row) {
    return row.run()
        + " "
        + row.client()
        + " "
        + row.told().map(told -> told.date() + " " + told.bookings()).orElse("");
  }

  /** {@return the number that the next run takes} */
  public int nextRun() {
    return lastRun + 1;
  }

  /**
   * Whether a client wants no texts.
   *
   * @param clientId the client
   * @return true from a stop word until they ask for texts again
   */
  public boolean stopped(String clientId) {
    return stopped.contains(clientId);
  }

  /** {@return rows of a run that was prepared whole and is not known to be handed over} */
  public List<ToldRow> open() {
    return prepared.stream().filter(row -> !handed.contains(row.run())).toList();
  }

  /**
   * What a client was told or asked last.
   *
   * @param clientId the client
   * @return the row, or empty
   */
  public Optional<ToldRow> lastOf(String clientId) {
    return last(prepared.stream().filter(row -> row.client().equals(clientId)).toList());
  }

  /**
   * The answer to what a row told.
   *
   * @param row a prepared row
   * @return confirmed, refused or no answer; empty where none was noted
   */
  public Optional<ToldEvent> answer(ToldRow row) {
    return Optional.ofNullable(answers.get(key(row)));
  }

  /**
   * What was told last of a booking for one of some days: a promise. An ask is one once it was
   * confirmed.
   *
   * @param bookingId id of a booking of the book
   * @param dates its days
   * @param book ids of all bookings of the book: what was told of another one is not taken for it
   * @return what binds, or empty
   */
  public Optional<Told> binding(String bookingId, DateSpan dates, Collection<String> book) {
    List<ToldRow> some =
        prepared.stream()
            .filter(this::promised)
            .filter(row -> dates.holds(row.told().orElseThrow().date()))
            .filter(row -> isOf(row.told().orElseThrow(), bookingId, book))
            .toList();
    return last(some).flatMap(ToldRow::told);
  }

  /**
   * What was told or asked last of a booking for a day.
   *
   * @param bookingId id of a booking
   * @param date the day
   * @return the row, whether or not it binds
   */
  public Optional<ToldRow> last(String bookingId, LocalDate date) {
    return last(
        prepared.stream()
            .filter(row -> row.told().orElseThrow().date().equals(date))
            .filter(row -> row.told().orElseThrow().speaksOf(bookingId))
            .toList());
  }

  /**
   * Promises from a day on, the last of each booking and day.
   *
   * @param from first day
   * @return prepared rows
   */
  public List<ToldRow> promises(LocalDate from) {
    Map<String, ToldRow> latest = new TreeMap<>();
    prepared.stream()
        .filter(this::promised)
        .filter(row -> !row.told().orElseThrow().date().isBefore(from))
        .forEach(
            row ->
                latest.put(
                    row.told().orElseThrow().date()
                        + " "
                        + row.told().orElseThrow().bookings().stream().map(ToldRow::stem).toList(),
                    row));
    return List.copyOf(latest.values());
  }

  /**
   * Whether a client was promised anything.
   *
   * @param clientId the client
   * @param dates for one of these days; empty: for any
   * @return true where something was
   */
  public boolean promised(String clientId, Optional<DateSpan> dates) {
    return prepared.stream()
        .filter(this::promised)
        .filter(row -> row.client().equals(clientId))
        .anyMatch(
            row -> dates.map(span -> span.holds(row.told().orElseThrow().date())).orElse(true));
  }

  /**
   * What was told of a booking for another day than the one it has now.
   *
   * @param bookingId id of the booking
   * @param date the day it has now
   * @param from promises for days before are past
   * @param stillBooked whether the book has the same client and pets for a day
   * @return the last such promise, or empty
   */
  public Optional<ToldRow> movedFrom(
      String bookingId, LocalDate date, LocalDate from, Predicate<LocalDate> stillBooked) {
    return last(
        promises(from).stream()
            .filter(row -> row.told().orElseThrow().speaksOf(bookingId))
            .filter(row -> !row.told().orElseThrow().date().equals(date))
            .filter(row -> !stillBooked.test(row.told().orElseThrow().date()))
            .toList());
  }

  /**
   * How often what was told of a booking for a day has changed.
   *
   * @param bookingId id of the booking
   * @param date the day
   * @return 0 or more
   */
  public int changes(String bookingId, LocalDate date) {
    return (int)
        prepared.stream()
            .filter(this::promised)
            .map(row -> row.told().orElseThrow())
            .filter(told -> told.date().equals(date) && told.speaksOf(bookingId))
            .skip(1)
            .count();
  }

  private boolean promised(ToldRow row) {
    return row.told().orElseThrow().occasion() != Occasion.ASK
        || answer(row).filter(ToldEvent.CONFIRMED::equals).isPresent();
  }

  private static boolean isOf(Told told, String bookingId, Collection<String> book) {
    return told.bookings().contains(bookingId)
        || (told.speaksOf(bookingId) && told.bookings().stream().noneMatch(book::contains));
  }

  private static Optional<ToldRow> last(List<ToldRow> some) {
    return some.isEmpty() ? Optional.empty() : Optional.of(some.get(some.size() - 1));
  }
}
