package dev.dogleg.plan.week;

import java.util.Arrays;

/**
 * How many counted bookings must be left out for want of time alone: quick, for weeks of any size.
 *
 * <p>Maintainers: each booking needs at least its service and the shortest leg that may lead to it;
 * all van-days together have so many seconds; shortest needs first, as many as fit are no fewer
 * than any week can serve.
 */
final class TimeBound {
  private TimeBound() {}

  /** {@return no week leaves out fewer counted bookings} */
  static int leftOut(WeekModel model) {
    long room = 0;
    int[] need = new int[model.size()];
    Arrays.fill(need, Integer.MAX_VALUE / 2);
    for (VanKind kind : model.kinds()) {
      RelaxedDay day = kind.relaxed();
      int longestAlone = 0;
      for (int j = 0; j < day.n; j++) {
        int shortest = Integer.MAX_VALUE / 4;
        for (int i = 0; i <= day.n; i++) {
          if (i != j && day.legs.spanEnds(i, j) != null) {
            shortest = Math.min(shortest, day.legs.least(i, j));
          }
        }
        need[kind.booking(j)] = Math.min(need[kind.booking(j)], shortest + day.service[j]);
        longestAlone = Math.max(longestAlone, shortest + day.service[j]);
      }
      room += kind.vanDays().size() * (long) seconds(day, longestAlone);
    }
    int[] counted =
        java.util.stream.IntStream.range(0, need.length)
            .filter(model::counted)
            .map(b -> need[b])
            .sorted()
            .toArray();
    int fit = 0;
    for (int seconds : counted) {
      if (seconds > room) {
        break;
      }
      room -= seconds;
      fit++;
    }
    return counted.length - fit;
  }

  /** Seconds of one day for services and legs in; one visit alone needs no break. */
  private static int seconds(RelaxedDay day, int longestAlone) {
    int home = Arrays.stream(day.home).min().orElse(0);
    int whole = Math.max(0, day.latestEnd - day.from - home);
    if (!day.hasBreak) {
      return whole;
    }
    int broken = Math.max(day.breakFrom() - day.from - home, whole - day.breakLength());
    return Math.max(broken, Math.min(whole, longestAlone));
  }
}
