package dev.dogleg.schedule;

import dev.dogleg.itinerary.DayRule;
import java.util.Arrays;
import java.util.List;

/**
 * How long each visit is served, by its place in the day and the visit before it.
 *
 * <p>Immutable; the arrays are not handed out.
 */
final class ServedMinutes {
  private final int n;
  private final int[] own;
  private final int[] least;
  private final int[][] choices;
  private int[] placed;
  private int[] changeover;

  /**
   * Services under rules.
   *
   * @param own services that visits ask for
   * @param ids their ids
   * @param rules all rules of the day, in order
   */
  ServedMinutes(int[] own, List<String> ids, List<DayRule> rules) {
    this.own = own;
    n = own.length;
    for (DayRule rule : rules) {
      if (rule instanceof DayRule.PlaceMinutes minutes) {
        place(minutes, ids);
      } else if (rule instanceof DayRule.Changeover change) {
        change(change, ids);
      }
    }
    least = own.clone();
    choices = new int[n][];
    for (int j = 0; j < n; j++) {
      choices[j] = vary() ? choices(j) : new int[] {own[j]};
      least[j] = choices[j][0];
    }
  }

  private void place(DayRule.PlaceMinutes rule, List<String> ids) {
    if (placed == null) {
      placed = new int[n * (n + 1)];
      for (int j = 0; j < n; j++) {
        Arrays.fill(placed, j * (n + 1), (j + 1) * (n + 1), own[j]);
      }
    }
    for (int j = 0; j < n; j++) {
      if (rule.visits().contains(ids.get(j))) {
        for (int place = rule.fromPlace(); place <= Math.min(n, rule.toPlace()); place++) {
          int at = j * (n + 1) + place;
          long times = ((long) placed[at] * rule.timesThousandths() + 500) / 1000;
          placed[at] =
              (int) Math.min(Integer.MAX_VALUE / 8, Math.max(0, times + rule.plusSeconds()));
        }
      }
    }
  }

  private void change(DayRule.Changeover rule, List<String> ids) {
    if (changeover == null) {
      changeover = new int[(n + 1) * n];
    }
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (rule.from().contains(ids.get(i)) && rule.to().contains(ids.get(j))) {
          changeover[i * n + j] += rule.seconds();
        }
      }
    }
  }

  private int[] choices(int j) {
    int[] all = new int[n * n];
    int count = 0;
    for (int i = 0; i <= n; i++) {
      for (int place = i == n ? 1 : 2; place <= (i == n ? 1 : n); place++) {
        if (i != j) {
          all[count++] = of(i, j, place);
        }
      }
    }
    return Arrays.stream(all, 0, count).sorted().distinct().toArray();
  }

  /** {@return whether any service depends on the order} */
  boolean vary() {
    return placed != null || changeover != null;
  }

  /**
   * Service of a visit.
   *
   * @param last visit before, n where it is the first
   * @param next the visit
   * @param place its place, counted from 1
   */
  int of(int last, int next, int place) {
    int seconds = placed == null ? own[next] : placed[next * (n + 1) + place];
    return changeover == null ? seconds : seconds + changeover[last * n + next];
  }

  /** {@return the least service of a visit, whatever comes before it} */
  int least(int visit) {
    return least[visit];
  }

  /** {@return every service that a visit can have, rising} */
  int[] all(int visit) {
    return choices[visit];
  }
}
