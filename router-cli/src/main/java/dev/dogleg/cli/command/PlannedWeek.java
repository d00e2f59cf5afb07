package dev.dogleg.cli.command;

import dev.dogleg.cli.export.PlannedDay;
import dev.dogleg.cli.export.ProofText;
import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.cli.export.WeekLeftOut;
import dev.dogleg.cli.prepare.PreparedWeek;
import dev.dogleg.cli.prepare.ToldOdds;
import dev.dogleg.cli.terms.ServedSeconds;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.WeekNoRoom;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.Pet;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** A planned week as it is shown and written. */
final class PlannedWeek {
  private final PreparedWeek week;
  private final WeekPlan plan;
  private final Book book;
  private final long seed;

  PlannedWeek(PreparedWeek week, WeekPlan plan, Book book, long seed) {
    this.week = week;
    this.plan = plan;
    this.book = book;
    this.seed = seed;
  }

  WeekPlan plan() {
    return plan;
  }

  /** {@return the sentence of proof} */
  String proof() {
    return ProofText.week(plan);
  }

  /** {@return all van-days in their order, those without a visit too} */
  List<PlannedDay> days() {
    List<PlannedDay> days = new ArrayList<>();
    for (VanDay day : week.days()) {
      DayPlan ofDay = plan.days().get(day.number());
      days.add(
          PlannedDay.partOfWeek(
              ofDay,
              day.groomer().name(),
              day.van().name(),
              week.places(),
              labels(day, ofDay),
              seed,
              proof()));
    }
    return days;
  }

  /** Labels with the minutes that the rules make of the day's order. */
  private Map<String, StopLabel> labels(VanDay day, DayPlan ofDay) {
    Map<String, StopLabel> labels = new HashMap<>(week.labels().get(day.number()));
    List<String> served = served(ofDay);
    Map<String, Integer> asked = new HashMap<>();
    served.forEach(id -> asked.put(id, labels.get(id).serviceSeconds()));
    ServedSeconds.of(served, asked, week.request().days().get(day.number()).terms().rules())
        .forEach(
            (id, seconds) -> labels.computeIfPresent(id, (key, label) -> label.taking(seconds)));
    int wanted = book.business().week().promises().keptPercent();
    ToldOdds.percents(week.request(), day.number(), ofDay)
        .forEach(
            (id, percent) ->
                labels.computeIfPresent(id, (key, label) -> label.noting(odds(percent, wanted))));
    return labels;
  }

  /** So many of a hundred a single told time may fall short: others of its day make up for it. */
  private static final int FEWER = 5;

  private static String odds(int percent, int wanted) {
    return "kept in "
        + percent
        + " of 100"
        + (percent < wanted - FEWER ? ", " + wanted + " are wanted" : "");
  }

  private static List<String> served(DayPlan ofDay) {
    return ofDay.stops().stream()
        .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
        .map(PlannedStop::visitId)
        .toList();
  }

  /**
   * {@return what each van-day earns by its pets' prices, as an amount; empty where none is known}
   */
  List<String> values() {
    Map<String, Pet> pets = book.petsById();
    int digits = Math.max(0, book.business().currency().getDefaultFractionDigits());
    List<String> values = new ArrayList<>();
    for (DayPlan ofDay : plan.days()) {
      long sum = 0;
      boolean known = false;
      for (String id : served(ofDay)) {
        for (Booking booking : week.bookings().getOrDefault(id, List.of())) {
          for (var booked : booking.pets()) {
            known |= pets.get(booked.petId()).priceMinor().isPresent();
            sum += pets.get(booked.petId()).priceMinor().orElse(0);
          }
        }
      }
      values.add(known ? BigDecimal.valueOf(sum, digits).toPlainString() : "");
    }
    return values;
  }

  /** {@return what is left out, by id} */
  List<WeekLeftOut> leftOut() {
    List<WeekLeftOut> left = new ArrayList<>();
    LocalDate last = week.days().get(week.days().size() - 1).day().date();
    for (WeekNoRoom noRoom : plan.noRoom()) {
      StopLabel label = week.stops().get(noRoom.bookingId());
      Optional<LocalDate> later =
          week.bookings().getOrDefault(noRoom.bookingId(), List.of()).stream()
              .flatMap(booking -> booking.dates().stream())
              .map(DateSpan::to)
              .filter(to -> to.isAfter(last))
              .min(LocalDate::compareTo);
      Optional<StopLabel> other = noRoom.change().map(change -> week.stops().get(change.otherId()));
      left.add(new WeekLeftOut(noRoom, label, later, other));
    }
    return left;
  }

  /** {@return how many stops stay where the earlier plan had them; empty where there was none} */
  String stability() {
    if (week.before().isEmpty()) {
      return "";
    }
    int stay = 0;
    int all = 0;
    for (VanDay day : week.days()) {
      for (String id : served(plan.days().get(day.number()))) {
        Integer before = week.before().get(id);
        all += before == null ? 0 : 1;
        stay += before != null && before == day.number() ? 1 : 0;
      }
    }
    return "Of " + all + " stops in the earlier plan, " + stay + " keep their day.";
  }
}
