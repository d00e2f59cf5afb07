package dev.dogleg.cli.command;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.cli.prepare.PreparedWeek;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Finding;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekNoRoom;
import dev.dogleg.itinerary.WeekPlan;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Checks a planned week before it is written: every day by the audit, and over the days that each
 * booking is served once, on a day it may be made, or left out and said so.
 */
final class WeekCheck {
  private final PreparedWeek week;
  private final WeekPlan plan;
  private final List<Finding> findings = new ArrayList<>();
  private final Map<String, Integer> servedOn = new HashMap<>();

  private WeekCheck(PreparedWeek week, WeekPlan plan) {
    this.week = week;
    this.plan = plan;
  }

  static List<Finding> of(PreparedWeek week, WeekPlan plan) {
    WeekCheck check = new WeekCheck(week, plan);
    check.days();
    check.bookings();
    return check.findings;
  }

  private void days() {
    if (plan.days().size() != week.days().size()) {
      add("week-days", "", plan.days().size(), week.days().size(), "not every day is planned");
      return;
    }
    for (int day = 0; day < plan.days().size(); day++) {
      DayPlan ofDay = plan.days().get(day);
      List<Visit> visits = new ArrayList<>();
      for (PlannedStop stop : ofDay.stops()) {
        if (stop.kind() == PlannedStop.Kind.VISIT) {
          visit(stop.visitId(), day).ifPresent(visits::add);
        }
      }
      WeekDay asked = week.request().days().get(day);
      findings.addAll(
          DayAudit.check(
              new DayRequest(
                  asked.shift(),
                  visits,
                  asked.travel(),
                  week.request().prices(),
                  asked.terms(),
                  week.request().seed(),
                  week.request().effort()),
              ofDay));
    }
  }

  private Optional<Visit> visit(String id, int day) {
    Integer before = servedOn.putIfAbsent(id, day);
    if (before != null) {
      add("served-twice", id, 2, 1, id + " is served twice");
      return Optional.empty();
    }
    Optional<DayChoice> choice =
        week.request().bookings().stream()
            .filter(booking -> booking.id().equals(id))
            .flatMap(booking -> booking.choices().stream())
            .filter(one -> one.day() == day)
            .findFirst();
    if (choice.isEmpty()) {
      add("other-day", id, day, -1, id + " is served on a day that it may not be made");
    }
    return choice.map(DayChoice::visit);
  }

  private void bookings() {
    int counted = 0;
    long cost = plan.days().stream().mapToLong(DayPlan::costSixtieths).sum();
    List<String> left = plan.noRoom().stream().map(WeekNoRoom::bookingId).toList();
    for (WeekBooking booking : week.request().bookings()) {
      Integer day = servedOn.get(booking.id());
      if (day == null) {
        counted += booking.counted() ? 1 : 0;
        cost += booking.leftOutSixtieths();
        if (!left.contains(booking.id())) {
          add("not-said", booking.id(), 0, 1, booking.id() + " is neither served nor left out");
        }
      } else {
        cost +=
            booking.choices().stream()
                .filter(choice -> choice.day() == day)
                .mapToLong(DayChoice::extraSixtieths)
                .sum();
        if (left.contains(booking.id())) {
          add("said-wrongly", booking.id(), 1, 0, booking.id() + " is served and left out");
        }
      }
    }
    if (counted != plan.leftOutCounted()) {
      add("left-out-count", "", plan.leftOutCounted(), counted, "the number left out is wrong");
    }
    if (cost != plan.costSixtieths()) {
      add("week-cost", "", plan.costSixtieths(), cost, "the cost of the week is wrong");
    }
  }

  private void add(String code, String id, long measured, long allowed, String text) {
    findings.add(new Finding(code, -1, id, measured, allowed, text));
  }
}
