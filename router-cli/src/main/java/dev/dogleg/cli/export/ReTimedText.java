package dev.dogleg.cli.export;

import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.PlannedStop;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The times of an order that was timed anew, one line an event. */
public final class ReTimedText {
  private ReTimedText() {}

  /**
   * The lines.
   *
   * @param stops events in order
   * @param labels labels of the visits
   * @param shift whose day it is
   * @return lines of at most 80 columns where names allow
   */
  public static List<String> of(
      List<PlannedStop> stops, Map<String, StopLabel> labels, DayShift shift) {
    List<String> lines = new ArrayList<>();
    for (PlannedStop stop : stops) {
      String what =
          switch (stop.kind()) {
            case LEAVE -> "leave home";
            case HOME -> "home";
            case BREAK -> "break";
            case WATER -> "water";
            case VISIT -> labels.get(stop.visitId()).who();
          };
      lines.add(
          "  %s-%s  %s"
              .formatted(
                  shift.day().wallText(stop.arriveSeconds()),
                  shift.day().wallText(stop.leaveSeconds()),
                  what));
    }
    return lines;
  }
}
