package dev.dogleg.schedule;

import dev.dogleg.itinerary.DayRule;
import java.util.ArrayList;
import java.util.List;

/**
 * Load points of a day and how many of them are free: an {@link DayRule.AtMost}.
 *
 * <p>Maintainers: points are kept by their binary digits, a mask for each, so that the sum of a set
 * takes one count of bits per digit.
 */
final class LoadLimit {
  private final long[] points;
  private final List<VisitMask> digits = new ArrayList<>();
  private final long most;

  LoadLimit(DayRule.AtMost rule, List<String> ids) {
    most = rule.most();
    points = new long[ids.size()];
    for (int i = 0; i < points.length; i++) {
      points[i] = rule.points().getOrDefault(ids.get(i), 0);
      for (int digit = 0; points[i] >>> digit != 0; digit++) {
        while (digits.size() <= digit) {
          digits.add(new VisitMask(points.length));
        }
        if ((points[i] >>> digit & 1) != 0) {
          digits.get(digit).add(i);
        }
      }
    }
  }

  /** {@return free points} */
  long most() {
    return most;
  }

  long points(int visit) {
    return points[visit];
  }

  /** {@return whether two visits are too much} */
  boolean tooMuch(int i, int j) {
    return points[i] + points[j] > most;
  }

  /** {@return whether a visit is too much after so many points; not for one without points} */
  boolean tooMuchAfter(long sum, int visit) {
    return points[visit] > 0 && sum + points[visit] > most;
  }

  /** {@return whether one visit is too much} */
  boolean tooMuchAlone(int i) {
    return points[i] > most;
  }

  /** {@return points above the free ones that a set has} */
  long above(long[] rows, int at) {
    return Math.max(0, sum(rows, at) - most);
  }

  /** {@return how many more points are above the free ones once a visit joins a set} */
  long moreAbove(long[] rows, int at, int visit) {
    if (points[visit] == 0) {
      return 0;
    }
    long sum = sum(rows, at);
    return Math.max(0, sum + points[visit] - most) - Math.max(0, sum - most);
  }

  /** {@return whether a set holds a visit that has points} */
  boolean names(long[] rows, int at) {
    for (int digit = 0; digit < digits.size(); digit++) {
      if (digits.get(digit).meets(rows, at)) {
        return true;
      }
    }
    return false;
  }

  /** {@return points of a set that are free} */
  long free(long[] rows, int at) {
    return Math.min(most, sum(rows, at));
  }

  /** {@return points of a set} */
  long sum(long[] rows, int at) {
    long sum = 0;
    for (int digit = 0; digit < digits.size(); digit++) {
      sum += (long) digits.get(digit).count(rows, at) << digit;
    }
    return sum;
  }
}
