package dev.dogleg.cli.prepare;

import dev.dogleg.groom.ServiceTime;
import dev.dogleg.groom.StopQuestions;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Book;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.Client;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.Pet;
import dev.dogleg.model.Place;
import dev.dogleg.model.Species;
import dev.dogleg.model.Tag;
import dev.dogleg.model.When;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Whoever may call next: in each of some zones, at each known door, a dog of each kind, as clients
 * of a book whom nobody has told anything.
 */
public final class Callers {
  private final List<Client> clients = new ArrayList<>();
  private final List<Pet> pets = new ArrayList<>();
  private final List<Booking> bookings = new ArrayList<>();
  private final Book book;
  private final Function<Place, List<Tag>> placeTags;
  private final String prefix;

  /**
   * Nobody yet.
   *
   * @param book the book they are to be clients of
   * @param placeTags tags of a place, which hold for whoever lives there
   */
  public Callers(Book book, Function<Place, List<Tag>> placeTags) {
    this.book = book;
    this.placeTags = placeTags;
    StringBuilder free = new StringBuilder("caller");
    while (Stream.of(
            book.clients().stream().map(Client::id),
            book.pets().stream().map(Pet::id),
            book.bookings().stream().map(Booking::id))
        .flatMap(ids -> ids)
        .anyMatch(id -> id.startsWith(free.toString()))) {
      free.append('+');
    }
    prefix = free.toString();
  }

  /**
   * Adds a caller.
   *
   * @param zone number of the zone
   * @param kind the kind of dog
   * @param place the door
   * @return id of the booking
   */
  public String add(int zone, CallerKind kind, Place place) {
    String id = prefix + zone + "." + clients.size();
    clients.add(
        new Client(
            id,
            kind.word(),
            Optional.empty(),
            HowToTell.NOBODY,
            place,
            "",
            "",
            0,
            "",
            placeTags.apply(place)));
    pets.add(pet(id, kind));
    bookings.add(
        new Booking(
            id,
            id,
            List.of(new BookedPet(id, List.of(StopQuestions.USUAL_SERVICE), kind.state(), false)),
            Optional.empty(),
            When.ANY,
            OptionalInt.empty(),
            Optional.empty(),
            BookingStatus.BOOKED,
            ""));
    return id;
  }

  /**
   * Whether an id is that of a caller.
   *
   * @param id id of a client or of a booking
   * @return false for those of the book
   */
  public boolean knows(String id) {
    return id.startsWith(prefix);
  }

  private static Pet pet(String id, CallerKind kind) {
    return new Pet(
        id,
        id,
        kind.word(),
        Species.DOG,
        Optional.empty(),
        OptionalInt.empty(),
        Optional.of(kind.size()),
        kind.coat(),
        Behaviour.EASY,
        List.of(),
        Optional.empty(),
        OptionalInt.empty(),
        OptionalLong.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        true,
        Optional.empty(),
        Set.of());
  }

  /** {@return the book with the callers in it} */
  public Book joined() {
    return book.with(clients, pets, bookings);
  }

  /**
   * A caller as prepared, with minutes that are enough more often than those that days are planned
   * with.
   *
   * @param booking the caller's booking as prepared
   * @param days van-days, which know how much its groom varies
   * @param plannedPermille minutes prepared are enough in so many of a thousand grooms, 1..999
   * @param enoughPermille these shall be, 1..999
   * @return the booking with longer visits
   */
  public static WeekBooking lasting(
      WeekBooking booking, List<WeekDay> days, int plannedPermille, int enoughPermille) {
    List<DayChoice> choices = new ArrayList<>();
    for (DayChoice choice : booking.choices()) {
      Visit visit = choice.visit();
      int more =
          spread(days.get(choice.day()), booking.id())
              .map(
                  time ->
                      time.quantileSeconds(enoughPermille) - time.quantileSeconds(plannedPermille))
              .orElse(0);
      int seconds = Math.max(0, visit.serviceSeconds() + more);
      choices.add(
          new DayChoice(
              choice.day(),
              visit.lasting(Math.min(Visit.LONGEST_SERVICE, seconds)),
              choice.extraSixtieths()));
    }
    return new WeekBooking(booking.id(), booking.counted(), booking.leftOutSixtieths(), choices);
  }

  private static Optional<ServiceTime> spread(WeekDay day, String id) {
    return day.terms()
        .odds()
        .map(OddsTerms::services)
        .flatMap(services -> Optional.ofNullable(services.get(id)))
        .map(Callers::time);
  }

  private static ServiceTime time(ServiceSpread spread) {
    return new ServiceTime(spread.fixedSeconds(), spread.medianSeconds(), spread.logSpread());
  }
}
