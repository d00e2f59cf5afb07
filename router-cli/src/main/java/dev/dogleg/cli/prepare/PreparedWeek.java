package dev.dogleg.cli.prepare;

import dev.dogleg.cli.export.PlaceLabel;
import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.model.Booking;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Several van-days, ready to be planned together, and how their parts are shown.
 *
 * @param days van-days, numbered as in the request
 * @param request what is asked of the planner
 * @param places labels of the places, by place number
 * @param labels labels of the stops by van-day, then by id; a stop that may not be made on a
 *     van-day has none there
 * @param stops one label a stop, for those that are left out, by id
 * @param bookings bookings of the stops, by id; errands have none
 * @param before number of the van-day on which the earlier plan had a stop, by id; missing where it
 *     had none in this run
 */
public record PreparedWeek(
    List<VanDay> days,
    WeekRequest request,
    List<PlaceLabel> places,
    List<Map<String, StopLabel>> labels,
    Map<String, StopLabel> stops,
    Map<String, List<Booking>> bookings,
    Map<String, Integer> before) {
  /** Copies the collections. */
  public PreparedWeek {
    Objects.requireNonNull(request, "request");
    days = List.copyOf(days);
    places = List.copyOf(places);
    labels = labels.stream().map(Map::copyOf).toList();
    stops = Map.copyOf(stops);
    bookings = Map.copyOf(bookings);
    before = Map.copyOf(before);
  }
}
