package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.cli.words.MapBounds;
import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.Client;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.Pet;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import dev.dogleg.model.Tag;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book folder with everything in it. */
class BookFolderTest {
  @TempDir Path dir;

  @Test
  void everyColumnArrives() {
    ReadBook read = GoodBook.in(dir).read();
    assertEquals(List.of(), Folder.loud(read));
    Book book = read.book().orElseThrow();

    Client okafor = book.clients().get(0);
    assertEquals("okafor", okafor.id());
    assertEquals(Optional.of("+12125550100"), okafor.phone());
    assertEquals(HowToTell.TEXT, okafor.tell());
    assertEquals(Optional.of(new GeoPoint(10.123456, -30.654321)), okafor.place().pin());
    assertEquals("gate 4711", okafor.entry());
    assertEquals(300, okafor.extraStopSeconds());
    assertEquals("43", read.cells(read.sources().client("okafor", Column.CLIENT)).get("shoe size"));
    assertEquals("lq", book.clients().get(1).id());
    assertEquals(Optional.of(new GeoPoint(10.5, -30.25)), book.clients().get(2).place().pin());

    Pet biscuit = book.pets().get(0);
    assertEquals("okafor.biscuit", biscuit.id());
    assertEquals(OptionalInt.of(6_350), biscuit.weightGrams(), "14 lb are 6,350.29 g");
    assertEquals(Optional.of(SizeClass.SMALL), biscuit.size());
    assertEquals(Optional.of(Coat.CURLY), biscuit.coat());
    assertEquals(Behaviour.NERVOUS, biscuit.behaviour());
    assertEquals(List.of(Tag.of("senior"), Tag.of("heart")), biscuit.tags());
    assertEquals(Optional.of("full"), biscuit.usualService());
    assertEquals(OptionalInt.of(80), biscuit.usualMinutes());
    assertEquals(OptionalLong.of(6_500), biscuit.priceMinor());
    assertEquals(OptionalInt.of(6), biscuit.everyWeeks());
    assertEquals(Optional.of(LocalDate.of(2027, 1, 19)), biscuit.lastGroomed());
    assertEquals(Set.of(), biscuit.guessed());
    assertTrue(book.pets().get(1).neverGroomed());
    assertEquals(Species.CAT, book.pets().get(2).species());

    Booking first = book.bookings().get(0);
    assertEquals("okafor.biscuit+gravy@2027-03-02", first.id());
    assertEquals(List.of("full"), first.pets().get(0).services());
    assertEquals(List.of("nails"), first.pets().get(1).services());
    assertEquals(CoatState.MATTED, first.pets().get(1).coatState());
    assertEquals(
        List.of("full", "teeth"),
        book.bookings().get(1).pets().get(0).services(),
        "the usual service comes with its add-ons");
    Booking waiting = book.bookings().get(2);
    assertEquals("pp-1", waiting.id());
    assertEquals(BookingStatus.WAITING, waiting.status());
    assertEquals(OptionalInt.of(50), waiting.minutes());
    assertTrue(book.bookings().get(3).told().isPresent());
    assertEquals(
        Optional.of(new GeoPoint(10.2, -30.3)),
        book.business().groomers().get(0).home().pin(),
        "a correction holds for the groomer's home too");
  }

  @Test
  void idsDoNotDependOnTheOrderOfRows() {
    String header = "client,pet,address\n";
    List<String> rows =
        List.of(
            "O'Hara,Max,1 A",
            "O Hara,Max,2 B",
            "Müller,Żółw,3 C",
            "Muller,Zolw,4 D",
            "李,小,5 E",
            "!!,??,6 F",
            "A very long name indeed that never ends,Rex,7 G");
    Set<String> ids = null;
    for (int seed = 0; seed < 20; seed++) {
      List<String> shuffled = new ArrayList<>(rows);
      Collections.shuffle(shuffled, new Random(seed));
      Book book =
          Folder.in(dir)
              .with("bookings.csv", header + String.join("\n", shuffled) + "\n")
              .read()
              .book()
              .orElseThrow();
      Set<String> found =
          book.bookings().stream()
              .map(booking -> booking.id() + "=" + booking.clientId())
              .collect(Collectors.toSet());
      ids = ids == null ? found : ids;
      assertEquals(ids, found, "seed " + seed);
    }
    assertEquals(rows.size(), ids.size());
    assertTrue(ids.contains("müller.żółw=müller"), ids::toString);
  }

  @Test
  void aFaultOfAClientReachesAllItsBookings() {
    ReadBook read =
        GoodBook.in(dir).with("clients.csv", GoodBook.CLIENTS.replace("12 Mill Lane", "")).read();
    assertEquals(
        List.of(
            "ASIDE clients.csv:2:address missing-cell",
            "ASIDE bookings.csv:2:client client-set-aside",
            "ASIDE bookings.csv:3:client client-set-aside"),
        Folder.loud(read));
    assertEquals(3, read.book().orElseThrow().bookings().size());
  }

  @Test
  void aClientWithAToldTimeIsHit() {
    ReadBook read =
        GoodBook.in(dir).with("pets.csv", GoodBook.PETS.replace("deshed", "unheard of")).read();
    assertTrue(read.faults().stops(), () -> Folder.loud(read).toString());
    assertTrue(
        Folder.loud(read).contains("STOP bookings.csv:5:pets pet-set-aside"),
        () -> Folder.loud(read).toString());
    assertTrue(read.book().isEmpty());
  }

  @Test
  void anotherRowOfAClientWithAToldTimeIsHit() {
    String more = GoodBook.BOOKINGS + ",O'Hara,Max,2027-03-04,,,9999,,,,\n";
    ReadBook read = GoodBook.in(dir).with("bookings.csv", more).read();
    assertEquals(List.of("STOP bookings.csv:7:minutes absurd-minutes"), Folder.loud(read));
  }

  @Test
  void strictStopsAtARowSetAside() {
    GoodBook.in(dir).with("bookings.csv", GoodBook.BOOKINGS.replace("2027-04-13", "soon"));
    ReadOptions plain = ReadOptions.of(Folder.TABLES);
    assertFalse(BookReader.read(dir, plain).faults().stops());
    ReadOptions strict = new ReadOptions(Folder.TABLES, Optional.empty(), Optional.empty(), true);
    assertTrue(BookReader.read(dir, strict).faults().stops());
  }

  @Test
  void theMapsBoxShowsSwappedPins() {
    GoodBook.in(dir)
        .with("clients.csv", GoodBook.CLIENTS.replace("\"10.5,-30.25\"", "\"-30.25,10.5\""));
    ReadOptions options =
        new ReadOptions(
            Folder.TABLES, Optional.empty(), Optional.of(new MapBounds(10, -31, 11, -30)), false);
    assertTrue(
        BookReader.read(dir, options).faults().all().stream()
            .anyMatch(fault -> fault.code().equals("swapped-lat-lon")));
  }

  @Test
  void namesMatchWhateverTheirCaseAndSpaces() {
    ReadBook read =
        GoodBook.in(dir)
            .with("bookings.csv", "client,pets,date\n  OKAFOR , biscuit ,2027-03-02\n")
            .read();
    assertEquals(List.of(), Folder.loud(read));
    assertEquals("okafor", read.book().orElseThrow().bookings().get(0).clientId());
  }
}
