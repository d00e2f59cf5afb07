package dev.dogleg.cli.command;

import dev.dogleg.cli.command.LateCommand.WrongUsage;
import dev.dogleg.cli.csv.Corrections;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Client;
import dev.dogleg.model.Errand;
import dev.dogleg.model.Place;
import java.util.List;
import java.util.Optional;

/**
 * Where the van is, found from few words.
 *
 * @param place the place
 * @param words for a person
 */
record LateStart(Place place, String words) {

  /**
   * Finds it.
   *
   * @param book the book
   * @param corrections where addresses really are
   * @param plan the day's rows
   * @param day the van-day
   * @param at as typed, or empty: the last door done, else where the day starts
   * @return the place
   * @throws WrongUsage where the words name several doors
   */
  static LateStart of(
      Book book, Corrections corrections, LatePlan plan, VanDay day, Optional<String> at) {
    if (at.isEmpty()) {
      int done = plan.done().size();
      return done == 0
          ? new LateStart(day.start(), "the van is where the day starts")
          : door(book, plan, plan.done().get(done - 1));
    }
    String word = at.get().strip();
    if (word.equalsIgnoreCase("home")) {
      return new LateStart(day.groomer().home(), "the van is at home");
    }
    List<Integer> doors = plan.doorsAt(word);
    if (doors.size() > 1) {
      throw new WrongUsage("--at \"" + word + "\" names several doors of the day: use its number");
    }
    if (doors.size() == 1) {
      return door(book, plan, doors.get(0));
    }
    for (Client client : book.clients()) {
      if (client.name().equalsIgnoreCase(word) || client.id().equals(word)) {
        return new LateStart(client.place(), "the van is at " + client.name() + "'s door");
      }
    }
    if (word.isEmpty()) {
      throw new WrongUsage("--at needs a place");
    }
    Place place = corrections.applied(new Place(word, Optional.empty()));
    return new LateStart(place, "the van is at " + word);
  }

  private static LateStart door(Book book, LatePlan plan, int door) {
    List<String> ids = LatePlan.bookings(plan.doors().get(door));
    String name = plan.doors().get(door).row().client();
    Optional<Place> client =
        book.bookings().stream()
            .filter(booking -> ids.contains(booking.id()))
            .map(Booking::clientId)
            .map(book.clientsById()::get)
            .map(Client::place)
            .findFirst();
    Optional<Place> errand =
        book.week().errands().stream()
            .filter(one -> ids.contains(one.id()))
            .map(Errand::place)
            .findFirst();
    Place place =
        client
            .or(() -> errand)
            .orElseThrow(
                () -> new WrongUsage("door " + (door + 1) + " of the plan is not in the book"));
    return new LateStart(place, "the van is at " + name + "'s door");
  }

  /** {@return the van-day, alone and started from here} */
  VanDay from(VanDay day) {
    return new VanDay(
        0,
        day.groomer(),
        day.van(),
        day.day(),
        day.hours(),
        place,
        day.end(),
        day.helper(),
        day.dayTags(),
        day.crewTags());
  }
}
