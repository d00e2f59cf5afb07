package dev.dogleg.cli.command;

import dev.dogleg.cli.export.FitSheet;
import dev.dogleg.cli.export.StopLabel;
import dev.dogleg.cli.prepare.EarlierPlan;
import dev.dogleg.cli.prepare.PreparedWeek;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.fit.FitAnswer;
import dev.dogleg.fit.FitWeek;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.model.Book;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Pet;
import dev.dogleg.model.PetFact;
import dev.dogleg.model.Worth;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.TreeSet;

/** Puts beside each answer what is needed to show it. */
final class FitSheets {
  private final Book book;
  private final PreparedWeek week;
  private final List<FitSheet.Day> days = new ArrayList<>();
  private final Map<String, Pet> pets;

  FitSheets(Book book, PreparedWeek week, FitWeek fit, EarlierPlan earlier) {
    this.book = book;
    this.week = week;
    pets = book.petsById();
    for (VanDay day : week.days()) {
      days.add(
          new FitSheet.Day(
              day.groomer().name(),
              day.day(),
              week.labels().get(day.number()),
              OtherTimes.of(
                  day, fit.days().get(day.number()), week.labels().get(day.number()), earlier)));
    }
  }

  /** The sheet of one answer. */
  FitSheet of(WeekBooking newcomer, FitAnswer answer) {
    StopLabel label = week.stops().get(newcomer.id());
    List<Booking> bookings = week.bookings().get(newcomer.id());
    String address = book.clientsById().get(bookings.get(0).clientId()).place().address();
    Worth worth = book.business().worth();
    return new FitSheet(
        label.who(),
        address,
        answer,
        days,
        minutes(newcomer, bookings),
        new FitSheet.Money(book.business().currency(), worth.hourMinor(), price(bookings)));
  }

  private FitSheet.Minutes minutes(WeekBooking newcomer, List<Booking> bookings) {
    int day = newcomer.choices().get(0).day();
    Optional<ServiceSpread> spread =
        week.request()
            .days()
            .get(day)
            .terms()
            .odds()
            .map(OddsTerms::services)
            .map(services -> services.get(newcomer.id()));
    TreeSet<PetFact> guessed = new TreeSet<>();
    for (Booking booking : bookings) {
      for (BookedPet booked : booking.pets()) {
        Pet pet = pets.get(booked.petId());
        guessed.addAll(pet.guessed());
        if (pet.size().isEmpty() && pet.weightGrams().isEmpty()) {
          guessed.add(PetFact.SIZE);
        }
        if (pet.coat().isEmpty()) {
          guessed.add(PetFact.COAT);
        }
      }
    }
    return new FitSheet.Minutes(
        newcomer.choices().get(0).visit().serviceSeconds(),
        spread,
        guessed.stream()
            // What kind of animal it is follows from the breed; it is no matter of a call.
            .filter(fact -> fact != PetFact.SPECIES)
            .map(fact -> fact.name().toLowerCase(Locale.ROOT).replace('_', ' '))
            .toList());
  }

  private OptionalLong price(List<Booking> bookings) {
    long sum = 0;
    boolean known = false;
    for (Booking booking : bookings) {
      for (BookedPet booked : booking.pets()) {
        OptionalLong one = pets.get(booked.petId()).priceMinor();
        known |= one.isPresent();
        sum += one.orElse(0);
      }
    }
    return known ? OptionalLong.of(sum) : OptionalLong.empty();
  }
}
