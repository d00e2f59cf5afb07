package dev.dogleg.groom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.dogleg.model.Behaviour;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.Business;
import dev.dogleg.model.Client;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.Pet;
import dev.dogleg.model.PetFact;
import dev.dogleg.model.Place;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import dev.dogleg.model.Van;
import dev.dogleg.model.When;
import dev.dogleg.model.Worth;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** From the book's records to the minutes of a stop. */
class StopQuestionsTest {
  private static final GroomTables TABLES = StarterTables.load();
  private static final GroomEstimator ESTIMATOR = new GroomEstimator(TABLES);
  private static final LocalDate DAY = LocalDate.of(2027, 3, 2);
  private static final Place DOOR = new Place("12 Mill Lane", Optional.empty());
  private static final Groomer GROOMER =
      new Groomer("ann", "Ann", 1000, Map.of(), List.of(), DOOR, "van");

  private static Business business(int stopSeconds, int extraPetSeconds) {
    Van van =
        new Van(
            "van",
            "Van",
            280,
            210,
            600,
            3500,
            110,
            false,
            OptionalInt.empty(),
            OptionalInt.empty(),
            false);
    return new Business(
        "Ann and her van",
        "US",
        Currency.getInstance("USD"),
        ZoneId.of("UTC"),
        false,
        Optional.empty(),
        List.of(GROOMER),
        List.of(van),
        Optional.empty(),
        0,
        stopSeconds,
        extraPetSeconds,
        50,
        new Worth(20, 20, 120, 0, 0, 3000, 3600));
  }

  private static Client client(int extraStopSeconds) {
    return new Client(
        "lee", "Lee", Optional.empty(), HowToTell.NOBODY, DOOR, "", "", extraStopSeconds, "");
  }

  /** A pet of the book; {@code guessed} says which facts are only words. */
  private static Pet pet(String id, String breed, OptionalInt grams, Set<PetFact> guessed) {
    return new Pet(
        id,
        "lee",
        id,
        Species.DOG,
        Optional.of(breed),
        grams,
        Optional.empty(),
        Optional.empty(),
        Behaviour.EASY,
        List.of(),
        Optional.of("full"),
        OptionalInt.empty(),
        OptionalLong.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.of(DAY.minusWeeks(5)),
        false,
        Optional.empty(),
        guessed);
  }

  private static Booking booking(OptionalInt minutes, BookedPet... pets) {
    return new Booking(
        "b1",
        "lee",
        List.of(pets),
        Optional.empty(),
        When.ANY,
        minutes,
        Optional.empty(),
        BookingStatus.BOOKED,
        "");
  }

  private static BookedPet booked(String id, String... services) {
    return new BookedPet(id, List.of(services), CoatState.GOOD, false);
  }

  private static StopEstimate stop(Business business, int extraSeconds, Booking booking) {
    Map<String, Pet> pets =
        Map.of(
            "rex", pet("rex", "Cockapoo", OptionalInt.of(7_000), Set.of()),
            "bo", pet("bo", "Poodle", OptionalInt.empty(), Set.of(PetFact.SIZE)));
    return ESTIMATOR.stop(
        new StopQuestions(TABLES, business)
            .of(GROOMER, client(extraSeconds), List.of(booking), pets, DAY));
  }

  @Test
  void knownSmallCurlyDogWithTheTablesOverheadIs93Minutes() {
    StopEstimate stop =
        stop(business(18 * 60, 7 * 60), 0, booking(OptionalInt.empty(), booked("rex")));
    assertEquals((75 + 18) * 60, stop.plannedSeconds());
    assertEquals(0.14, stop.time().logSpread(), 1e-12);
    assertFalse(stop.isGuess());
    assertEquals("stop: arrive, park, level, power up", stop.basis().get(2).what());
  }

  @Test
  void cardAndClientChangeTheOverhead() {
    StopEstimate stop =
        stop(business(20 * 60, 7 * 60), 90, booking(OptionalInt.empty(), booked("rex", "bath")));
    // bath 45 + card's stop 20 + client's 1.5
    assertEquals(45 * 60 + 20 * 60 + 90, stop.plannedSeconds());
    assertEquals("the business card", stop.basis().get(stop.basis().size() - 2).provenance());
    assertEquals("1 min 30 s", stop.basis().get(stop.basis().size() - 1).amountText());
  }

  @Test
  void minutesOfABookingAreForAllItsPetsTogether() {
    StopEstimate stop =
        stop(
            business(18 * 60, 7 * 60),
            0,
            booking(OptionalInt.of(110), booked("rex"), booked("bo", "nails", "teeth")));
    assertEquals((110 + 18 + 7) * 60, stop.plannedSeconds());
    assertEquals(2, stop.grooms().size());
    assertEquals("nails + teeth", stop.grooms().get(1).question().order().toString());
  }

  @Test
  void guessedSizeStaysAGuessAndWeightEndsIt() {
    StopQuestions questions = new StopQuestions(TABLES, business(1080, 420));
    PetLook open = questions.look(pet("bo", "Poodle", OptionalInt.empty(), Set.of(PetFact.SIZE)));
    assertEquals(4, open.size().mayBe().size());
    PetLook weighed = questions.look(pet("bo", "Poodle", OptionalInt.of(25_000), Set.of()));
    assertEquals(Likely.sure(SizeClass.LARGE), weighed.size());
    assertEquals(Likely.sure(Coat.CURLY), weighed.coat());
    assertFalse(weighed.isGuess());
  }

  @Test
  void ageFromTheDateOfBirthMakesASenior() {
    Pet rex = pet("rex", "Beagle", OptionalInt.of(12_000), Set.of());
    for (int years : new int[] {9, 10}) {
      Pet aged =
          new Pet(
              rex.id(),
              rex.clientId(),
              rex.name(),
              rex.species(),
              rex.breed(),
              rex.weightGrams(),
              rex.size(),
              rex.coat(),
              rex.behaviour(),
              rex.tags(),
              rex.usualService(),
              rex.usualMinutes(),
              rex.priceMinor(),
              rex.everyWeeks(),
              Optional.of(DAY.minusYears(years)),
              rex.lastGroomed(),
              false,
              rex.rabiesUntil(),
              rex.guessed());
      StopEstimate stop =
          ESTIMATOR.stop(
              new StopQuestions(TABLES, business(1080, 420))
                  .of(
                      GROOMER,
                      client(0),
                      List.of(booking(OptionalInt.empty(), booked("rex"))),
                      Map.of("rex", aged),
                      DAY));
      // full, medium, smooth 55; senior 15; stop 18
      assertEquals((55 + (years >= 10 ? 15 : 0) + 18) * 60, stop.plannedSeconds());
    }
  }
}
