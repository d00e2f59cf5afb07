package dev.dogleg.cli.export;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.model.GeoPoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Turns a planned day into the rows of plan.csv. */
public final class PlanRows {
  private PlanRows() {}

  /**
   * The rows of one day.
   *
   * @param day a planned day
   * @return one row an event, in the order of the day
   */
  public static List<PlanRow> of(PlannedDay day) {
    List<PlanRow> rows = new ArrayList<>();
    int door = 0;
    for (PlannedStop stop : day.plan().stops()) {
      boolean visit = stop.kind() == PlannedStop.Kind.VISIT;
      door += visit ? 1 : 0;
      rows.add(row(day, stop, visit ? Integer.toString(door) : ""));
    }
    return rows;
  }

  private static PlanRow row(PlannedDay day, PlannedStop stop, String door) {
    boolean visit = stop.kind() == PlannedStop.Kind.VISIT;
    boolean leave = stop.kind() == PlannedStop.Kind.LEAVE;
    StopLabel label = stop.visitId().isEmpty() ? null : day.stop(stop.visitId());
    PlaceLabel place = day.places().get(stop.place());
    GeoPoint point = place.point();
    return new PlanRow(
        day.plan().shift().day().date().toString(),
        day.plan().shift().groomerId(),
        day.plan().shift().vanId(),
        door,
        label != null && visit && label.errand() ? "errand" : kind(stop.kind()),
        label == null ? "" : String.join(";", label.bookings()),
        visit ? label.client() : "",
        visit ? String.join(";", label.pets()) : "",
        place.address(),
        degrees(point.lat()),
        degrees(point.lon()),
        wall(day, stop.arriveSeconds()),
        wall(day, stop.startSeconds()),
        wall(day, stop.leaveSeconds()),
        leave ? "" : Amounts.minutes(stop.driveSeconds()),
        leave ? "" : Amounts.kilometres(stop.driveMetres()),
        leave ? "" : Amounts.minutes(stop.waitSeconds()),
        visit ? Amounts.minutes(label.serviceSeconds()) : "",
        Amounts.minutes(stop.spareSeconds()),
        leave ? firstNote(day) : visit ? label.note() : "");
  }

  /** The format's version travels in the file itself: sidecars get lost in mail. */
  private static String firstNote(PlannedDay day) {
    return "plan format " + PlanCsv.FORMAT_VERSION + "; seed " + day.seed() + "; " + day.proof();
  }

  private static String kind(PlannedStop.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT);
  }

  private static String wall(PlannedDay day, int seconds) {
    return day.plan().shift().day().wallText(seconds);
  }

  private static String degrees(double value) {
    return String.format(Locale.ROOT, "%.6f", value);
  }
}
