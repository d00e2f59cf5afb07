package dev.dogleg.plan.week;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What the rest of a day is worth at least, from every door: relaxed ends of days, built from the
 * end place backwards.
 *
 * <p>Maintainers: ng-paths (Baldacci, Mingozzi, Roberti 2011): a rest may come back to a booking
 * once it has been away among doors that do not remember it. A label is the latest second at which
 * the door may be left, the least amount of what follows, and the bookings remembered. There are
 * three {@link Way}s, because a day that has not had its break must still take it or be over early.
 * A label is kept only where the best way to reach its door in time leaves it below the room.
 */
final class RestLabels {
  /** How the rest of the day stands to the break. */
  enum Way {
    /** No break to come. */
    NO_BREAK,
    /** The break is to come. */
    WITH_BREAK,
    /** No break needed: the day is over before it could start. */
    EARLY_END
  }

  /** One rest of a day. */
  private static final class Label {
    private final int latest;
    private final long amount;
    private final long[] memory;

    Label(int latest, long amount, long[] memory) {
      this.latest = latest;
      this.amount = amount;
      this.memory = memory;
    }

    boolean covers(Label other) {
      if (latest < other.latest || amount > other.amount) {
        return false;
      }
      for (int w = 0; w < memory.length; w++) {
        if ((memory[w] & ~other.memory[w]) != 0) {
          return false;
        }
      }
      return true;
    }
  }

  private final PricedDay priced;
  private final RelaxedDay day;
  private final ArrivalBound before;
  private final long[][] near;
  private final long room;
  private final int most;
  private final int n;
  private final int words;
  private final Map<Way, List<List<Label>>> kept;
  private Map<Way, List<List<Label>>> fresh;
  private int size;
  private long steps;
  private boolean complete = true;
  private long least;

  /**
   * Builds all labels that matter.
   *
   * @param priced the day and its rewards
   * @param before what reaching a door costs at least
   * @param near for each booking those that remember, itself not needed, as bits
   * @param room reduced costs above this are of no interest
   * @param most labels after which it gives up, see {@link #complete}
   */
  RestLabels(PricedDay priced, ArrivalBound before, long[][] near, long room, int most) {
    this.priced = priced;
    this.day = priced.day();
    this.before = before;
    this.near = near;
    this.room = room;
    this.most = most;
    n = day.n;
    words = Math.max(1, (n + Long.SIZE - 1) / Long.SIZE);
    kept = lists();
    fresh = lists();
    for (int i = 0; i < n; i++) {
      end(i);
    }
    while (complete && grow()) {
      steps++;
    }
    for (List<List<Label>> byDoor : kept.values()) {
      byDoor.forEach(labels -> labels.sort(Comparator.comparingLong(label -> label.amount)));
    }
    start();
  }

