package dev.dogleg.cli.terms;

import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.PetLook;
import dev.dogleg.groom.StopQuestions;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.model.Book;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.Client;
import dev.dogleg.model.Pet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Tells the tags and the water of stops. */
public final class StopTagger {
  /** The one tag of an errand. */
  public static final String ERRAND = "errand";

  private final StopQuestions questions;
  private final Map<String, Pet> pets;
  private final Map<String, PetLook> looks = new HashMap<>();
  private final WaterLitres litres = WaterLitres.starter();

  /**
   * For one book.
   *
   * @param tables groom tables in force
   * @param book the book
   */
  public StopTagger(GroomTables tables, Book book) {
    this.questions = new StopQuestions(tables, book.business());
    this.pets = book.petsById();
  }

  /** A pet as booked, with what it looks like. */
  record TaggedPet(Pet pet, BookedPet booked, PetLook look) {}

  /**
   * Tags of the pets of a stop.
   *
   * @param client whose
   * @param bookings the bookings of the stop
   * @param date the day
   * @return one set a pet, each with the tags of client and booking
   */
  public List<Set<String>> petTags(Client client, List<Booking> bookings, LocalDate date) {
    List<Set<String>> all = new ArrayList<>();
    for (Booking booking : bookings) {
      for (BookedPet booked : booking.pets()) {
        Set<String> tags = PetTags.of(tagged(booked), date);
        client.tags().stream()
            .filter(tag -> tag.holdsOn(date))
            .forEach(tag -> tags.add(tag.name()));
        booking.told().ifPresent(told -> tags.add("told"));
        if (booking.status() == BookingStatus.WAITING) {
          tags.add("waiting");
        }
        all.add(tags);
      }
    }
    return all;
  }

  /**
   * Water of a stop.
   *
   * @param bookings its bookings
   * @return fresh water, and as much grey water
   */
  public WaterUse water(List<Booking> bookings) {
    int sum = 0;
    for (Booking booking : bookings) {
      for (BookedPet booked : booking.pets()) {
        sum += litres.of(tagged(booked));
      }
    }
    int millilitres = Math.min(2_000_000, 1_000 * sum);
    return new WaterUse(millilitres, millilitres);
  }

  private TaggedPet tagged(BookedPet booked) {
    Pet pet = pets.get(booked.petId());
    return new TaggedPet(pet, booked, looks.computeIfAbsent(pet.id(), id -> questions.look(pet)));
  }
}
