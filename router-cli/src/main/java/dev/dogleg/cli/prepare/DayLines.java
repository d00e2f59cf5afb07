package dev.dogleg.cli.prepare;

import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.model.Business;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.roads.RoadNetwork;
import dev.dogleg.roads.RoadPoint;
import dev.dogleg.roads.RoadRoute;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws the drives of a planned day along the roads of its van. */
public final class DayLines {
  private DayLines() {}

  /**
   * The lines of a day.
   *
   * @param week where its places lie
   * @param day the van-day
   * @param plan its plan
   * @param business whose
   * @param map the map
   * @return one line a drive, in order; a drive that cannot be drawn from the places as shown has
   *     none
   */
  public static List<List<GeoPoint>> of(
      PreparedWeek week, VanDay day, DayPlan plan, Business business, MapInUse map) {
    RoadNetwork roads = map.roads(VanCards.of(day.van(), business));
    List<List<GeoPoint>> lines = new ArrayList<>();
    int before = -1;
    for (PlannedStop stop : plan.stops()) {
      if (before >= 0 && before != stop.place()) {
        line(roads, week.places().get(before).point(), week.places().get(stop.place()).point())
            .ifPresent(lines::add);
      }
      before = stop.place();
    }
    return lines;
  }

  private static Optional<List<GeoPoint>> line(RoadNetwork roads, GeoPoint from, GeoPoint to) {
    Optional<RoadPoint> start = roads.snap(from, "").point();
    Optional<RoadPoint> end = roads.snap(to, "").point();
    return start.isPresent() && end.isPresent()
        ? roads.route(start.get(), end.get()).map(RoadRoute::points)
        : Optional.empty();
  }
}
