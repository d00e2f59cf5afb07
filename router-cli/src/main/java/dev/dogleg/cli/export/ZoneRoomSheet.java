package dev.dogleg.cli.export;

import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import java.util.List;
import java.util.Objects;

/**
 * Whether a zone has room for one more, asked at the doors of the clients who live there.
 *
 * @param zone name of the zone
 * @param doors number of doors asked
 * @param fitting at so many of them some day has room while all other days stay
 * @param proven whether it is proven of every day and door without room that there is none
 * @param plannedSeconds minutes at the door that were planned with, the most of all doors
 * @param spanSeconds width of a told span
 * @param days van-days on which somebody of the zone may be visited
 */
public record ZoneRoomSheet(
    String zone,
    int doors,
    int fitting,
    boolean proven,
    int plannedSeconds,
    int spanSeconds,
    List<Day> days) {
  /** Copies the list. */
  public ZoneRoomSheet {
    Objects.requireNonNull(zone, "zone");
    days = List.copyOf(days);
  }

  /**
   * A van-day.
   *
   * @param day date and zone
   * @param groomer who works
   * @param fitting at so many doors it has room
   * @param leastDriveSeconds least extra driving of these doors; may be below 0
   * @param mostDriveSeconds most
   * @param spans stretches in which every span of the width told holds at every one of these doors
   * @param spansProven whether it is proven of every other time that it holds not at one of them
   */
  public record Day(
      WorkDay day,
      String groomer,
      int fitting,
      int leastDriveSeconds,
      int mostDriveSeconds,
      List<TimeWindow> spans,
      boolean spansProven) {
    /** Copies the spans. */
    public Day {
      spans = List.copyOf(spans);
    }
  }
}
