package dev.dogleg.plan.week;

import java.util.List;
import java.util.function.BooleanSupplier;

/** Finds sets of low reduced cost on one kind of van-day, without a list of all of them. */
final class DayPricer {
  private static final int MEMORY = 8;
  private static final int MOST_DAYS = 24;
  private static final int LEARNING_ROUNDS = 12;

  private final VanKind kind;
  private final RelaxedDay day;
  private final RestFloor floor;
  private final NearVisits near;
  private final DayLoad load;
  private final int mostLabels;
  private final BooleanSupplier stop;
  private DayDuals duals;
  private long steps;

  /**
   * What a search for cheap days found.
   *
   * @param whole whether no day is cheaper than {@code least}
   * @param least least reduced cost, at most the limit asked with
   * @param days cheap days, each visit once a day
   */
  record Priced(boolean whole, long least, List<DayLabels.Found> days) {}

  DayPricer(VanKind kind, int mostLabels, BooleanSupplier stop) {
    this.stop = stop;
    this.kind = kind;
    this.mostLabels = mostLabels;
    day = kind.relaxed();
    floor = new RestFloor(day);
    near = new NearVisits(day, MEMORY);
    load = new DayLoad(kind);
  }

  /** Takes prices; to be called before pricing. */
  void take(RowPrices prices, boolean counting) {
    duals = new DayDuals(kind, prices, counting);
    floor.fill(duals.worth, duals.costScale);
  }

  /**
   * Cheap days, found fast; nothing is proven.
   *
   * @param limit only days below this reduced cost
   */
  Priced quickly(long limit) {
    DayLabels days =
        new DayLabels(day, duals, floor, near, load, limit, true, mostLabels / 4, stop);
    days.run();
    steps += days.size();
    return new Priced(false, days.least(), trueDays(days));
  }

  /** Cheap days, and the proof that there is none below the least. */
  Priced wholly(long limit) {
    for (int round = 0; ; round++) {
      DayLabels days = new DayLabels(day, duals, floor, near, load, limit, false, mostLabels, stop);
      boolean whole = days.run();
      steps += days.size();
      List<DayLabels.Found> all = days.cheapest(MOST_DAYS);
      List<DayLabels.Found> found = all.stream().filter(DayLabels.Found::isTrueDay).toList();
      boolean learnt = false;
      if (whole && round < LEARNING_ROUNDS && !all.isEmpty() && !all.get(0).isTrueDay()) {
        for (DayLabels.Found day : all) {
          learnt |= near.learn(day.order());
        }
      }
      if (!learnt) {
        return new Priced(whole, days.least(), found);
      }
    }
  }

  private static List<DayLabels.Found> trueDays(DayLabels days) {
    return days.cheapest(MOST_DAYS).stream().filter(DayLabels.Found::isTrueDay).toList();
  }

  /** What the rest of a day is worth at least, at the prices taken. */
  RestFloor floor() {
    return floor;
  }

  DayDuals duals() {
    return duals;
  }

  /** {@return partial days made since this was last asked} */
  long takeSteps() {
    long taken = steps;
    steps = 0;
    return taken;
  }
}
