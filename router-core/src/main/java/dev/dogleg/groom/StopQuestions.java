package dev.dogleg.groom;

import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Business;
import dev.dogleg.model.Client;
import dev.dogleg.model.Coat;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Pet;
import dev.dogleg.model.PetFact;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Makes the question of a stop from the book's records. */
public final class StopQuestions {
  /** Tag that marks an old or frail pet. */
  public static final String SENIOR_TAG = "senior";

  /** Years from which a pet counts as senior (common practice, no source). */
  private static final Map<Species, Integer> SENIOR_YEARS =
      Map.of(Species.DOG, 10, Species.CAT, 12);

  /** Service reckoned with where neither booking nor pet names one; the reader says so. */
  public static final String USUAL_SERVICE = "full";

  private final GroomTables tables;
  private final Business business;

  /**
   * For one business.
   *
   * @param tables tables in force
   * @param business the card
   */
  public StopQuestions(GroomTables tables, Business business) {
    this.tables = tables;
    this.business = business;
  }

  /**
   * The question of one stop.
   *
   * @param groomer who comes
   * @param client whose door
   * @param bookings that client's bookings of the day, at least one
   * @param pets pets by id, holding those of the bookings
   * @param date the day; age and weeks since the last groom are counted to it
   * @return the question
   * @throws IllegalArgumentException where a service is not one of the tables, or not for the
   *     species; the reader of the book has checked that
   */
  public StopQuestion of(
      Groomer groomer,
      Client client,
      List<Booking> bookings,
      Map<String, Pet> pets,
      LocalDate date) {
    List<GroomGroup> groups = new ArrayList<>();
    for (Booking booking : bookings) {
      List<GroomQuestion> grooms = new ArrayList<>();
      for (BookedPet booked : booking.pets()) {
        grooms.add(groom(booked, pets.get(booked.petId()), groomer, date));
      }
      groups.add(new GroomGroup(grooms, booking.minutes()));
    }
    return new StopQuestion(
        groups,
        own(business.stopSeconds(), AddOnKind.STOP),
        own(business.extraPetSeconds(), AddOnKind.FURTHER_PET),
        client.extraStopSeconds());
  }

  /** The card's seconds, or empty where they are the table's, whose parts say more. */
  private OptionalInt own(int seconds, AddOnKind kind) {
    return seconds == tables.minutes(kind) * 60 ? OptionalInt.empty() : OptionalInt.of(seconds);
  }

  private GroomQuestion groom(BookedPet booked, Pet pet, Groomer groomer, LocalDate date) {
    GroomQuestion question = byLook(groomer, booked, pet, date, pet.lastGroomed());
    return pet.usualMinutes().isPresent()
        ? question.withUsualMinutes(pet.usualMinutes().getAsInt())
        : question;
  }

  /**
   * The question of one groom, without anybody's own minutes for the pet.
   *
   * @param groomer who grooms
   * @param booked what is done
   * @param pet the pet
   * @param date the day; age and weeks since the last groom are counted to it
   * @param last the last groom as known on that day; one after it is passed over
   * @return the question
   */
  public GroomQuestion byLook(
      Groomer groomer, BookedPet booked, Pet pet, LocalDate date, Optional<LocalDate> last) {
    GroomQuestion question =
        GroomQuestion.of(look(pet), order(booked, pet))
            .withPet(pet.name())
            .withState(booked.coatState())
            .withBehaviour(pet.behaviour())
            .withSenior(isSenior(pet, date))
            .withPacePermille(groomer.paceThousandths())
            .withKeys(new GroomKeys(pet.id(), groomer.id()));
    if (pet.neverGroomed()) {
      question = question.withHistory(VisitHistory.FIRST);
    }
    if (last.isPresent() && !last.get().isAfter(date)) {
      long weeks = ChronoUnit.WEEKS.between(last.get(), date);
      question = question.withWeeksSinceLast((int) Math.min(weeks, 10_000));
    }
    return question;
  }

  private ServiceOrder order(BookedPet booked, Pet pet) {
    List<String> names =
        booked.services().isEmpty()
            ? List.of(pet.usualService().orElse(USUAL_SERVICE))
            : booked.services();
    Service service =
        tables
            .service(names.get(0))
            .value()
            .orElseThrow(() -> new IllegalArgumentException("unknown service " + names.get(0)));
    List<AddOn> addOns = new ArrayList<>();
    for (String name : names.subList(1, names.size())) {
      addOns.add(
          tables
              .addOn(name)
              .value()
              .orElseThrow(() -> new IllegalArgumentException("unknown add-on " + name)));
    }
    return new ServiceOrder(service, addOns);
  }

  /**
   * Whether a pet counts as old or frail on a day.
   *
   * @param pet the pet
   * @param date the day
   * @return by its tag or by its age
   */
  public static boolean isSenior(Pet pet, LocalDate date) {
    return pet.has(SENIOR_TAG, date)
        || pet.born()
            .filter(born -> !born.plusYears(SENIOR_YEARS.get(pet.species())).isAfter(date))
            .isPresent();
  }

  /**
   * What a pet of the book looks like; what was guessed from words stays a guess.
   *
   * @param pet the pet
   * @return the look
   */
  public PetLook look(Pet pet) {
    PetLook look = tables.look(Optional.of(pet.species()), pet.breed().orElse(""));
    if (pet.weightGrams().isPresent()) {
      look = look.withSize(Sizes.weighed(pet.weightGrams().getAsInt()));
    } else if (pet.size().isPresent()) {
      SizeClass named = pet.size().get();
      look =
          look.withSize(
              pet.guessed().contains(PetFact.SIZE)
                  ? Sizes.narrowed(Sizes.named(named), look.size())
                  : Likely.sure(named));
    }
    if (pet.coat().isPresent()) {
      Coat coat = pet.coat().get();
      boolean onlyBreed = pet.guessed().contains(PetFact.COAT) && look.coat().taken() == coat;
      look = onlyBreed ? look : look.withCoat(Likely.sure(coat));
    }
    return look;
  }
}
