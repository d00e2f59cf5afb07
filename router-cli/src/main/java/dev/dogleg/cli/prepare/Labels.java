package dev.dogleg.cli.prepare;

import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Pet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** How a stop is shown: names and what matters at the door, never a phone or a gate code. */
final class Labels {
  private Labels() {}

  /** {@return client and pets in one line} */
  static String who(DayStop stop, Book book) {
    return stop.client().name() + ": " + String.join(", ", names(stop, book.petsById()));
  }

  private static List<String> names(DayStop stop, Map<String, Pet> pets) {
    List<String> names = new ArrayList<>();
    for (Booking booking : stop.bookings()) {
      booking.pets().forEach(booked -> names.add(pets.get(booked.petId()).name()));
    }
    return names;
  }

  static StopLabel of(DayStop stop, int seconds, Door door, Book book) {
    Map<String, Pet> pets = book.petsById();
    List<String> names = names(stop, pets);
    List<String> notes = new ArrayList<>();
    for (Booking booking : stop.bookings()) {
      booking.told().ifPresent(told -> notes.add("told " + told.arriveWithin()));
    }
    if (!stop.agreed()) {
      notes.add("waiting list");
    }
    if (!door.note().isEmpty()) {
      notes.add(door.note());
    }
    return new StopLabel(
        stop.visitId(),
        stop.bookings().stream().map(Booking::id).toList(),
        stop.client().name(),
        names,
        seconds,
        stop.agreed(),
        String.join("; ", notes));
  }
}
