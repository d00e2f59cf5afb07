package dev.dogleg.model;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Everything a book folder says, consistent: every booking's client and pets are in it.
 *
 * @param business the card
 * @param clients in the file's order
 * @param pets in the file's order
 * @param bookings in the file's order
 * @param week days, rules, zones and errands
 */
public record Book(
    Business business,
    List<Client> clients,
    List<Pet> pets,
    List<Booking> bookings,
    WeekBook week) {

  /** Checks ids and references. */
  public Book {
    Objects.requireNonNull(week, "week");
    Objects.requireNonNull(business, "business");
    clients = List.copyOf(clients);
    pets = List.copyOf(pets);
    bookings = List.copyOf(bookings);
    Set<String> clientIds = new HashSet<>();
    clients.forEach(client -> unique(clientIds, client.id()));
    Set<String> petIds = new HashSet<>();
    Set<String> owned = new HashSet<>();
    for (Pet pet : pets) {
      unique(petIds, pet.id());
      known(clientIds, pet.clientId());
      owned.add(pet.id() + "\n" + pet.clientId());
    }
    Set<String> bookingIds = new HashSet<>();
    for (Booking booking : bookings) {
      unique(bookingIds, booking.id());
      known(clientIds, booking.clientId());
      booking.pets().forEach(pet -> known(owned, pet.petId() + "\n" + booking.clientId()));
    }
  }

  /**
   * A book without days, rules, zones and errands.
   *
   * @param business see the record
   * @param clients see the record
   * @param pets see the record
   * @param bookings see the record
   */
  public Book(Business business, List<Client> clients, List<Pet> pets, List<Booking> bookings) {
    this(business, clients, pets, bookings, WeekBook.NONE);
  }

  private static void unique(Set<String> ids, String id) {
    if (!ids.add(id)) {
      throw new IllegalArgumentException("id twice: " + id);
    }
  }

  private static void known(Set<String> ids, String id) {
    if (!ids.contains(id)) {
      throw new IllegalArgumentException("unknown id: " + id.replace("\n", " of "));
    }
  }

  /**
   * The same book with more in it.
   *
   * @param moreClients further clients
   * @param morePets their pets
   * @param moreBookings further bookings
   * @return the book, what it had before first
   */
  public Book with(List<Client> moreClients, List<Pet> morePets, List<Booking> moreBookings) {
    return new Book(
        business,
        both(clients, moreClients),
        both(pets, morePets),
        both(bookings, moreBookings),
        week);
  }

  private static <T> List<T> both(List<T> one, List<T> other) {
    return Stream.concat(one.stream(), other.stream()).toList();
  }

  /** {@return clients by id} */
  public Map<String, Client> clientsById() {
    return clients.stream().collect(Collectors.toMap(Client::id, client -> client));
  }

  /** {@return pets by id} */
  public Map<String, Pet> petsById() {
    return pets.stream().collect(Collectors.toMap(Pet::id, pet -> pet));
  }
}
