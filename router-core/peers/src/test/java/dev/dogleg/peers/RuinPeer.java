package dev.dogleg.peers;

import com.graphhopper.jsprit.core.algorithm.VehicleRoutingAlgorithm;
import com.graphhopper.jsprit.core.algorithm.box.Jsprit;
import com.graphhopper.jsprit.core.algorithm.state.StateManager;
import com.graphhopper.jsprit.core.problem.Location;
import com.graphhopper.jsprit.core.problem.VehicleRoutingProblem;
import com.graphhopper.jsprit.core.problem.constraint.ConstraintManager;
import com.graphhopper.jsprit.core.problem.constraint.HardRouteConstraint;
import com.graphhopper.jsprit.core.problem.cost.AbstractForwardVehicleRoutingTransportCosts;
import com.graphhopper.jsprit.core.problem.driver.Driver;
import com.graphhopper.jsprit.core.problem.job.Service;
import com.graphhopper.jsprit.core.problem.solution.VehicleRoutingProblemSolution;
import com.graphhopper.jsprit.core.problem.solution.route.VehicleRoute;
import com.graphhopper.jsprit.core.problem.solution.route.activity.TourActivity;
import com.graphhopper.jsprit.core.problem.vehicle.Vehicle;
import com.graphhopper.jsprit.core.problem.vehicle.VehicleImpl;
import com.graphhopper.jsprit.core.problem.vehicle.VehicleTypeImpl;
import com.graphhopper.jsprit.core.util.Solutions;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** jsprit: ruin and recreate with its usual strategies, told the true cost of each solution. */
final class RuinPeer implements WeekPeer {
  @Override
  public String title() {
    return "jsprit 1.8, ruin and recreate";
  }

  @Override
  public List<List<Integer>> search(WeekRequest week, double seconds, long seed) {
    PeerLegs legs = new PeerLegs(week);
    VehicleRoutingProblem problem = problem(week, legs);
    StateManager states = new StateManager(problem);
    ConstraintManager constraints = new ConstraintManager(problem, states);
    HardRouteConstraint daysAllowed =
        asked -> {
          int day = number(asked.getNewVehicle().getId());
          return legs.allows(number(asked.getJob().getId()), day)
              && asked.getRoute().getTourActivities().getJobs().stream()
                  .allMatch(job -> legs.allows(number(job.getId()), day));
        };
    constraints.addConstraint(daysAllowed);
    VehicleRoutingAlgorithm algorithm =
        Jsprit.Builder.newInstance(problem)
            .setStateAndConstraintManager(states, constraints)
            .addCoreStateAndConstraintStuff(true)
            .setRandom(new Random(seed))
            .setProperty(Jsprit.Parameter.THREADS, "1")
            .setProperty(Jsprit.Parameter.ITERATIONS, Integer.toString(Integer.MAX_VALUE))
            .setObjectiveFunction(solution -> cost(legs, solution))
            .buildAlgorithm();
    ThreadClock used = new ThreadClock();
    algorithm.setPrematureAlgorithmTermination(found -> used.over(seconds));
    VehicleRoutingProblemSolution best = Solutions.bestOf(algorithm.searchSolutions());
    List<List<Integer>> orders = new ArrayList<>();
    for (int day = 0; day < week.days().size(); day++) {
      orders.add(new ArrayList<>());
    }
    for (VehicleRoute route : best.getRoutes()) {
      orders.get(number(route.getVehicle().getId())).addAll(order(route));
    }
    return orders;
  }

  private static VehicleRoutingProblem problem(WeekRequest week, PeerLegs legs) {
    VehicleRoutingProblem.Builder builder = VehicleRoutingProblem.Builder.newInstance();
    builder.setFleetSize(VehicleRoutingProblem.FleetSize.FINITE);
    builder.setRoutingCost(
        new AbstractForwardVehicleRoutingTransportCosts() {
          @Override
          public double getDistance(Location from, Location to, double leave, Vehicle vehicle) {
            return legs.cost[from.getIndex()][to.getIndex()];
          }

          @Override
          public double getTransportTime(
              Location from, Location to, double leave, Driver driver, Vehicle vehicle) {
            return legs.drive[from.getIndex()][to.getIndex()];
          }

          @Override
          public double getTransportCost(
              Location from, Location to, double leave, Driver driver, Vehicle vehicle) {
            return legs.cost[from.getIndex()][to.getIndex()];
          }
        });
    for (int day = 0; day < week.days().size(); day++) {
      // a type of its own: vehicles of one type are taken for each other
      VehicleTypeImpl type =
          VehicleTypeImpl.Builder.newInstance("day" + day)
              .setCostPerWaitingTime((double) legs.waitPrice)
              .build();
      builder.addVehicle(
          VehicleImpl.Builder.newInstance(Integer.toString(day))
              .setType(type)
              .setStartLocation(place(legs.size))
              .setEarliestStart(legs.hours.fromSeconds())
              .setLatestArrival(legs.hours.toSeconds())
              .build());
    }
    for (int b = 0; b < legs.size; b++) {
      Service service =
          Service.Builder.newInstance(Integer.toString(b))
              .setLocation(place(b))
              .setServiceTime(legs.service(b))
              .addTimeWindow(legs.window(b).fromSeconds(), legs.window(b).toSeconds())
              .build();
      builder.addJob(service);
    }
    return builder.build();
  }

  private static Location place(int node) {
    return Location.Builder.newInstance().setIndex(node).setId("place" + node).build();
  }

  private static int number(String id) {
    return Integer.parseInt(id);
  }

  private static double cost(PeerLegs legs, VehicleRoutingProblemSolution solution) {
    long sum = LEFT_OUT * solution.getUnassignedJobs().size();
    for (VehicleRoute route : solution.getRoutes()) {
      sum += route.isEmpty() ? 0 : legs.costOf(order(route));
    }
    return (double) sum;
  }

  private static List<Integer> order(VehicleRoute route) {
    return route.getActivities().stream()
        .map(activity -> number(((TourActivity.JobActivity) activity).getJob().getId()))
        .toList();
  }
}
