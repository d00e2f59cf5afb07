package dev.dogleg.cli.prepare;

import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.export.PlanRow;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Where an earlier plan has placed bookings. */
public final class EarlierPlan {
  /** No earlier plan. */
  public static final EarlierPlan NONE = new EarlierPlan(Map.of());

  private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{2})(?::(\\d{2}))?");
  private static final Pattern BETWEEN_IDS = Pattern.compile("\\s*;\\s*");

  private final Map<String, Spot> spots;

  private EarlierPlan(Map<String, Spot> spots) {
    this.spots = Map.copyOf(spots);
  }

  /**
   * Where a booking stood.
   *
   * @param date the day
   * @param groomerId whose day
   * @param arriveWall arrival by the wall clock, seconds; empty where it cannot be read or lies
   *     after midnight
   * @param place place in the day's order, from 1
   */
  public record Spot(LocalDate date, String groomerId, OptionalInt arriveWall, int place) {}

  /**
   * Out of a plan file.
   *
   * @param rows its rows in order; what cannot be read is passed over
   * @return the plan
   */
  public static EarlierPlan of(List<PlacedRow> rows) {
    Map<String, Spot> spots = new HashMap<>();
    Map<String, Integer> places = new HashMap<>();
    for (PlacedRow placed : rows) {
      PlanRow row = placed.row();
      if (!row.kind().equals("visit") && !row.kind().equals("errand")) {
        continue;
      }
      int place = places.merge(row.date() + " " + row.groomer(), 1, Integer::sum);
      Optional<LocalDate> date = date(row.date());
      for (String booking : BETWEEN_IDS.split(row.booking())) {
        date.ifPresent(
            day -> spots.putIfAbsent(booking, new Spot(day, row.groomer(), wall(row), place)));
      }
    }
    return new EarlierPlan(spots);
  }

  private static Optional<LocalDate> date(String text) {
    try {
      return Optional.of(LocalDate.parse(text));
    } catch (DateTimeException unreadable) {
      return Optional.empty();
    }
  }

  private static OptionalInt wall(PlanRow row) {
    Matcher clock = CLOCK.matcher(row.arrive());
    if (!clock.matches()) {
      return OptionalInt.empty();
    }
    int seconds = clock.group(3) == null ? 0 : Integer.parseInt(clock.group(3));
    int wall =
        3_600 * Integer.parseInt(clock.group(1)) + 60 * Integer.parseInt(clock.group(2)) + seconds;
    return wall < 86_400 ? OptionalInt.of(wall) : OptionalInt.empty();
  }

  /**
   * Where a booking stood.
   *
   * @param bookingId the booking
   * @return its place, or empty where it had none
   */
  public Optional<Spot> of(String bookingId) {
    return Optional.ofNullable(spots.get(bookingId));
  }

  /** {@return whether nothing is known} */
  public boolean isEmpty() {
    return spots.isEmpty();
  }
}
