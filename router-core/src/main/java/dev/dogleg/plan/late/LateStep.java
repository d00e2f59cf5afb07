package dev.dogleg.plan.late;

import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.DoorGate;
import dev.dogleg.schedule.StepTerms;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/**
 * Carries a label to one more visit, in every way to take the break, fetch water and arrive, each
 * at its earliest.
 *
 * <p>One thread.
 */
final class LateStep {
  private final DayModel day;
  private final StepTerms terms;
  private final LateTerms late;
  private final List<WaterPlace> water;
  private final List<List<DoorGate>> gates = new ArrayList<>();
  private final long[] set = new long[1];
  private Consumer<LateLabel> sink;

  LateStep(DayModel day, LateTerms late, List<WaterPlace> water) {
    this.day = day;
    this.terms = day.steps();
    this.late = late;
    this.water = water;
    for (int visit = 0; visit < day.size(); visit++) {
      gates.add(day.gates(visit));
    }
  }

  /** Where the van may leave from, with what it carries. */
  private record Ready(
      int node, int from, int until, boolean taken, int stops, int fresh, int grey, int breakLate) {
    Ready breakDone(int readyAt, int late) {
      return new Ready(node, readyAt, until, true, stops, fresh, grey, late);
    }
  }

  /** Sends every label that comes of visiting {@code next} after {@code label}. */
  void extend(LateLabel label, int next, Consumer<LateLabel> target) {
    sink = target;
    set[0] = label.served;
    int place = Long.bitCount(label.served) + 1;
    boolean first = label.before == null;
    if ((day.first(next) && !first) || !terms.may(set, 0, label.visit, next, place)) {
      return;
    }
    int service = terms.service(label.visit, next, place);
    Ready here =
        new Ready(
            first ? day.start() : label.visit,
            label.ready,
            label.leaveBy,
            label.breakTaken,
            label.stops,
            label.fresh,
            label.grey,
            label.breakLate());
    leave(label, here, next, service);
    if (!first && day.hasBreak() && !label.breakTaken) {
      int start = Math.max(here.from, day.breakFrom());
      int ready = start + day.breakLength();
      if (ready <= here.until) {
        leave(label, here.breakDone(ready, late.breakLate(start)), next, service);
      }
    }
  }

  private void leave(LateLabel label, Ready here, int next, int service) {
    arrive(label, here, next, service);
    if (label.before == null || here.stops >= terms.mostStops()) {
      return;
    }
    for (int w = 0; w < water.size(); w++) {
      int node = day.waterNode(w);
      if (day.reaches(here.node, node)) {
        int ready = here.from + day.drive(here.node, node, here.from) + water.get(w).seconds();
        if (ready <= day.latestEnd()) {
          Ready filled =
              new Ready(
                  node, ready, day.latestEnd(), here.taken, here.stops + 1, 0, 0, here.breakLate);
          arrive(label, filled, next, service);
        }
      }
    }
  }

  private void arrive(LateLabel label, Ready here, int next, int service) {
    int fresh = here.fresh + terms.fresh(next);
    int grey = here.grey + terms.grey(next);
    if (!terms.lasts(fresh, grey) || !day.reaches(here.node, next)) {
      return;
    }
    for (DoorGate gate : gates.get(next)) {
      int at = earliest(here, next, gate.arriveFrom());
      if (at < 0 || at > gate.arriveTo()) {
        continue;
      }
      serve(label, here, next, gate, at, at, here.taken, here.breakLate, service);
      if (day.hasBreak() && !here.taken && label.before != null) {
        int start = Math.max(at, day.breakFrom());
        int rested = start + day.breakLength();
        serve(label, here, next, gate, at, rested, true, late.breakLate(start), service);
      }
    }
  }

  /** Earliest arrival not before a second; the van may linger where it is. Or -1. */
  private int earliest(Ready here, int next, int notBefore) {
    int low = here.from;
    int at = low + day.drive(here.node, next, low);
    if (at >= notBefore) {
      return at;
    }
    int high = Math.min(here.until, day.latestEnd());
    if (high < low || high + day.drive(here.node, next, high) < notBefore) {
      return -1;
    }
    while (low < high) {
      int middle = low + (high - low) / 2;
      if (middle + day.drive(here.node, next, middle) >= notBefore) {
        high = middle;
      } else {
        low = middle + 1;
      }
    }
    return low + day.drive(here.node, next, low);
  }

  private void serve(
      LateLabel label,
      Ready here,
      int next,
      DoorGate gate,
      int at,
      int free,
      boolean taken,
      int breakLate,
      int service) {
    int end = Math.max(free, gate.serviceFrom()) + service;
    if (end > gate.doneBy() || end > gate.leaveBy() || end > day.latestEnd()) {
      return;
    }
    int[] by = label.late;
    long told = label.told;
    long wish = label.wish;
    int seconds = late.seconds(next, at, gate.serviceFrom());
    if (seconds > 0 || breakLate != label.breakLate()) {
      by = by.clone();
      by[next] = seconds;
      by[by.length - 1] = breakLate;
    }
    if (seconds > 0) {
      long broken = (1L << Integer.SIZE) + seconds;
      told += late.told(next) ? broken : 0;
      wish += late.told(next) ? 0 : broken;
    }
    sink.accept(
        new LateLabel(
            label,
            label.served | 1L << next,
            next,
            taken,
            end,
            Math.min(gate.leaveBy(), day.latestEnd()),
            here.stops,
            here.fresh + terms.fresh(next),
            here.grey + terms.grey(next),
            told,
            wish,
            by));
  }

  /** Whether a day may end after a label. */
  boolean mayEnd(LateLabel label) {
    int last = label.visit;
    set[0] = label.served;
    if (!terms.mayEnd(set, 0, last) || !day.reaches(last, day.end())) {
      return false;
    }
    int end = label.ready + day.drive(last, day.end(), label.ready);
    boolean breakMissing =
        day.hasBreak()
            && !label.breakTaken
            && Long.bitCount(label.served) > 1
            && end > day.breakFrom();
    return end <= day.latestEnd() && !breakMissing;
  }
}
