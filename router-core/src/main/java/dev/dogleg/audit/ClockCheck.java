package dev.dogleg.audit;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;

/** Whether the times of each event follow from the event before and from each other. */
final class ClockCheck {
  private final DayRows rows;
  private final FindingList found;

  private ClockCheck(DayRows rows, FindingList found) {
    this.rows = rows;
    this.found = found;
  }

  static void check(DayRows rows, FindingList found) {
    ClockCheck check = new ClockCheck(rows, found);
    for (Row row : rows.all()) {
      check.range(row);
      if (row.atDoorOfRowBefore()) {
        check.sameDoor(row);
      } else if (rows.driven(row)) {
        check.drive(row);
      }
      check.order(row);
    }
  }

  private void range(Row row) {
    PlannedStop stop = row.stop();
    for (int seconds : new int[] {stop.arriveSeconds(), stop.startSeconds(), stop.leaveSeconds()}) {
      if (!Row.inRange(seconds)) {
        long allowed = seconds < 0 ? 0 : Row.MOST_SECONDS;
        found.at(row, "time-range", seconds, allowed, "No time of a day: " + seconds + " s.");
        return;
      }
    }
  }

  private void drive(Row row) {
    Row before = rows.get(row.index() - 1);
    if (before.place() < 0 || row.place() < 0 || !before.leavesInRange()) {
      return; // Said already: an unknown place or an impossible time.
    }
    if (!rows.hasRoad(row)) {
      found.at(
          row, "no-road", 0, 1, "No road leads from %s to %s.".formatted(name(before), name(row)));
      return;
    }
    int drive = rows.driveSeconds(row);
    long expected = (long) before.stop().leaveSeconds() + drive;
    expectArrival(
        row,
        expected,
        "leaving at %s and driving %d s"
            .formatted(found.clock(before.stop().leaveSeconds()), drive));
  }

  private static String name(Row row) {
    return row.words() + " (place " + row.place() + ")";
  }

  private void sameDoor(Row row) {
    Row before = rows.get(row.index() - 1);
    boolean isBreak = row.is(Kind.BREAK);
    long expected = isBreak ? before.endSeconds() : before.stop().arriveSeconds();
    expectArrival(row, expected, isBreak ? "the end of the service" : "the arrival at the door");
    int start = row.stop().startSeconds();
    int left = before.stop().leaveSeconds();
    if (start < left) {
      found.at(
          row,
          "starts-too-soon",
          start,
          left,
          "The start of %s is at %s, but %s lasts until %s."
              .formatted(row.words(), found.clock(start), before.words(), found.clock(left)));
    }
  }

  private void expectArrival(Row row, long expected, String because) {
    int arrive = row.stop().arriveSeconds();
    if (arrive != expected) {
      found.at(
          row,
          "arrival",
          arrive,
          expected,
          "The arrival for %s is given as %s; %s gives %s."
              .formatted(row.words(), found.clock(arrive), because, found.clock(expected)));
    }
  }

  private void order(Row row) {
    PlannedStop stop = row.stop();
    boolean instant = row.is(Kind.LEAVE) || row.is(Kind.HOME);
    int start = stop.startSeconds();
    if (start < stop.arriveSeconds() || (instant && start != stop.arriveSeconds())) {
      found.at(
          row,
          "start-not-arrival",
          start,
          stop.arriveSeconds(),
          "The start of %s is at %s, the arrival at %s."
              .formatted(row.words(), found.clock(start), found.clock(stop.arriveSeconds())));
    }
    if (instant && stop.leaveSeconds() != start) {
      found.at(
          row,
          "leave-not-start",
          stop.leaveSeconds(),
          start,
          "At %s the time of leaving must be that of the start.".formatted(row.words()));
    }
    long length = (long) stop.leaveSeconds() - start;
    if (!instant && length < row.lengthSeconds()) {
      found.at(
          row,
          shortCode(row, length),
          length,
          row.lengthSeconds(),
          "From start to leaving %s has %d s and needs %d s%s."
              .formatted(row.words(), length, row.lengthSeconds(), because(row)));
    }
  }

  /**
   * Names what is missing: the break, the water stop, cleaning, minutes by place, or the service.
   */
  private String shortCode(Row row, long length) {
    if (!row.is(Kind.VISIT)) {
      return row.is(Kind.BREAK) ? "break-short" : "water-short";
    }
    if (row.visit() == null) {
      return "service-short";
    }
    long byPlace = row.lengthSeconds() - rows.served().changeover(row.visit().id(), before(row));
    if (length >= byPlace) {
      return "changeover-short";
    }
    return length >= row.visit().serviceSeconds() ? "place-minutes-short" : "service-short";
  }

  private String because(Row row) {
    if (row.visit() == null || !row.is(Kind.VISIT)) {
      return "";
    }
    String rules = rows.served().names(row.visit(), place(row), before(row));
    return rules.isEmpty() ? "" : " (by rule: " + rules + ")";
  }

  private int place(Row row) {
    return rows.of(Kind.VISIT).indexOf(row) + 1;
  }

  private String before(Row row) {
    int place = place(row);
    return place < 2 ? null : rows.of(Kind.VISIT).get(place - 2).stop().visitId();
  }
}
