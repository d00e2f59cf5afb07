package dev.dogleg.roads;

import com.graphhopper.storage.BaseGraph;
import com.graphhopper.util.EdgeIteratorState;
import com.graphhopper.util.FetchMode;
import dev.dogleg.model.GeoPoint;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Draws a path of edge keys on the map. */
final class RouteDrawer {
  private final BaseGraph base;
  private final RoadGraph graph;

  RouteDrawer(BaseGraph base, RoadGraph graph) {
    this.base = base;
    this.graph = graph;
  }

  /** Finds and draws the best drive of one pair; empty where no road leads. */
  Optional<RoadRoute> best(Workbench bench, Seat from, Seat to) {
    try (ManyToMany search = new ManyToMany(bench, List.of(to))) {
      ManyToMany.Meeting meeting = search.from(from)[0];
      return meeting == null
          ? Optional.empty()
          : Optional.of(draw(from, to, search.keys(meeting), search.sums(from, to, meeting)));
    }
  }

  private RoadRoute draw(Seat from, Seat to, int[] keys, PathSums sums) {
    List<GeoPoint> points = new ArrayList<>();
    List<String> names = new ArrayList<>();
    int restrictedCm = 0;
    int gates = 0;
    for (int i = 0; i < keys.length; i++) {
      int key = keys[i];
      int startCm = i == 0 ? from.arrivingCm(key) : 0;
      int endCm = i == keys.length - 1 ? to.arrivingCm(key) : graph.lengthCm[key >> 1];
      EdgeIteratorState edge = base.getEdgeIteratorStateForKey(key);
      addLine(points, edge, startCm, endCm, graph.lengthCm[key >> 1]);
      addName(names, edge.getName());
      restrictedCm += graph.restricted(key) ? endCm - startCm : 0;
      gates += graph.gate[key >> 1];
    }
    if (points.size() == 1) {
      points.add(points.get(0));
    }
    return new RoadRoute(
        points,
        sums.lengthMetres(),
        Arrays.stream(sums.classSeconds()).boxed().toList(),
        sums.turnSeconds(),
        (restrictedCm + 50) / 100,
        throughRestricted(keys),
        gates,
        names);
  }

  private static void addLine(
      List<GeoPoint> points, EdgeIteratorState edge, int startCm, int endCm, int wholeCm) {
    EdgeLine line = new EdgeLine(edge.fetchWayGeometry(FetchMode.ALL));
    double whole = Math.max(1, wholeCm);
    for (GeoPoint point : line.part(startCm / whole, Math.min(1, endCm / whole))) {
      if (points.isEmpty() || !points.get(points.size() - 1).equals(point)) {
        points.add(point);
      }
    }
  }

  private static void addName(List<String> names, String name) {
    if (!name.isBlank() && (names.isEmpty() || !names.get(names.size() - 1).equals(name))) {
      names.add(name);
    }
  }

  /** A restricted stretch with an open one before and after it. */
  private boolean throughRestricted(int[] keys) {
    int first = 0;
    int last = keys.length - 1;
    while (first < last && graph.restricted(keys[first])) {
      first++;
    }
    while (last > first && graph.restricted(keys[last])) {
      last--;
    }
    for (int i = first; i <= last; i++) {
      if (graph.restricted(keys[i]) && graph.lengthCm[keys[i] >> 1] > 0) {
        return first != last;
      }
    }
    return false;
  }
}
