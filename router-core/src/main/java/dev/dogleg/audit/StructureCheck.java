package dev.dogleg.audit;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether the events are the right ones, at the right places, in a lawful sequence. */
final class StructureCheck {
  private final DayRows rows;
  private final FindingList found;

  private StructureCheck(DayRows rows, FindingList found) {
    this.rows = rows;
    this.found = found;
  }

  /** Checks a plan that has at least one event. */
  static void check(DayRows rows, FindingList found) {
    StructureCheck check = new StructureCheck(rows, found);
    check.ends();
    rows.all().forEach(check::place);
    check.visits();
    check.breaks();
  }

  private void ends() {
    Row first = rows.get(0);
    if (!first.is(Kind.LEAVE)) {
      found.at(first, "leave-missing", 0, 1, "The day does not begin by leaving the start place.");
    }
    if (!rows.last().is(Kind.HOME)) {
      found.at(rows.last(), "home-missing", 0, 1, "The day does not end at the end place.");
    }
    for (Row row : rows.all()) {
      boolean strayLeave = row.is(Kind.LEAVE) && row.index() > 0;
      boolean strayHome = row.is(Kind.HOME) && row.index() < rows.last().index();
      if (strayLeave || strayHome) {
        found.at(row, "stray-event", 1, 0, "In the middle of the day stands " + row.words() + ".");
      }
      boolean nameless = row.is(Kind.LEAVE) || row.is(Kind.HOME) || row.is(Kind.WATER);
      if (nameless && !row.stop().visitId().isEmpty()) {
        found.at(row, "stray-visit", 1, 0, "A visit is named at " + row.words() + ".");
      }
    }
    for (Row row : rows.of(Kind.WATER)) {
      water(row);
    }
    if (rows.of(Kind.VISIT).isEmpty()) {
      found.day("no-visit", "", rows.all().size(), 0, "The van is out without any visit.");
    }
  }

  private void water(Row row) {
    if (rows.request().terms().water().isEmpty()) {
      String text = "A water stop is made, and this day plans no water.";
      found.at(row, "water-not-planned", 1, 0, text);
    } else if (rows.waterPlace(row.stop()).isEmpty()) {
      String text = "A water stop is made at place %d, which is no water place.";
      found.at(row, "water-place", 1, 0, text.formatted(row.stop().place()));
    }
  }

  private void place(Row row) {
    PlannedStop stop = row.stop();
    if (stop.place() != row.place()) {
      found.at(
          row,
          "wrong-place",
          stop.place(),
          row.place(),
          "Place %d is given for %s, which is at place %d."
              .formatted(stop.place(), row.words(), row.place()));
    }
  }

  private void visits() {
    Set<String> seen = new HashSet<>();
    int position = 0;
    for (Row row : rows.of(Kind.VISIT)) {
      position++;
      String id = row.stop().visitId();
      if (row.visit() == null) {
        found.at(row, "unknown-visit", 1, 0, "Visit " + id + " is not one of this day's visits.");
      } else if (!seen.add(id)) {
        found.at(row, "visit-twice", 2, 1, "Visit " + id + " is made more than once.");
      } else if (row.visit().first() && position > 1) {
        found.at(
            row,
            "not-first",
            position,
            1,
            "Visit %s must be the first of the day and is number %d.".formatted(id, position));
      }
    }
  }

  private void breaks() {
    List<Row> breaks = rows.of(Kind.BREAK);
    List<Row> visits = rows.of(Kind.VISIT);
    boolean wanted = rows.request().shift().breakRule().isPresent() && visits.size() >= 2;
    for (int b = 0; b < breaks.size(); b++) {
      Row row = breaks.get(b);
      if (!wanted) {
        String why = visits.size() < 2 ? "a day of fewer than two visits" : "this shift";
        found.at(row, "break-not-needed", 1, 0, "A break is taken, but " + why + " has none.");
      } else if (b > 0) {
        found.at(row, "break-twice", b + 1, 1, "More than one break is taken.");
      } else {
        breakPosition(row, visits);
      }
    }
  }

  private void breakPosition(Row row, List<Row> visits) {
    int firstVisit = visits.get(0).index();
    int lastVisit = visits.get(visits.size() - 1).index();
    if (row.index() < firstVisit) {
      found.at(row, "break-before-first", 1, 0, "The break is taken before the first visit.");
    } else if (row.index() > lastVisit) {
      found.at(row, "break-after-last", 1, 0, "The break is taken after the last visit.");
    } else if (row.breakAt() == BreakAt.NONE) {
      found.at(
          row,
          "break-door",
          0,
          1,
          "The break names visit \"%s\", which is neither just before nor just after it."
              .formatted(row.stop().visitId()));
    }
  }
}
