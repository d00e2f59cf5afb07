package dev.dogleg.plan.late;

import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Objects;

/**
 * Spans for arrival at a door that were promised or wished for, and that give way only as {@code
 * docs/LATE.md} says.
 *
 * @param visitId the visit
 * @param kind how much it weighs
 * @param windows sorted, apart, at least one; kept means at the door not after the end of the last
 *     one, and an early van waits for a start
 */
public record Promise(String visitId, Kind kind, List<TimeWindow> windows) {

  /** How much a promise weighs. */
  public enum Kind {
    /** Told to the owner. */
    TOLD,
    /** Asked for by the owner, and never told: gives way first. */
    WISH
  }

  /** Copies the list. */
  public Promise {
    Objects.requireNonNull(visitId, "visitId");
    Objects.requireNonNull(kind, "kind");
    windows = List.copyOf(windows);
    if (windows.isEmpty()) {
      throw new IllegalArgumentException("promise of " + visitId + " has no window");
    }
  }

  /** {@return last second at the door that keeps it} */
  public int endSeconds() {
    return windows.get(windows.size() - 1).toSeconds();
  }

  /**
   * The spans, the last of them open until later.
   *
   * @param untilSeconds new end of the last one; where it is earlier than its end nothing changes
   * @return sorted, apart
   */
  List<TimeWindow> until(int untilSeconds) {
    TimeWindow last = windows.get(windows.size() - 1);
    List<TimeWindow> wider = new java.util.ArrayList<>(windows.subList(0, windows.size() - 1));
    wider.add(new TimeWindow(last.fromSeconds(), Math.max(last.toSeconds(), untilSeconds)));
    return wider;
  }
}
