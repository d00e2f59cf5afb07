package dev.dogleg.audit;

import dev.dogleg.itinerary.Finding;
import java.util.ArrayList;
import java.util.List;

/** Findings of one week, kept as found. */
final class WeekFindings {
  private final List<WeekFinding> found = new ArrayList<>();

  void week(String code, String id, long measured, long allowed, String text) {
    day(-1, code, id, measured, allowed, text);
  }

  void day(int day, String code, String id, long measured, long allowed, String text) {
    found.add(new WeekFinding(day, new Finding(code, -1, id, measured, allowed, text)));
  }

  void addAll(int day, List<Finding> findings) {
    findings.forEach(finding -> found.add(new WeekFinding(day, finding)));
  }

  /** {@return days in order, the whole week last, each day's findings as found} */
  List<WeekFinding> inOrder() {
    List<WeekFinding> order = new ArrayList<>(found.stream().filter(f -> f.day() >= 0).toList());
    order.sort((one, other) -> Integer.compare(one.day(), other.day()));
    found.stream().filter(f -> f.day() < 0).forEach(order::add);
    return List.copyOf(order);
  }
}
