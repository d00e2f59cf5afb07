package dev.dogleg.schedule;

import dev.dogleg.itinerary.DayRule;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

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
    int[] later = IntStream.rangeClosed(2, n).map(place -> inPlace(j, place)).distinct().toArray();
    int[] changes =
        IntStream.range(0, n).filter(i -> i != j).map(i -> change(i, j)).distinct().toArray();
    return IntStream.concat(
            IntStream.of(of(n, j, 1)),
            Arrays.stream(later).flatMap(own -> Arrays.stream(changes).map(change -> own + change)))
        .sorted()
        .distinct()
        .toArray();
  }

  /** {@return whether any service depends on the order} */
  boolean vary() {
    return placed != null || changeover != null;
  }

  /** {@return whether it matters which place after the first a visit has} */
  boolean byPlace() {
    boolean matters = false;
    for (int j = 0; j < n && placed != null; j++) {
      for (int place = 3; place <= n; place++) {
        matters |= placed[j * (n + 1) + place] != placed[j * (n + 1) + 2];
      }
    }
    return matters;
  }

  /**
   * Service of a visit.
   *
   * @param last visit before, n where it is the first
   * @param next the visit
   * @param place its place, counted from 1
   */
  int of(int last, int next, int place) {
    return inPlace(next, place) + change(last, next);
  }

  private int inPlace(int next, int place) {
    return placed == null ? own[next] : placed[next * (n + 1) + place];
  }

  private int change(int last, int next) {
    return changeover == null ? 0 : changeover[last * n + next];
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
