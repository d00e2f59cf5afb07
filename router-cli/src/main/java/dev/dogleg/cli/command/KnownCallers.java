package dev.dogleg.cli.command;

import dev.dogleg.cli.csv.Column;
import dev.dogleg.cli.csv.Sources;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Client;
import dev.dogleg.model.Pet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Newcomers whose client the book has already: with another pet, at the same address, they are that
 * client with a new pet.
 *
 * <p>Maintainers: the call stays a stop of its own, whatever else the client has booked; so the
 * client goes into the joined book a second time, with all that the book says of the door, under an
 * id that no book gives.
 */
final class KnownCallers {
  /** Ends the id of a client who calls with a new pet. */
  private static final String AGAIN = "@new";

  private KnownCallers() {}

  /**
   * Takes known clients for themselves.
   *
   * @param book the book
   * @param own the newcomers alone
   * @param sources where they stand
   * @param faults takes a known client with a known pet, or at another address
   * @return the newcomers, those of known clients with what the book says of them
   */
  static Book met(Book book, Book own, Sources sources, Faults faults) {
    Map<String, Client> known = book.clientsById();
    Set<String> pets = book.pets().stream().map(Pet::id).collect(Collectors.toSet());
    List<Client> clients = new ArrayList<>();
    for (Client client : own.clients()) {
      Client before = known.get(client.id());
      if (before != null) {
        Where where = sources.client(client.id(), Column.CLIENT);
        boolean sameDoor =
            before.place().address().strip().equalsIgnoreCase(client.place().address().strip());
        boolean samePet =
            own.pets().stream()
                .anyMatch(pet -> pet.clientId().equals(client.id()) && pets.contains(pet.id()));
        if (!sameDoor || samePet) {
          faults.add(refused(before, where, sameDoor));
        }
        clients.add(before.as(before.id() + AGAIN));
      } else {
        clients.add(client);
      }
    }
    return new Book(
        own.business(),
        clients,
        own.pets().stream().map(pet -> of(known, pet)).toList(),
        own.bookings().stream().map(booking -> of(known, booking)).toList(),
        own.week());
  }

  /** {@return the id under which a client of the newcomers was read} */
  static String typed(String clientId) {
    return clientId.endsWith(AGAIN)
        ? clientId.substring(0, clientId.length() - AGAIN.length())
        : clientId;
  }

  private static Fault refused(Client known, Where where, boolean sameDoor) {
    return sameDoor
        ? new Fault(
            "known-client",
            Severity.STOP,
            where,
            known.name(),
            "a pet whom the book does not have was expected",
            "add a booking to the book and plan")
        : new Fault(
            "known-client",
            Severity.STOP,
            where,
            known.name(),
            "the book's client of this name has another address: " + known.place().address(),
            "give that address for another pet of theirs, or another name");
  }

  private static Pet of(Map<String, Client> known, Pet pet) {
    return known.containsKey(pet.clientId()) ? pet.ownedBy(pet.clientId() + AGAIN) : pet;
  }

  private static Booking of(Map<String, Client> known, Booking booking) {
    return known.containsKey(booking.clientId())
        ? booking.madeBy(booking.clientId() + AGAIN)
        : booking;
  }
}