  private Map<Way, List<List<Label>>> lists() {
    Map<Way, List<List<Label>>> lists = new EnumMap<>(Way.class);
    for (Way way : Way.values()) {
      List<List<Label>> byDoor = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        byDoor.add(new ArrayList<>());
      }
      lists.put(way, byDoor);
    }
    return lists;
  }

  private void end(int i) {
    if (!priced.reaches(i, day.end()) || priced.ready(i) > day.leaveBy[i]) {
      return;
    }
    int home = day.legs.least(i, day.end());
    for (Way way : new Way[] {Way.NO_BREAK, Way.EARLY_END}) {
      int by = way == Way.EARLY_END ? Math.min(day.latestEnd, day.breakFrom()) : day.latestEnd;
      int latest = Math.min(day.leaveBy[i], by - home);
      if (latest >= priced.ready(i) && (way == Way.NO_BREAK || day.hasBreak)) {
        long amount =
            priced.leg(i, day.end(), priced.ready(i), latest)
                + priced.parts(day.endCost(priced.ready(i) + home));
        // The day of one visit needs no break whatever its end; so these are kept in any case.
        add(way, i, new Label(latest, amount, new long[words]));
      }
    }
  }

  private void add(Way way, int i, Label label) {
    List<Label> others = kept.get(way).get(i);
    for (int k = 0; k < others.size(); k++) {
      if (others.get(k).covers(label)) {
        return;
      }
    }
    int next = 0;
    for (int k = 0; k < others.size(); k++) {
      Label other = others.get(k);
      if (!label.covers(other)) {
        others.set(next++, other);
      }
    }
    others.subList(next, others.size()).clear();
    others.add(label);
    fresh.get(way).get(i).add(label);
    size++;
  }

  private boolean grow() {
    Map<Way, List<List<Label>>> level = fresh;
    fresh = lists();
    boolean any = false;
    for (Way way : Way.values()) {
      for (int j = 0; j < n; j++) {
        for (Label label : level.get(way).get(j)) {
          any = true;
          extend(way, j, label);
          if (size > most) {
            complete = false;
            return false;
          }
        }
      }
    }
    return any;
  }

  private void extend(Way way, int j, Label label) {
    if (day.first[j]) {
      return;
    }
    steps += n;
    int arrive = Math.min(day.close[j], label.latest - day.service[j]);
    for (int i = 0; i < n; i++) {
      if (i != j && (label.memory[i >>> 6] >>> i & 1) == 0 && priced.reaches(i, j)) {
        int leave = Math.min(day.leaveBy[i], arrive - day.legs.least(i, j));
        reach(way, i, j, leave, leave, label);
        if (way == Way.NO_BREAK && day.hasBreak) {
          // Only arrival is bound by a window's end: the break at the next door may outlast it.
          int paused = label.latest - day.service[j] - day.breakLength();
          int ready = Math.min(day.close[j], paused) - day.legs.least(i, j);
          ready = Math.min(ready, Math.min(day.leaveBy[i], day.breakTo()));
          reach(Way.WITH_BREAK, i, j, ready, day.leaveBy[i], label);
        }
      }
    }
  }

  /**
   * Adds a label that may be left as late as {@code leave}, a break then to come before driving.
   */
  private void reach(Way way, int i, int j, int leave, int driveBy, Label label) {
    if (leave < priced.ready(i)) {
      return;
    }
    long amount = label.amount - priced.reward(j) + priced.leg(i, j, priced.ready(i), driveBy);
    if (amount + before.least(i, leave, way == Way.NO_BREAK && day.hasBreak) > room) {
      return;
    }
    long[] memory = new long[words];
    for (int w = 0; w < words; w++) {
      memory[w] = label.memory[w] & near[i][w];
    }
    memory[j >>> 6] |= near[i][j >>> 6] & 1L << j;
    add(way, i, new Label(leave, amount, memory));
  }

  private void start() {
    least = 0;
    for (int i = 0; i < n; i++) {
      if (priced.reaches(day.start(), i)) {
        for (Way way : Way.values()) {
          for (Label label : kept.get(way).get(i)) {
            boolean alone = Arrays.equals(label.memory, new long[words]);
            if (way != Way.NO_BREAK || !day.hasBreak || alone) {
              int arrive = Math.min(day.close[i], label.latest - day.service[i]);
              int leave = arrive - day.legs.least(day.start(), i);
              if (leave >= day.from) {
                long whole =
                    label.amount - priced.reward(i) + priced.leg(day.start(), i, day.from, leave);
                least = Math.min(least, whole);
              }
            }
          }
        }
      }
    }
  }

  /** {@return least reduced cost of a relaxed day, at most 0; a bound only where complete} */
  long least() {
    return least;
  }

  /** {@return whether every label that matters was built} */
  boolean complete() {
    return complete;
  }

  /**
   * Least amount of the rest of a day.
   *
   * @param i door that is left next
   * @param earliest first second at which it may be left
   * @param set bookings served so far, as bits
   * @param taken whether the break was taken
   */
  long after(int i, int earliest, long[] set, boolean taken) {
    if (taken || !day.hasBreak) {
      return after(Way.NO_BREAK, i, earliest, set);
    }
    return Math.min(
        after(Way.WITH_BREAK, i, earliest, set), after(Way.EARLY_END, i, earliest, set));
  }

  private long after(Way way, int i, int earliest, long[] set) {
    for (Label label : kept.get(way).get(i)) {
      if (label.latest >= earliest && apart(label.memory, set)) {
        return label.amount;
      }
    }
    return PricedDay.NEVER;
  }

  private static boolean apart(long[] memory, long[] set) {
    for (int w = 0; w < memory.length; w++) {
      if ((memory[w] & set[w]) != 0) {
        return false;
      }
    }
    return true;
  }

  long steps() {
    return steps;
  }
}
