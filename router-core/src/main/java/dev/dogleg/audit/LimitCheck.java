package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;

/** Whether the times keep the limits of visits, break and shift. */
final class LimitCheck {
  private final DayRows rows;
  private final FindingList found;
  private final DayShift shift;

  private LimitCheck(DayRows rows, FindingList found) {
    this.rows = rows;
    this.found = found;
    this.shift = rows.request().shift();
  }

  static void check(DayRows rows, FindingList found) {
    LimitCheck check = new LimitCheck(rows, found);
    for (Row row : rows.all()) {
      switch (row.stop().kind()) {
        case LEAVE -> check.leave(row);
        case VISIT -> check.visit(row);
        case BREAK -> check.breakStart(row);
        case WATER -> {
          // No limits at a water place; where it may stand is WaterCheck's matter.
        }
        case HOME -> check.home(row);
      }
    }
    check.breakMissing();
  }

  private void leave(Row row) {
    int from = shift.hours().fromSeconds();
    atLeast(row, "leaves-early", row.stop().leaveSeconds(), from, "The start place is left at");
  }

  private void home(Row row) {
    int latest = shift.latestEndSeconds();
    atMost(row, "ends-late", row.stop().arriveSeconds(), latest, "The end place is reached at");
  }

  private void visit(Row row) {
    Visit visit = row.visit();
    if (visit == null) {
      return;
    }
    PlannedStop stop = row.stop();
    Door door = Door.of(row);
    int latest = door.latestArrivalSeconds();
    if (stop.arriveSeconds() > latest) {
      atMost(row, "arrives-late", stop.arriveSeconds(), latest, "The van is at the door at");
    } else if (stop.startSeconds() >= stop.arriveSeconds()) {
      int from = door.windowStart(stop.arriveSeconds());
      atLeast(row, "starts-early", stop.startSeconds(), from, "The service starts at");
    }
    String ends = "The service ends at";
    atMost(row, "done-late", row.endSeconds(), visit.doneBySeconds(), ends);
    stay(row, visit);
  }

  private void stay(Row row, Visit visit) {
    int arrive = row.stop().arriveSeconds();
    int leave = rows.lastOfStay(row).stop().leaveSeconds();
    TimeWindow before = null;
    TimeWindow after = null;
    for (TimeWindow window : visit.vanWithin()) {
      if (window.holds(arrive)) {
        atMost(row, "van-stays-long", leave, window.toSeconds(), "The van is at the door until");
        return;
      }
      before = window.toSeconds() < arrive ? window : before;
      after = after == null && window.fromSeconds() > arrive ? window : after;
    }
    if (after != null) {
      String text = "The van may not stand at the door yet: it comes at";
      atLeast(row, "van-early", arrive, after.fromSeconds(), text);
    } else if (before != null) {
      String text = "The van may not stand at the door any more: it comes at";
      atMost(row, "van-late", arrive, before.toSeconds(), text);
    }
  }

  private void breakStart(Row row) {
    if (shift.breakRule().isEmpty()) {
      return;
    }
    BreakRule rule = shift.breakRule().get();
    int start = row.stop().startSeconds();
    String text = "The break starts at";
    atLeast(row, "break-early", start, rule.startWithin().fromSeconds(), text);
    atMost(row, "break-late", start, rule.startWithin().toSeconds(), text);
  }

  private void breakMissing() {
    if (shift.breakRule().isEmpty() || !rows.last().is(Kind.HOME)) {
      return;
    }
    int opens = shift.breakRule().get().startWithin().fromSeconds();
    int end = rows.last().stop().arriveSeconds();
    boolean taken = !rows.of(Kind.BREAK).isEmpty();
    if (!taken && rows.of(Kind.VISIT).size() >= 2 && end > opens) {
      found.day(
          "break-missing",
          "",
          0,
          1,
          "No break is taken, but the day has two or more visits and ends at %s, after %s."
              .formatted(found.clock(end), found.clock(opens)));
    }
  }

  private void atLeast(Row row, String code, long measured, long allowed, String text) {
    if (measured < allowed) {
      say(row, code, measured, allowed, text, "which is too early: allowed from");
    }
  }

  private void atMost(Row row, String code, long measured, long allowed, String text) {
    if (measured > allowed) {
      say(row, code, measured, allowed, text, "which is too late: allowed until");
    }
  }

  private void say(Row row, String code, long measured, long allowed, String text, String rule) {
    found.at(
        row,
        code,
        measured,
        allowed,
        "%s %s, %s %s (%d s off)."
            .formatted(
                text,
                found.clock(measured),
                rule,
                found.clock(allowed),
                Math.abs(measured - allowed)));
  }
}
