package dev.dogleg.fit;

import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The told spans of a van-day: all of one width, each begun on a multiple of a step, numbered in
 * order.
 *
 * @param firstSeconds begin of the first
 * @param count number of spans, 0 where the shift is too short for one
 * @param stepSeconds from begin to begin
 * @param spanSeconds width of each
 * @param marginSeconds the van is to arrive by so much before a span's end
 */
record RoomGrid(int firstSeconds, int count, int stepSeconds, int spanSeconds, int marginSeconds) {

  /** All spans that lie in a shift. */
  static RoomGrid of(TimeWindow hours, RoomQuestion question) {
    int step = question.stepSeconds();
    int first = (hours.fromSeconds() + step - 1) / step * step;
    int last = hours.toSeconds() - question.spanSeconds();
    int count = last < first ? 0 : (last - first) / step + 1;
    return new RoomGrid(first, count, step, question.spanSeconds(), question.marginSeconds());
  }

  /** Begin of a span. */
  int from(int number) {
    return firstSeconds + number * stepSeconds;
  }

  /** A span as it is told. */
  TimeWindow told(int number) {
    return new TimeWindow(from(number), from(number) + spanSeconds);
  }

  /** When the van is to be there. */
  TimeWindow planned(int number) {
    return new TimeWindow(from(number), latestArrival(number));
  }

  /** The first step of that: who is there by then has the rest of the span to spare. */
  TimeWindow early(int number) {
    return new TimeWindow(from(number), from(number) + stepSeconds);
  }

  /** Last second of arrival at a door asked about. */
  int latestArrival(int number) {
    return from(number) + spanSeconds - marginSeconds;
  }

  /** Those spans that lie wholly in hours in which a visit may be reached. */
  BitSet within(Visit visit) {
    BitSet some = new BitSet();
    for (int number = 0; number < count; number++) {
      int from = from(number);
      some.set(
          number,
          visit.arriveWithin().stream()
              .anyMatch(
                  window ->
                      window.fromSeconds() <= from && from + spanSeconds <= window.toSeconds()));
    }
    return some;
  }

  /** Some spans as arrival windows: those that overlap or touch are one. */
  List<TimeWindow> windows(BitSet some) {
    List<TimeWindow> windows = new ArrayList<>();
    for (int number = some.nextSetBit(0); number >= 0; number = some.nextSetBit(number + 1)) {
      int from = from(number);
      int last = windows.size() - 1;
      if (last >= 0 && from <= windows.get(last).toSeconds() + 1) {
        from = windows.remove(last).fromSeconds();
      }
      windows.add(new TimeWindow(from, latestArrival(number)));
    }
    return windows;
  }

  /** Stretches of spans that follow each other, from the first's begin to the last's end. */
  List<TimeWindow> stretches(BitSet some) {
    List<TimeWindow> stretches = new ArrayList<>();
    for (int number = some.nextSetBit(0); number >= 0; ) {
      int end = some.nextClearBit(number);
      stretches.add(new TimeWindow(from(number), from(end - 1) + spanSeconds));
      number = some.nextSetBit(end);
    }
    return stretches;
  }
}
