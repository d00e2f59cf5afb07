package dev.dogleg.cli.prepare;

import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.cli.terms.DraftChoice;
import dev.dogleg.cli.terms.StopTagger;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.Windows;
import dev.dogleg.groom.StopEstimate;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Client;
import dev.dogleg.model.DayLimits;
import dev.dogleg.model.Lock;
import dev.dogleg.model.Moves;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/** Gives the stops of a week their choices: limits, minutes, tags and water on each van-day. */
final class WeekChoices {
  /** How far a locked time may move either way. */
  private static final int LOCKED_TIME_SECONDS = 900;

  private final Book book;
  private final StopMinutes minutes;
  private final StopTagger tagger;
  private final WeekPlaces places;
  private final EarlierPlan earlier;

  WeekChoices(
      Book book, StopMinutes minutes, StopTagger tagger, WeekPlaces places, EarlierPlan earlier) {
    this.book = book;
    this.minutes = minutes;
    this.tagger = tagger;
    this.places = places;
    this.earlier = earlier;
  }

  /** Adds a choice for each van-day on which the van can drive there. */
  void add(WeekStop stop, List<VanDay> days) {
    OptionalInt place = places.number(stop.place());
    if (place.isEmpty()) {
      return;
    }
    stop.days()
        .forEach(
            (number, moveSeconds) -> {
              VanDay day = days.get(number);
              int start = places.number(day.start()).orElseThrow();
              int end = places.number(day.end()).orElseThrow();
              if (places.reaches(day.van(), start, place.getAsInt(), end)) {
                choice(stop, day, place.getAsInt(), moveSeconds);
              }
            });
  }

  private void choice(WeekStop stop, VanDay day, int place, int moveSeconds) {
    DraftChoice choice;
    if (stop.errand().isPresent()) {
      DayLimits limits = stop.errand().get().when().on(day.day()).orElse(DayLimits.NONE);
      List<Set<String>> tags = List.of(Set.of(StopTagger.ERRAND));
      choice =
          new DraftChoice(
              day.number(), place, limits, stop.errand().get().seconds(), tags, WaterUse.NONE);
    } else {
      Client client = stop.client().orElseThrow();
      DayLimits limits =
          locked(stop, day, WeekStops.limits(stop.bookings(), day).orElse(DayLimits.NONE));
      DayStop dayStop = new DayStop(client, stop.bookings(), limits, true);
      StopEstimate estimate = minutes.of(day.groomer(), dayStop, day.day().date());
      choice =
          new DraftChoice(
              day.number(),
              place,
              limits,
              minutes.plannedSeconds(estimate),
              tagger.petTags(client, stop.bookings(), day.day().date()),
              tagger.water(stop.bookings()));
      choice.varies(StopMinutes.spread(estimate));
    }
    choice.dearer((long) moveSeconds * Prices.SIXTIETHS_PER_DRIVE_SECOND);
    stop.draft().add(choice);
  }

  /** A locked time narrows the arrival, unless what was told or asked for leaves nothing of it. */
  private DayLimits locked(WeekStop stop, VanDay day, DayLimits limits) {
    for (Booking booking : stop.bookings()) {
      Optional<EarlierPlan.Spot> spot = earlier.of(booking.id());
      if (booking.terms().lock().filter(Lock.TIME::equals).isPresent()
          && spot.isPresent()
          && spot.get().arriveWall().isPresent()) {
        int at =
            day.day()
                .elapsedAt(java.time.LocalTime.ofSecondOfDay(spot.get().arriveWall().getAsInt()));
        TimeWindow span =
            new TimeWindow(Math.max(0, at - LOCKED_TIME_SECONDS), at + LOCKED_TIME_SECONDS);
        List<TimeWindow> both = Windows.common(limits.arriveWithin(), List.of(span));
        return both.isEmpty()
            ? limits
            : new DayLimits(both, limits.doneBySeconds(), limits.vanWithin(), limits.first());
      }
    }
    return limits;
  }

  /** How a stop is shown on a van-day. */
  StopLabel label(WeekStop stop, DraftChoice choice, List<VanDay> days) {
    if (stop.errand().isPresent()) {
      return new StopLabel(
          stop.draft().id(),
          List.of(stop.draft().id()),
          stop.errand().get().name(),
          List.of(),
          choice.seconds(),
          true,
          notes(stop.errand().get().note(), choice.lines()),
          true);
    }
    DayStop dayStop =
        new DayStop(stop.client().orElseThrow(), stop.bookings(), choice.limits(), true);
    Door door = places.door(stop.place()).orElseThrow();
    StopLabel label = Labels.of(dayStop, choice.seconds(), door, book);
    List<String> lines = new ArrayList<>();
    for (Booking booking : stop.bookings()) {
      booking
          .dates()
          .filter(span -> !span.holds(days.get(choice.day()).day().date()))
          .ifPresent(
              span ->
                  lines.add(
                      "moved from "
                          + span
                          + (booking.terms().moves() == Moves.ASK
                              ? ": ask first"
                              : ": tell them")));
    }
    lines.addAll(choice.lines());
    return new StopLabel(
        label.visitId(),
        label.bookings(),
        label.client(),
        label.pets(),
        label.serviceSeconds(),
        label.booked(),
        notes(label.note(), lines));
  }

  /** How a stop is shown that no van-day is left for. */
  StopLabel plain(WeekStop stop) {
    if (stop.errand().isPresent()) {
      String id = stop.draft().id();
      String name = stop.errand().get().name();
      return new StopLabel(id, List.of(id), name, List.of(), 0, true, "", true);
    }
    Client client = stop.client().orElseThrow();
    DayStop dayStop = new DayStop(client, stop.bookings(), DayLimits.NONE, true);
    return Labels.of(dayStop, 0, places.door(stop.place()).orElseThrow(), book);
  }

  private static String notes(String note, List<String> lines) {
    Set<String> all = new java.util.LinkedHashSet<>();
    if (!note.isEmpty()) {
      all.add(note);
    }
    all.addAll(lines);
    return String.join("; ", all);
  }
}
