package dev.dogleg.cli.prepare;

import dev.dogleg.cli.terms.DraftStop;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.Client;
import dev.dogleg.model.Errand;
import dev.dogleg.model.Place;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A stop of a week: bookings of one client made in one arrival, or an errand.
 *
 * @param draft its choices, being shaped
 * @param client whose; empty for an errand
 * @param bookings at least one, all agreed or all on the waiting list; none for an errand
 * @param errand the errand, or empty
 * @param days van-days on which it may be made by its dates and crew, each with the price of moving
 *     it there in seconds of driving
 */
record WeekStop(
    DraftStop draft,
    Optional<Client> client,
    List<Booking> bookings,
    Optional<Errand> errand,
    Map<Integer, Integer> days) {
  WeekStop {
    bookings = List.copyOf(bookings);
  }

  /** One arrival for some bookings of a client, all agreed or all on the waiting list. */
  static WeekStop of(Client client, List<Booking> bookings, Map<Integer, Integer> days) {
    String id = bookings.stream().map(Booking::id).collect(Collectors.joining(";"));
    boolean agreed = bookings.get(0).status() == BookingStatus.BOOKED;
    boolean told = bookings.stream().anyMatch(booking -> booking.told().isPresent());
    DraftStop draft = new DraftStop(id, client.name(), agreed, told);
    return new WeekStop(draft, Optional.of(client), bookings, Optional.empty(), days);
  }

  /** The groomer's own errand. */
  static WeekStop of(Errand errand, Map<Integer, Integer> days) {
    DraftStop draft = new DraftStop(errand.id(), errand.name(), true, false);
    return new WeekStop(draft, Optional.empty(), List.of(), Optional.of(errand), days);
  }

  /** {@return where it is made} */
  Place place() {
    return client.map(Client::place).orElseGet(() -> errand.orElseThrow().place());
  }
}
