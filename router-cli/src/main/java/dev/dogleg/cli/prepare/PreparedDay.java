package dev.dogleg.cli.prepare;

import dev.dogleg.cli.export.PlaceLabel;
import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Groomer;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * One groomer's day, ready to be planned, and how its parts are shown.
 *
 * @param groomer who works
 * @param van name of the van
 * @param request what is asked of the planner
 * @param places labels of the places, by place number
 * @param stops labels of the visits, by visit id
 * @param bookings bookings of the visits, by visit id
 */
public record PreparedDay(
    Groomer groomer,
    String van,
    DayRequest request,
    List<PlaceLabel> places,
    Map<String, StopLabel> stops,
    Map<String, List<Booking>> bookings) {
  /** Copies the collections. */
  public PreparedDay {
    Objects.requireNonNull(groomer, "groomer");
    Objects.requireNonNull(van, "van");
    Objects.requireNonNull(request, "request");
    places = List.copyOf(places);
    stops = Map.copyOf(stops);
    bookings = Map.copyOf(bookings);
  }
}
