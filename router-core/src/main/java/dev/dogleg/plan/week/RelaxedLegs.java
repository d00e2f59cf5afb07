package dev.dogleg.plan.week;

import dev.dogleg.travel.TravelTimes;
import java.util.Arrays;

/**
 * The legs of one day with durations rounded down to a few steady spans.
 *
 * <p>Maintainers: the day is cut into cells of {@value #CELL} seconds; in each the duration is the
 * least over its leaving times, and equal neighbours are one span. While traffic changes that is
 * mostly the duration before or after, so the spans are few, and so are the runs that they make of
 * a partial day. Where the way by a water place is shorter than the direct one (only in matrices
 * that break the triangle inequality), it counts too if asked for. Nodes 0..n-1 are visits, n the
 * start place, n+1 the end place, then any others.
 */
final class RelaxedLegs {
  private static final int CELL = 300;

  /** Leaving times are looked up by blocks of 2^10 seconds. */
  private static final int BLOCK_BITS = 10;

  private static final int NONE = Integer.MAX_VALUE;

  /** One leg; its last span never ends. */
  static final class Leg {
    /** Last leaving times of the spans. */
    final int[] ends;

    /** Durations of the spans, never above the true one. */
    final int[] seconds;

    /** Least duration of a span and of all later ones. */
    final int[] leastFrom;

    /** Greatest duration of a span. */
    final int most;

    /** Price of the kilometres. */
    final long price;

    private final int from;
    private final int[] block;

    Leg(int[] ends, int[] seconds, long price, int from, int latest) {
      this.ends = ends;
      this.seconds = seconds;
      this.price = price;
      this.from = from;
      most = Arrays.stream(seconds).max().orElseThrow();
      leastFrom = seconds.clone();
      for (int s = seconds.length - 2; s >= 0; s--) {
        leastFrom[s] = Math.min(leastFrom[s], leastFrom[s + 1]);
      }
      block = new int[(Math.max(0, latest - from) >> BLOCK_BITS) + 1];
      int span = 0;
      for (int k = 0; k < block.length; k++) {
        while (ends[span] < from + (k << BLOCK_BITS)) {
          span++;
        }
        block[k] = span;
      }
    }

    /** {@return the span of a leaving time within the day} */
    int span(int leave) {
      int span = block[(leave - from) >> BLOCK_BITS];
      while (ends[span] < leave) {
        span++;
      }
      return span;
    }
  }

  private final int nodes;
  private final Leg[] legs;

  /**
   * Legs between all nodes.
   *
   * @param travel travel times
   * @param place places of the nodes
   * @param visits how many of the nodes are visits
   * @param water places by which visits may also be joined
   * @param from first second of the day
   * @param latestEnd last second
   * @param kilometreSeconds price of a kilometre
   */
  RelaxedLegs(
      TravelTimes travel,
      int[] place,
      int visits,
      int[] water,
      int from,
      int latestEnd,
      long kilometreSeconds) {
    nodes = place.length;
    legs = new Leg[nodes * nodes];
    Spans spans = new Spans();
    for (int i = 0; i < nodes; i++) {
      for (int j = 0; j < nodes; j++) {
        boolean direct = travel.reaches(place[i], place[j]);
        int by = i < visits && j < visits ? leastBy(travel, place[i], place[j], water) : NONE;
        if (i == j || (!direct && by == NONE)) {
          continue;
        }
        spans.clear();
        if (direct) {
          spans.fill(travel, place[i], place[j], from, Math.max(from, latestEnd), by);
        } else {
          spans.add(NONE, by);
        }
        long price = direct ? price(travel, place[i], place[j], kilometreSeconds) : Long.MAX_VALUE;
        for (int w = 0; w < water.length && by != NONE; w++) {
          if (travel.reaches(place[i], water[w]) && travel.reaches(water[w], place[j])) {
            long there = price(travel, place[i], water[w], kilometreSeconds);
            long back = price(travel, water[w], place[j], kilometreSeconds);
            price = Math.min(price, there + back);
          }
        }
        legs[i * nodes + j] = spans.leg(price, from, latestEnd);
      }
    }
  }

  /** The spans of one leg while they are found. */
  private static final class Spans {
    private int size;
    private int[] ends = new int[64];
    private int[] seconds = new int[64];

    void clear() {
      size = 0;
    }

    void fill(TravelTimes travel, int i, int j, int from, int to, int by) {
      for (int start = from; start <= to; ) {
        int steady = travel.steadyUntil(i, j, start);
        int end = Math.min(to, steady);
        int least = travel.driveSeconds(i, j, start);
        if (steady - start < CELL) {
          // While it rises or falls evenly nothing in between is shorter than both ends.
          int straight = travel.straightUntil(i, j, start);
          end = Math.min(to, Math.max(steady, Math.min(straight, start + CELL - 1)));
          least = Math.min(least, travel.driveSeconds(i, j, end));
        }
        add(end, Math.min(least, by));
        start = end + 1;
      }
    }

    void add(int end, int drive) {
      if (size > 0 && seconds[size - 1] == drive) {
        ends[size - 1] = end;
        return;
      }
      if (size == ends.length) {
        ends = Arrays.copyOf(ends, size * 2);
        seconds = Arrays.copyOf(seconds, size * 2);
      }
      ends[size] = end;
      seconds[size++] = drive;
    }

    Leg leg(long price, int from, int latest) {
      int[] last = Arrays.copyOf(ends, size);
      last[size - 1] = NONE;
      return new Leg(last, Arrays.copyOf(seconds, size), price, from, latest);
    }
  }

  private static long price(TravelTimes travel, int i, int j, long kilometreSeconds) {
    return (travel.lengthMetres(i, j) * kilometreSeconds * 60 + 500) / 1000;
  }

  /** Least duration by way of a place where water may be taken. */
  private static int leastBy(TravelTimes travel, int i, int j, int[] water) {
    int least = NONE;
    for (int w : water) {
      if (travel.reaches(i, w) && travel.reaches(w, j)) {
        least = Math.min(least, travel.leastDriveSeconds(i, w) + travel.leastDriveSeconds(w, j));
      }
    }
    return least;
  }

  /** {@return a leg; null: no road} */
  Leg leg(int i, int j) {
    return legs[i * nodes + j];
  }

  /** {@return whether a road leads from node to node} */
  boolean reaches(int i, int j) {
    return legs[i * nodes + j] != null;
  }

  /** {@return last leaving times of the spans, the last of which never ends; null: no road} */
  int[] spanEnds(int i, int j) {
    Leg leg = legs[i * nodes + j];
    return leg == null ? null : leg.ends;
  }

  /** {@return durations of the spans, never above the true one} */
  int[] spanSeconds(int i, int j) {
    return legs[i * nodes + j].seconds;
  }

  /** {@return least duration over the day; only where a road leads} */
  int least(int i, int j) {
    return legs[i * nodes + j].leastFrom[0];
  }

  /** {@return price of the kilometres; 0 where no road leads} */
  long price(int i, int j) {
    Leg leg = legs[i * nodes + j];
    return leg == null ? 0 : leg.price;
  }
}
