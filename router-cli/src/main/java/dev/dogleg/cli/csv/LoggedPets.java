package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.Slug;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.Match;
import dev.dogleg.model.Book;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Client;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.Pet;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Finds the pets of a row of the visit log in the book, and what was done with them. */
final class LoggedPets {
  private final GroomTables tables;
  private final Map<String, Client> clientById;
  private final Map<String, List<Client>> clientsByName = new LinkedHashMap<>();
  private final Map<String, List<Pet>> petsOf = new LinkedHashMap<>();
  private final Map<String, Booking> bookings = new LinkedHashMap<>();
  private final List<String> clientNames;

  LoggedPets(Book book, GroomTables tables) {
    this.tables = tables;
    clientById = book.clientsById();
    clientNames = book.clients().stream().map(Client::name).toList();
    book.clients()
        .forEach(
            client ->
                clientsByName
                    .computeIfAbsent(Slug.fold(client.name()), key -> new ArrayList<>())
                    .add(client));
    book.pets()
        .forEach(pet -> petsOf.computeIfAbsent(pet.clientId(), key -> new ArrayList<>()).add(pet));
    book.bookings().forEach(booking -> bookings.put(booking.id(), booking));
  }

  /** The pets of a row; empty where the row is set aside. */
  List<BookedPet> of(Cells cells) {
    Optional<Booking> booking = Optional.ofNullable(bookings.get(cells.text(Column.BOOKING)));
    if (!cells.has(Column.CLIENT) && !cells.has(Column.CLIENT_ID)) {
      if (booking.isEmpty()) {
        Column column = cells.has(Column.BOOKING) ? Column.BOOKING : Column.CLIENT;
        cells.aside(
            cells.has(Column.BOOKING) ? "unknown-booking" : "missing-cell",
            column,
            "a client, or a booking of the book, was expected",
            "");
        return List.of();
      }
      return booking.get().pets();
    }
    Optional<Client> client = client(cells);
    List<Pet> pets = client.map(found -> pets(cells, found)).orElse(List.of());
    return done(cells, pets);
  }

  private Optional<Client> client(Cells cells) {
    if (cells.has(Column.CLIENT_ID)) {
      Optional<Client> found = Optional.ofNullable(clientById.get(cells.text(Column.CLIENT_ID)));
      if (found.isEmpty()) {
        People.unknown(cells, Column.CLIENT_ID, clientById.keySet().stream().sorted().toList());
      }
      return found;
    }
    String name = cells.text(Column.CLIENT);
    List<Client> named = clientsByName.getOrDefault(Slug.fold(name), List.of());
    if (named.size() > 1) {
      People.ambiguous(cells, named.size());
      return Optional.empty();
    }
    Optional<Client> found =
        named.stream().findFirst().or(() -> Optional.ofNullable(clientById.get(name)));
    if (found.isEmpty()) {
      People.unknown(cells, Column.CLIENT, clientNames);
    }
    return found;
  }

  private List<Pet> pets(Cells cells, Client client) {
    List<Pet> all = petsOf.getOrDefault(client.id(), List.of());
    Column column = cells.has(Column.PET) ? Column.PET : Column.PETS;
    if (!cells.has(column)) {
      cells.aside("missing-cell", column, "a pet's name was expected", "");
      return List.of();
    }
    String text = cells.text(column);
    if (BookingRecord.isAll(text)) {
      return all;
    }
    List<Pet> found = new ArrayList<>();
    Set<String> met = new HashSet<>();
    for (String name : PetNames.split(text, whole -> pet(all, whole).isPresent())) {
      Optional<Pet> pet = pet(all, name);
      if (pet.isEmpty()) {
        People.unknown(cells, column, all.stream().map(Pet::name).toList());
        return List.of();
      }
      if (!met.add(pet.get().id())) {
        cells.aside("duplicate-pet", column, "each pet once was expected", "");
        return List.of();
      }
      found.add(pet.get());
    }
    return found;
  }

  private static Optional<Pet> pet(List<Pet> among, String name) {
    return among.stream()
        .filter(
            pet -> Slug.fold(pet.name()).equals(Slug.fold(name)) || pet.id().equals(name.strip()))
        .findFirst();
  }

  private List<BookedPet> done(Cells cells, List<Pet> pets) {
    List<String> services = PetNames.each(cells.text(Column.SERVICE), pets.size());
    List<String> states = PetNames.each(cells.text(Column.COAT_STATE), pets.size());
    List<BookedPet> done = new ArrayList<>();
    for (int p = 0; p < pets.size(); p++) {
      Pet pet = pets.get(p);
      List<String> order =
          cells.has(Column.SERVICE)
              ? PetRecord.order(pet.species(), services.get(p), Column.SERVICE, cells, tables)
              : List.of();
      Optional<CoatState> state = Optional.empty();
      if (cells.has(Column.COAT_STATE)) {
        Match<CoatState> match = tables.coatState(states.get(p));
        state = PetLooks.word(cells, Column.COAT_STATE, match);
      }
      done.add(new BookedPet(pet.id(), order, state.orElse(CoatState.GOOD), false));
    }
    return done;
  }
}
