package dev.dogleg.cli.command;

import dev.dogleg.cli.export.OpeningsSheet.NotPlanned;
import dev.dogleg.cli.prepare.EarlierPlan;
import dev.dogleg.cli.prepare.FollowedWeek;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.PreparedWeek;
import dev.dogleg.cli.prepare.WeekPreparation;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.VanDays;
import dev.dogleg.fault.Faults;
import dev.dogleg.fit.FitAnswer.Verdict;
import dev.dogleg.fit.FitQuestion;
import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.fit.FitWeek;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.Client;
import dev.dogleg.plan.week.WeekPlanner;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * The days of which a table of openings can speak: planned ones, and later ones for which nobody
 * stands in the book; with whoever came into the book after it was planned.
 */
final class OpenDays {
  private final BookInput input;
  private final Book book;
  private final EarlierPlan earlier;
  private final List<LocalDate> dates = new ArrayList<>();
  private final List<NotPlanned> notPlanned = new ArrayList<>();
  private final Set<String> added = new HashSet<>();
  private final List<String> notCounted = new ArrayList<>();
  private boolean full;
  private int room = WeekPreparation.MOST_A_DAY;

  private OpenDays(BookInput input, EarlierPlan earlier) {
    this.input = input;
    this.book = input.book();
    this.earlier = earlier;
  }

  /**
   * Sorts the days.
   *
   * @param weeks so many weeks from the plan's first day
   * @param faults takes what stops the run
   * @throws IllegalArgumentException where the plan does not hold
   */
  static OpenDays of(
      BookInput input, PlannedDates planned, int weeks, MapInUse map, Faults faults) {
    OpenDays open = new OpenDays(input, planned.earlier());
    LocalDate first = planned.dates().get(0);
    LocalDate end = first.plusWeeks(weeks);
    LocalDate last = planned.dates().get(planned.dates().size() - 1);
    first.datesUntil(end).filter(date -> !date.isAfter(last)).forEach(open.dates::add);
    first.datesUntil(end).filter(date -> date.isAfter(last)).forEach(open::later);
    if (!open.days().isEmpty()) {
      open.takeIn(map, faults);
    }
    return open;
  }

  /** {@return the days the table speaks of, in order} */
  List<LocalDate> dates() {
    return List.copyOf(dates);
  }

  /** {@return where the plan has bookings} */
  EarlierPlan earlier() {
    return earlier;
  }

  /** {@return their van-days} */
  List<VanDay> days() {
    return VanDays.of(book.business(), book.week().days(), dates);
  }

  /** {@return worked days of which it cannot speak, in order} */
  List<NotPlanned> notPlanned() {
    return notPlanned.stream().sorted(Comparator.comparing(NotPlanned::date)).toList();
  }

  /** {@return who stands in the book, not in the plan, and may be on several days} */
  List<String> notCounted() {
    return List.copyOf(notCounted);
  }

  /** {@return whether somebody in the book finds no room on the only day it may be} */
  boolean full() {
    return full;
  }

  /**
   * {@return so many more stops may ask for every day of a week in which the book's own do, 0 or
   * more}
   */
  int room() {
    return room;
  }

  /** Where everybody stands who counts, by stop: planned ones, and those taken in. */
  Map<String, Integer> placed(PreparedWeek week) {
    Map<String, Integer> placed = new TreeMap<>(week.before());
    for (WeekBooking stop : week.request().bookings()) {
      if (added.contains(stop.id()) && !placed.containsKey(stop.id())) {
        placed.put(stop.id(), stop.choices().get(0).day());
      }
    }
    return placed;
  }

  /** A day after the plan's last: free where nobody stands in the book for it. */
  private void later(LocalDate date) {
    List<VanDay> days = VanDays.of(book.business(), book.week().days(), List.of(date));
    Map<String, Client> clients = book.clientsById();
    List<String> waiting = new ArrayList<>();
    for (Booking booking : book.bookings()) {
      boolean here =
          booking.status() == BookingStatus.BOOKED
              && earlier.of(booking.id()).isEmpty()
              && days.stream()
                  .anyMatch(day -> FollowedWeek.mayBeOn(book, days, booking, day.number()));
      if (here) {
        waiting.add(clients.get(booking.clientId()).name());
      }
    }
    book.week().errands().stream()
        .filter(errand -> errand.dates().holds(date) && earlier.of(errand.id()).isEmpty())
        .forEach(errand -> waiting.add(errand.name()));
    if (waiting.isEmpty() || days.isEmpty()) {
      dates.add(date);
    } else {
      notPlanned.add(new NotPlanned(date, waiting.stream().distinct().toList()));
    }
  }

  /** Whoever came into the book since, and may be on one day only, is on that day. */
  private void takeIn(MapInUse map, Faults faults) {
    List<VanDay> days = days();
    Faults preparing = new Faults();
    List<Booking> candidates =
        WeekPreparation.candidates(book, days, dates, earlier, input.rows(), preparing);
    Optional<PreparedWeek> prepared =
        WeekPreparation.of(
            book,
            candidates,
            days,
            earlier,
            input.tables(),
            map,
            input.rows(),
            1,
            WeekPlanner.USUAL_EFFORT,
            preparing);
    if (prepared.isEmpty()) {
      faults.addAll(preparing);
      return;
    }
    PreparedWeek week = prepared.get();
    room = room(week);
    Map<String, Integer> placed = new HashMap<>(week.before());
    for (WeekBooking stop : week.request().bookings()) {
      if (!stop.counted() || placed.containsKey(stop.id()) || stop.choices().isEmpty()) {
        continue;
      }
      String name = week.stops().get(stop.id()).client();
      if (stop.choices().size() > 1) {
        notCounted.add(name);
        continue;
      }
      FitWeek fit = FitWeek.of(week.request(), placed, Set.of(), unplaced(week, placed));
      FitQuestion question = FitQuestion.of(stop).withOtherDays(OtherDays.NEVER);
      int day = stop.choices().get(0).day();
      if (fit.ask(question).sameDays() == Verdict.FITS) {
        placed.put(stop.id(), day);
        added.add(stop.id());
      } else {
        LocalDate date = days.get(day).day().date();
        dates.remove(date);
        notPlanned.add(new NotPlanned(date, List.of(name)));
        full = true;
      }
    }
  }

  private static Set<String> unplaced(PreparedWeek week, Map<String, Integer> placed) {
    return week.request().bookings().stream()
        .map(WeekBooking::id)
        .filter(id -> !placed.containsKey(id))
        .collect(Collectors.toSet());
  }

  private static int room(PreparedWeek week) {
    int[] asking = new int[week.days().size()];
    week.request()
        .bookings()
        .forEach(stop -> stop.choices().forEach(choice -> asking[choice.day()]++));
    int most = Arrays.stream(asking).max().orElse(0);
    return Math.min(
        WeekPreparation.MOST_A_DAY - most,
        WeekRequest.MOST_BOOKINGS - week.request().bookings().size());
  }
}
