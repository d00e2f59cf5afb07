package dev.dogleg.plan.week;

import dev.dogleg.travel.TravelTimes;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.stream.IntStream;

/** What the parts of a week's search share: the orders known of each van-day, who may go where. */
final class SearchDays {
  private final WeekModel model;
  private final List<KnownOrders> orders = new ArrayList<>();
  private final KnownOrders.Known[] homes;
  private final int[][] vans;

  SearchDays(WeekModel model, SetCosts costs) {
    this.model = model;
    homes = new KnownOrders.Known[model.request().days().size()];
    int from = Integer.MAX_VALUE;
    int to = 0;
    for (VanKind kind : model.kinds()) {
      from = Math.min(from, kind.day().shift().hours().fromSeconds());
      to = Math.max(to, kind.day().shift().latestEndSeconds());
    }
    IdentityHashMap<TravelTimes, LegTable> legs = new IdentityHashMap<>();
    for (VanKind kind : model.kinds()) {
      TravelTimes travel = kind.day().travel();
      if (!legs.containsKey(travel)) {
        legs.put(travel, new LegTable(travel, from, to));
      }
      KnownOrders known = new KnownOrders(kind, legs.get(travel), costs);
      orders.add(known);
      kind.vanDays().forEach(van -> homes[van] = known.home());
    }
    vans = new int[model.size()][];
    for (int i = 0; i < vans.length; i++) {
      int booking = i;
      vans[i] = IntStream.range(0, homes.length).filter(van -> mayServe(van, booking)).toArray();
    }
  }

  private boolean mayServe(int van, int booking) {
    int local = model.kindOf(van).local(booking);
    return local >= 0 && of(van).company(local).length > 0;
  }

  WeekModel model() {
    return model;
  }

  /** {@return orders known, by kind} */
  List<KnownOrders> orders() {
    return orders;
  }

  /** {@return orders known of a van-day} */
  KnownOrders of(int van) {
    return orders.get(model.kindOf(van).number());
  }

  /** {@return number of van-days} */
  int size() {
    return homes.length;
  }

  /** {@return the van-days that may serve a booking, rising} */
  int[] vans(int booking) {
    return vans[booking];
  }

  /** {@return a week in which every van stays at home} */
  WeekState nobodyServed() {
    return new WeekState(model, homes);
  }

  /** {@return steps from visit to visit made so far} */
  long steps() {
    return orders.stream().mapToLong(KnownOrders::steps).sum();
  }

  /** {@return for each booking all of them, the nearest first} */
  int[][] near() {
    int[][] near = new int[model.size()][];
    Arrays.setAll(near, this::nearest);
    return near;
  }

  private int[] nearest(int i) {
    long[] far = new long[model.size()];
    for (int j = 0; j < far.length; j++) {
      far[j] = ((long) seconds(i, j) << Integer.SIZE) | j;
    }
    Arrays.sort(far);
    return Arrays.stream(far).mapToInt(each -> (int) each).toArray();
  }

  private int seconds(int i, int j) {
    for (VanKind kind : model.kinds()) {
      if (kind.local(i) >= 0 && kind.local(j) >= 0) {
        int from = kind.visit(kind.local(i)).place();
        int to = kind.visit(kind.local(j)).place();
        TravelTimes travel = kind.day().travel();
        return travel.reaches(from, to) ? travel.leastDriveSeconds(from, to) : Integer.MAX_VALUE;
      }
    }
    return Integer.MAX_VALUE;
  }
}
