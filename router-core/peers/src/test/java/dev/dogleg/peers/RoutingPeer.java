package dev.dogleg.peers;

import com.google.ortools.constraintsolver.Assignment;
import com.google.ortools.constraintsolver.FirstSolutionStrategy;
import com.google.ortools.constraintsolver.LocalSearchMetaheuristic;
import com.google.ortools.constraintsolver.RoutingDimension;
import com.google.ortools.constraintsolver.RoutingIndexManager;
import com.google.ortools.constraintsolver.RoutingModel;
import com.google.ortools.constraintsolver.RoutingSearchParameters;
import com.google.protobuf.Duration;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * OR-Tools routing: parallel cheapest insertion, then guided local search. It draws nothing, so a
 * seed numbers the bookings otherwise.
 */
final class RoutingPeer implements WeekPeer {
  private static final int LONGEST_ON_THE_CLOCK = 300;

  @Override
  public String title() {
    return "OR-Tools 9.14 routing, guided local search";
  }

  @Override
  public List<List<Integer>> search(WeekRequest week, double seconds, long seed) {
    PeerLegs legs = new PeerLegs(week);
    int[] node = shuffled(legs.size, seed);
    int days = week.days().size();
    RoutingIndexManager numbers = new RoutingIndexManager(legs.size + 1, days, legs.size);
    RoutingModel model = new RoutingModel(numbers);
    long[][] cost = new long[legs.size + 1][legs.size + 1];
    long[][] time = new long[legs.size + 1][legs.size + 1];
    for (int i = 0; i <= legs.size; i++) {
      for (int j = 0; j <= legs.size; j++) {
        cost[i][j] = legs.cost[node[i]][node[j]];
        time[i][j] = (long) legs.drive[node[i]][node[j]] + legs.service(node[i]);
      }
    }
    model.setArcCostEvaluatorOfAllVehicles(model.registerTransitMatrix(cost));
    int until = legs.hours.toSeconds();
    model.addDimension(model.registerTransitMatrix(time), until, until, false, "time");
    RoutingDimension clock = model.getMutableDimension("time");
    clock.SetSlackCostCoefficientForAllVehicles(legs.waitPrice);
    for (int day = 0; day < days; day++) {
      clock.cumulVar(model.start(day)).setRange(legs.hours.fromSeconds(), until);
      clock.cumulVar(model.end(day)).setRange(legs.hours.fromSeconds(), until);
    }
    for (int k = 0; k < legs.size; k++) {
      int booking = node[k];
      long index = numbers.nodeToIndex(k);
      TimeWindow window = legs.window(booking);
      clock.cumulVar(index).setRange(window.fromSeconds(), Math.min(until, window.toSeconds()));
      model.setAllowedVehiclesForIndex(
          IntStream.range(0, days).filter(day -> legs.allows(booking, day)).toArray(), index);
      model.addDisjunction(new long[] {index}, LEFT_OUT);
    }
    ThreadClock used = new ThreadClock();
    model.addSearchMonitor(model.solver().makeCustomLimit(() -> used.over(seconds)));
    RoutingSearchParameters how =
        com.google.ortools.constraintsolver.main.defaultRoutingSearchParameters().toBuilder()
            .setFirstSolutionStrategy(FirstSolutionStrategy.Value.PARALLEL_CHEAPEST_INSERTION)
            .setLocalSearchMetaheuristic(LocalSearchMetaheuristic.Value.GUIDED_LOCAL_SEARCH)
            .setTimeLimit(Duration.newBuilder().setSeconds(LONGEST_ON_THE_CLOCK))
            .build();
    Assignment found = model.solveWithParameters(how);
    List<List<Integer>> orders = new ArrayList<>();
    for (int day = 0; day < days; day++) {
      List<Integer> order = new ArrayList<>();
      for (long at = found.value(model.nextVar(model.start(day)));
          !model.isEnd(at);
          at = found.value(model.nextVar(at))) {
        order.add(node[numbers.indexToNode(at)]);
      }
      orders.add(order);
    }
    return orders;
  }

  private static int[] shuffled(int n, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int[] node = IntStream.rangeClosed(0, n).toArray();
    for (int i = n - 1; i > 0; i--) {
      int j = random.nextInt(i + 1);
      int held = node[i];
      node[i] = node[j];
      node[j] = held;
    }
    return node;
  }
}
