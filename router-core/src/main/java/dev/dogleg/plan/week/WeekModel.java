package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A request as the master computes on it: bookings numbered in id order, so that nothing depends on
 * the order of rows, and van-days that are alike joined into {@link VanKind}s.
 */
final class WeekModel {
  private final WeekRequest request;
  private final List<WeekBooking> bookings;
  private final List<VanKind> kinds;
  private final VanKind[] ofDay;

  WeekModel(WeekRequest request) {
    this.request = request;
    bookings = request.bookings().stream().sorted(Comparator.comparing(WeekBooking::id)).toList();
    Map<VanKind.Likeness, List<Integer>> alike = new LinkedHashMap<>();
    for (int day = 0; day < request.days().size(); day++) {
      alike
          .computeIfAbsent(
              VanKind.likeness(request.days().get(day), day, bookings), key -> new ArrayList<>())
          .add(day);
    }
    kinds = new ArrayList<>();
    alike.forEach(
        (likeness, days) ->
            kinds.add(
                new VanKind(kinds.size(), request.days().get(days.get(0)), days, likeness, this)));
    ofDay = new VanKind[request.days().size()];
    kinds.forEach(kind -> kind.vanDays().forEach(day -> ofDay[day] = kind));
  }

  WeekRequest request() {
    return request;
  }

  /** {@return number of bookings} */
  int size() {
    return bookings.size();
  }

  /** {@return a booking, by its number in id order} */
  WeekBooking booking(int number) {
    return bookings.get(number);
  }

  boolean counted(int booking) {
    return bookings.get(booking).counted();
  }

  long leftOutSixtieths(int booking) {
    return bookings.get(booking).leftOutSixtieths();
  }

  /** {@return number of counted bookings} */
  int countedBookings() {
    return (int) bookings.stream().filter(WeekBooking::counted).count();
  }

  /** {@return kinds of van-days, in the order of their first van-days} */
  List<VanKind> kinds() {
    return kinds;
  }

  /** {@return the kind of a van-day} */
  VanKind kindOf(int vanDay) {
    return ofDay[vanDay];
  }

  /** {@return a van-day, as it is or changed, that is asked to serve some visits} */
  DayRequest request(WeekDay vanDay, List<Visit> asked, long effort) {
    return new DayRequest(
        vanDay.shift(),
        asked,
        vanDay.travel(),
        request.prices(),
        vanDay.terms(),
        request.seed(),
        effort);
  }
}
