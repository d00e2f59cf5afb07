package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.Pet;
import dev.dogleg.model.PetFact;
import dev.dogleg.model.SizeClass;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** One wide bookings file is a book. */
class WideBookingsTest {
  @TempDir Path dir;

  @Test
  void threeLinesWithClientPetAndAddressAreABook() {
    Folder folder =
        Folder.in(dir)
            .with(
                "day.csv",
                """
                client,pet,address
                Okafor,Biscuit,12 Mill Lane
                Lindqvist,Pepper,3 Station Road
                """);
    ReadBook read = folder.readFile("day.csv");
    assertEquals(List.of(), Folder.loud(read));
    Book book = read.book().orElseThrow();
    assertEquals(
        List.of("okafor.biscuit", "lindqvist.pepper"),
        book.bookings().stream().map(Booking::id).toList());
    assertEquals("12 Mill Lane", book.clients().get(0).place().address());
  }

  @Test
  void firstColumnsOfTheIssueInAnyOrder() {
    Folder folder =
        Folder.in(dir)
            .with(
                "day.csv",
                """
                minutes;when;service;breed;address;pet;client;date
                75;9-12;full;Miniature Poodle;12 Mill Lane;Biscuit;Okafor;2027-03-02
                ;PM;bath;doodle, big, bad coat;3 Station Road;Pepper;Lindqvist;2027-03-02
                """);
    ReadBook read = folder.readFile("day.csv");
    assertEquals(List.of(), Folder.loud(read));
    Book book = read.book().orElseThrow();
    assertEquals(OptionalInt.of(75), book.bookings().get(0).minutes());
    assertEquals("okafor.biscuit@2027-03-02", book.bookings().get(0).id());
    Pet doodle = book.pets().get(1);
    assertEquals(SizeClass.LARGE, doodle.size().orElseThrow());
    assertTrue(doodle.guessed().contains(PetFact.SIZE));
    assertEquals(CoatState.MATTED, book.bookings().get(1).pets().get(0).coatState());
    assertTrue(book.bookings().get(1).pets().get(0).stateGuessed());
  }

  @Test
  void twoPetsInOneRowAreOneBooking() {
    Folder folder =
        Folder.in(dir)
            .with(
                "day.csv",
                """
                client,pet,address,breed,service
                Okafor,Biscuit; Gravy,12 Mill Lane,Beagle; Pug,full; bath
                """);
    Book book = folder.readFile("day.csv").book().orElseThrow();
    assertEquals(1, book.bookings().size());
    assertEquals(
        List.of("Beagle", "Pug"), book.pets().stream().map(p -> p.breed().orElse("")).toList());
    assertEquals(
        List.of(List.of("full"), List.of("bath")),
        book.bookings().get(0).pets().stream().map(p -> p.services()).toList());
  }

  @Test
  void aClientHasOneDoor() {
    Folder folder =
        Folder.in(dir)
            .with(
                "day.csv",
                """
                client,pet,address
                Okafor,Biscuit,12 Mill Lane
                Okafor,Gravy,99 Other Street
                """);
    ReadBook read = folder.readFile("day.csv");
    assertEquals(
        List.of("ASIDE " + dir.resolve("day.csv") + ":3:address two-values"), Folder.loud(read));
    assertEquals(1, read.book().orElseThrow().bookings().size());
  }
}
