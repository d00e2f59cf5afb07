package dev.dogleg.audit;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** The days of one planned week joined with their request. Built once, then read only. */
final class WeekRows {
  private final WeekRequest request;
  private final Map<String, WeekBooking> bookings = new HashMap<>();
  private final List<Set<String>> served = new ArrayList<>();
  private final Map<String, List<Integer>> daysOf = new TreeMap<>();

  /** Joins; days beyond those asked for are not read. */
  WeekRows(WeekRequest request, WeekPlan plan) {
    this.request = request;
    request.bookings().forEach(booking -> bookings.put(booking.id(), booking));
    for (int day = 0; day < request.days().size(); day++) {
      served.add(day < plan.days().size() ? ids(plan.days().get(day)) : Set.of());
      for (String id : served.get(day)) {
        daysOf.computeIfAbsent(id, key -> new ArrayList<>()).add(day);
      }
    }
  }

  private static Set<String> ids(DayPlan plan) {
    Set<String> ids = new TreeSet<>();
    for (PlannedStop stop : plan.stops()) {
      if (stop.kind() == Kind.VISIT) {
        ids.add(stop.visitId());
      }
    }
    return ids;
  }

  /** The booking of an id, or null. */
  WeekBooking booking(String id) {
    return bookings.get(id);
  }

  /** Ids of the visits that a day makes, known or not, in id order. */
  Set<String> served(int day) {
    return served.get(day);
  }

  /** The days on which something is served, by id. */
  Map<String, List<Integer>> daysOf() {
    return daysOf;
  }

  /** The choice of a booking on a day. */
  static Optional<DayChoice> choice(WeekBooking booking, int day) {
    return booking.choices().stream().filter(choice -> choice.day() == day).findFirst();
  }

  /** What a day serves of what was asked of it: the visits of the choices there. */
  List<Visit> visits(int day) {
    List<Visit> visits = new ArrayList<>();
    for (WeekBooking booking : request.bookings()) {
      if (served.get(day).contains(booking.id())) {
        choice(booking, day).ifPresent(choice -> visits.add(choice.visit()));
      }
    }
    return visits;
  }

  /** A van-day asked for some visits. */
  DayRequest asked(int day, List<Visit> visits) {
    return request.asking(day, visits);
  }
}
