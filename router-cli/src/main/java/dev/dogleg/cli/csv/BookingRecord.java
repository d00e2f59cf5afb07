package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.DateGrammar;
import dev.dogleg.cli.words.MinutesGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.cli.words.ToldGrammar;
import dev.dogleg.cli.words.WhenGrammar;
import dev.dogleg.fault.Severity;
import dev.dogleg.groom.Match;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.BookingTerms;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.ToldTime;
import dev.dogleg.model.When;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;

/** Makes a booking of one row. */
final class BookingRecord {
  private static final int MOST_MINUTES = 720;
  private static final int MOST_PETS = 20;

  private final Cells cells;
  private final Context context;

  private BookingRecord(Cells cells, Context context) {
    this.cells = cells;
    this.context = context;
  }

  /** Whether a cell means every pet of the client. */
  static boolean isAll(String cell) {
    return cell.equalsIgnoreCase("all") || cell.equalsIgnoreCase("both");
  }

  /** The booking of a row, or empty where it is set aside. */
  static Optional<Booking> read(Cells cells, People people, Context context) {
    return new BookingRecord(cells, context).read(people);
  }

  private Optional<Booking> read(People people) {
    BookingStatus status =
        cells.read(Column.STATUS, BookingRecord::status).orElse(BookingStatus.BOOKED);
    Optional<DateSpan> dates =
        cells.read(Column.DATE, text -> DateGrammar.read(text, context.dateOrder()));
    Optional<When> when =
        cells.read(Column.WHEN, text -> WhenGrammar.read(text, context.usualHours()));
    Optional<ToldTime> told =
        cells.read(Column.TOLD, text -> ToldGrammar.read(text, context.usualHours()));
    if (told.isPresent() && status.open() && !dates.map(DateSpan::single).orElse(false)) {
      cells.add("told-without-date", Severity.STOP, Column.TOLD, "a told time needs one date", "");
    }
    Optional<Integer> minutes =
        cells.read(
            Column.MINUTES,
            text -> MinutesGrammar.read(text, PetRecord.LEAST_MINUTES, MOST_MINUTES));
    BookingTerms terms = BookingTermCells.read(cells, context, status, told.isPresent());
    Optional<Person> person = people.find(cells);
    List<Animal> animals = person.map(this::animals).orElse(List.of());
    List<BookedPet> pets = pets(animals);
    Optional<String> ownId = IdRule.own(cells, Column.BOOKING);
    if (cells.bad() || person.isEmpty() || pets.isEmpty()) {
      return Optional.empty();
    }
    String id = ownId.orElseGet(() -> id(person.get(), animals, dates));
    return Optional.of(
        new Booking(
            id,
            person.get().id(),
            pets,
            dates,
            when.orElse(When.ANY),
            minutes.map(OptionalInt::of).orElse(OptionalInt.empty()),
            told,
            status,
            cells.text(Column.NOTE),
            terms));
  }

  /** Client and pets by their ids, and the dates: depends on this row alone. */
  private static String id(Person person, List<Animal> animals, Optional<DateSpan> dates) {
    String prefix = person.id() + ".";
    String pets =
        animals.stream()
            .map(Animal::id)
            .map(pet -> pet.startsWith(prefix) ? pet.substring(prefix.length()) : pet)
            .sorted()
            .collect(Collectors.joining("+"));
    String id = prefix + pets + dates.map(span -> "@" + span).orElse("");
    return id.length() <= 120 ? id : id.substring(0, 100) + "-" + Slug.mark(id);
  }

  private List<Animal> animals(Person person) {
    Column column = cells.has(Column.PET) ? Column.PET : Column.PETS;
    if (person.client().isEmpty()) {
      cells.aside(
          "client-set-aside",
          Column.CLIENT,
          "this client's row is set aside",
          "mend " + person.cells().row().where());
      return List.of();
    }
    if (cells.has(Column.PET) && cells.has(Column.PETS)) {
      cells.aside("two-values", Column.PETS, "pet or pets was expected, not both", "");
      return List.of();
    }
    if (!cells.has(column)) {
      cells.aside(
          "missing-cell",
          column,
          "a pet's name was expected",
          person.animals().isEmpty()
              ? ""
              : "pets of this client: "
                  + person.animals().stream().map(Animal::name).collect(Collectors.joining(", ")));
      return List.of();
    }
    boolean all = isAll(cells.text(column)) && !person.animals().isEmpty();
    List<Animal> found = all ? person.animals() : named(person, column);
    if (found.size() > MOST_PETS) {
      cells.aside(
          "too-many-pets", column, "at most " + MOST_PETS + " pets of one stop were expected", "");
      return List.of();
    }
    return found;
  }

  private List<Animal> named(Person person, Column column) {
    List<Animal> found = new ArrayList<>();
    for (String name :
        PetNames.split(cells.text(column), whole -> person.animal(whole).isPresent())) {
      Optional<Animal> animal = person.animal(name);
      if (animal.isEmpty()) {
        People.unknown(cells, column, person.animals().stream().map(Animal::name).toList());
        return List.of();
      }
      if (found.contains(animal.get())) {
        cells.aside("duplicate-pet", column, "each pet once was expected", "");
        return List.of();
      }
      found.add(animal.get());
    }
    return found;
  }

  private List<BookedPet> pets(List<Animal> animals) {
    List<String> services = PetNames.each(cells.text(Column.SERVICE), animals.size());
    List<String> states = PetNames.each(cells.text(Column.COAT_STATE), animals.size());
    List<BookedPet> pets = new ArrayList<>();
    for (int i = 0; i < animals.size(); i++) {
      Animal animal = animals.get(i);
      if (animal.pet().isEmpty()) {
        cells.aside(
            "pet-set-aside",
            cells.has(Column.PET) ? Column.PET : Column.PETS,
            "the row of " + animal.name() + " is set aside",
            "mend " + animal.cells().row().where());
        return List.of();
      }
      List<String> order =
          cells.has(Column.SERVICE)
              ? PetRecord.order(
                  animal.pet().get().species(),
                  services.get(i),
                  Column.SERVICE,
                  cells,
                  context.tables())
              : animal.usualOrder();
      Optional<CoatState> state = Optional.empty();
      if (cells.has(Column.COAT_STATE)) {
        Match<CoatState> match = context.tables().coatState(states.get(i));
        state = PetLooks.word(cells, Column.COAT_STATE, match);
      }
      boolean guessed = state.isEmpty() && animal.state().isPresent();
      pets.add(
          new BookedPet(
              animal.id(), order, state.or(animal::state).orElse(CoatState.GOOD), guessed));
    }
    return pets;
  }

  private static Reading<BookingStatus> status(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "booked", "confirmed", "yes", "ok", "open", "planned" ->
          Reading.of(BookingStatus.BOOKED);
      case "waiting", "wait", "waitlist", "waiting list", "waiting-list", "standby" ->
          Reading.of(BookingStatus.WAITING);
      case "cancelled", "canceled", "cancel", "no" -> Reading.of(BookingStatus.CANCELLED);
      case "done", "finished", "complete", "completed" -> Reading.of(BookingStatus.DONE);
      default ->
          Reading.none(
              Remark.aside(
                  "unknown-status", "booked, waiting, cancelled or done was expected", ""));
    };
  }
}
