package dev.dogleg.audit;

import dev.dogleg.itinerary.Finding;
import dev.dogleg.time.WorkDay;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Findings of one audit, kept as found and handed out in the order of the day. */
final class FindingList {
  private final List<Finding> found = new ArrayList<>();
  private final WorkDay day;

  FindingList(WorkDay day) {
    this.day = day;
  }

  void add(String code, int stop, String visitId, long measured, long allowed, String text) {
    found.add(new Finding(code, stop, visitId, measured, allowed, text));
  }

  /** A finding on one row. */
  void at(Row row, String code, long measured, long allowed, String text) {
    add(code, row.index(), row.stop().visitId(), measured, allowed, text);
  }

  /** A finding on the whole day. */
  void day(String code, String visitId, long measured, long allowed, String text) {
    add(code, -1, visitId, measured, allowed, text);
  }

  void addAll(List<Finding> more) {
    found.addAll(more);
  }

  boolean isEmpty() {
    return found.isEmpty();
  }

  /** Wall clock of an elapsed second, for sentences. */
  String clock(long seconds) {
    boolean shown = seconds >= 0 && seconds <= Row.MOST_SECONDS;
    return shown ? day.wallText((int) seconds) : seconds + " s";
  }

  /** {@return rows in order, the whole day last, each row's findings as found} */
  List<Finding> inOrder() {
    Comparator<Finding> order =
        Comparator.comparingInt(f -> f.stop() < 0 ? Integer.MAX_VALUE : f.stop());
    return found.stream().sorted(order).toList();
  }
}
