package dev.dogleg.cli.prepare;

import dev.dogleg.audit.BreakSpot;
import dev.dogleg.audit.DayAudit;
import dev.dogleg.audit.DayReTiming;
import dev.dogleg.audit.ReTimedDay;
import dev.dogleg.audit.WaterSpot;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.model.GeoPoint;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Follows the rows that a person left in a plan: judges their times, and times their order. */
public final class PlanFollower {

  /**
   * One row of a plan as a person left it.
   *
   * @param kind what happens; empty where the word is not known
   * @param bookings ids of its bookings, in the order written
   * @param times arrival, start and leaving in elapsed seconds; empty where one cannot be read
   * @param point where it is, for a water stop; empty where it cannot be read
   */
  public record FollowedRow(
      Optional<PlannedStop.Kind> kind,
      List<String> bookings,
      Optional<int[]> times,
      Optional<GeoPoint> point) {
    /** Copies the list. */
    public FollowedRow {
      bookings = List.copyOf(bookings);
    }
  }

  /**
   * What came of it.
   *
   * @param written breaches of the times as written; empty where a time cannot be read
   * @param timesReadable whether every time could be read
   * @param stops events with the times as written, without drives, waiting and spare; empty where a
   *     time cannot be read
   * @param retimed the order timed anew, with its own breaches
   */
  public record Followed(
      List<Finding> written, boolean timesReadable, List<PlannedStop> stops, ReTimedDay retimed) {
    /** Copies the lists. */
    public Followed {
      written = List.copyOf(written);
      stops = List.copyOf(stops);
    }
  }

  private final PreparedDay day;
  private final Map<String, String> visitOfBooking = new HashMap<>();

  /**
   * A follower.
   *
   * @param day the day with the visits that the rows name
   */
  public PlanFollower(PreparedDay day) {
    this.day = day;
    day.stops()
        .forEach((visit, label) -> label.bookings().forEach(id -> visitOfBooking.put(id, visit)));
  }

  /**
   * Judges and times the rows of one day.
   *
   * @param rows rows in their order
   * @return what came of it
   */
  public Followed follow(List<FollowedRow> rows) {
    List<String> order = new ArrayList<>();
    Optional<BreakSpot> spot = Optional.empty();
    List<WaterSpot> water = new ArrayList<>();
    for (FollowedRow row : rows) {
      if (row.kind().filter(kind -> kind == PlannedStop.Kind.VISIT).isPresent()) {
        order.add(visit(row));
      } else if (row.kind().filter(kind -> kind == PlannedStop.Kind.BREAK).isPresent()) {
        boolean after = order.contains(visit(row));
        spot = Optional.of(new BreakSpot(visit(row), after));
      } else if (row.kind().filter(kind -> kind == PlannedStop.Kind.WATER).isPresent()) {
        water.add(new WaterSpot(order.isEmpty() ? "" : order.get(order.size() - 1), near(row)));
      }
    }
    boolean readable =
        rows.stream().allMatch(row -> row.kind().isPresent() && row.times().isPresent());
    List<PlannedStop> asWritten = readable ? rows.stream().map(this::stop).toList() : List.of();
    List<Finding> written = readable ? DayAudit.checkStops(day.request(), asWritten) : List.of();
    return new Followed(
        written, readable, asWritten, DayReTiming.retime(day.request(), order, spot, water));
  }

  /** The visit a row means: that of its first known booking, else the text itself. */
  private String visit(FollowedRow row) {
    return row.bookings().stream()
        .filter(visitOfBooking::containsKey)
        .map(visitOfBooking::get)
        .findFirst()
        .orElse(String.join(";", row.bookings()));
  }

  /** The event of a row, with its times as written. */
  private PlannedStop stop(FollowedRow row) {
    PlannedStop.Kind kind = row.kind().orElseThrow();
    int[] times = row.times().orElseThrow();
    String visit = row.bookings().isEmpty() ? "" : visit(row);
    int place =
        switch (kind) {
          case LEAVE -> day.request().shift().startPlace();
          case HOME -> day.request().shift().endPlace();
          case VISIT, BREAK -> placeOf(visit);
          case WATER -> near(row);
        };
    return new PlannedStop(kind, place, visit, times[0], times[1], times[2], 0, 0, 0, 0);
  }

  /** The place of a row's point: of those where water may be had the nearest, else of any. */
  private int near(FollowedRow row) {
    List<Integer> places =
        day.request().terms().water().stream()
            .flatMap(water -> water.places().stream())
            .map(WaterPlace::place)
            .toList();
    if (places.isEmpty() || row.point().isEmpty()) {
      return places.isEmpty() ? day.request().shift().startPlace() : places.get(0);
    }
    return places.stream()
        .min(
            Comparator.comparingDouble(
                place -> day.places().get(place).point().metresTo(row.point().get())))
        .orElseThrow();
  }

  private int placeOf(String visitId) {
    return day.request().visits().stream()
        .filter(visit -> visit.id().equals(visitId))
        .mapToInt(visit -> visit.place())
        .findFirst()
        .orElse(0);
  }

  /**
   * The kind a word names.
   *
   * @param word for example {@code visit}
   * @return the kind, or empty
   */
  public static Optional<PlannedStop.Kind> kind(String word) {
    if (word.strip().equalsIgnoreCase("errand")) {
      return Optional.of(PlannedStop.Kind.VISIT);
    }
    for (PlannedStop.Kind kind : PlannedStop.Kind.values()) {
      if (kind.name().toLowerCase(Locale.ROOT).equals(word.strip().toLowerCase(Locale.ROOT))) {
        return Optional.of(kind);
      }
    }
    return Optional.empty();
  }
}
