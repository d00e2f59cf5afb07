package dev.dogleg.plan;

import dev.dogleg.schedule.DayModel;
import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Least price and duration of each leg over spans of the day.
 *
 * <p>Where tanks are planned, a leg between two visits is at least the better of the straight one
 * and one by way of a water stop. A leg that a must rule forbids is none.
 *
 * <p>Built once per search; what is kept for each leg is in {@link LegRows}.
 */
final class LeastLegs {
  /** A duration that no day holds. */
  static final int NO_ROAD = Integer.MAX_VALUE / 4;

  private final int nodes;
  private final long drivePrice;
  private final LegRows rows;
  private final long[] legPrice;
  private final int[][] seconds;
  private final int[] least;
  private final ViaWater water;

  LeastLegs(DayModel day) {
    this(day, new LegRows(day), IntStream.range(0, day.size() + 2).toArray());
  }

  /**
   * Legs of part of a day.
   *
   * @param day the part
   * @param rows legs of the whole day
   * @param node for each visit of the part, then for the start and the end place, its node there
   */
  LeastLegs(DayModel day, LegRows rows, int[] node) {
    this.rows = rows;
    nodes = day.size() + 2;
    drivePrice = day.drivePrice();
    legPrice = new long[nodes * nodes];
    seconds = new int[nodes * nodes][];
    least = new int[nodes * nodes];
    for (int i = 0; i < nodes; i++) {
      for (int j = 0; j < nodes; j++) {
        int leg = i * nodes + j;
        boolean never =
            i == j
                || i == day.end()
                || j == day.start()
                || !day.reaches(i, j)
                || !day.steps().leg(i, j)
                || (j < day.size() && day.first(j) && i != day.start());
        if (never) {
          least[leg] = NO_ROAD;
          legPrice[leg] = DayValue.NONE;
        } else {
          legPrice[leg] = day.legPrice(i, j);
          seconds[leg] = rows.row(node[i], node[j]);
          least[leg] = seconds[leg][LegRows.CELLS - 1];
        }
      }
    }
    water = day.steps().mostStops() > 0 ? new ViaWater(day) : null;
  }

  /**
   * Legs of part of a day.
   *
   * @param whole the whole day
   * @param visits the visits of the part, as {@link DayModel#part} was asked for them
   * @param part the part
   * @param rows legs of the whole day
   */
  static LeastLegs ofPart(DayModel whole, int[] visits, DayModel part, LegRows rows) {
    int[] node = Arrays.copyOf(visits, visits.length + 2);
    node[visits.length] = whole.start();
    node[visits.length + 1] = whole.end();
    return new LeastLegs(part, rows, node);
  }

  private int within(int leg, int earliest, int latest) {
    return seconds[leg][rows.cell(earliest) * LegRows.CELLS + rows.cell(latest)];
  }

  /** {@return least price of a leg; {@link DayValue#NONE} where there is none} */
  long price(int i, int j) {
    int leg = i * nodes + j;
    long straight = least[leg] == NO_ROAD ? DayValue.NONE : legPrice[leg] + drivePrice * least[leg];
    return water == null ? straight : Math.min(straight, water.price(i, j));
  }

  /**
   * {@return least price of a leg left within a span; {@link DayValue#NONE} where there is none}
   */
  long price(int i, int j, int earliest, int latest) {
    int leg = i * nodes + j;
    long straight =
        least[leg] == NO_ROAD
            ? DayValue.NONE
            : legPrice[leg] + drivePrice * within(leg, earliest, latest);
    return water == null ? straight : Math.min(straight, water.price(i, j));
  }

  /** {@return least duration of a leg left within a span; {@link #NO_ROAD} where there is none} */
  int seconds(int i, int j, int earliest, int latest) {
    int leg = i * nodes + j;
    int straight = least[leg] == NO_ROAD ? NO_ROAD : within(leg, earliest, latest);
    return water == null ? straight : Math.min(straight, water.seconds(i, j));
  }

  /** {@return least duration of a leg; {@link #NO_ROAD} where there is none} */
  int seconds(int i, int j) {
    int straight = least[i * nodes + j];
    return water == null ? straight : Math.min(straight, water.seconds(i, j));
  }

  /** {@return least duration of a leg left about a time; {@link #NO_ROAD} where there is none} */
  int seconds(int i, int j, int about) {
    return seconds(i, j, about, about);
  }
}
