package dev.dogleg.cli.prepare;

import dev.dogleg.address.AddressIndex;
import dev.dogleg.address.AddressQuery;
import dev.dogleg.address.Grade;
import dev.dogleg.address.LookUp;
import dev.dogleg.address.Outcome;
import dev.dogleg.model.Client;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Place;
import dev.dogleg.threads.FromBothEnds;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Looks each address of a run up once. What an ambiguous one may mean is ranked by the places of
 * the book's other clients, which are looked up only where there is such a one.
 *
 * <p>Used by one thread.
 */
public final class LookUps {
  private final Supplier<AddressIndex> index;
  private final List<Client> clients;
  private final Map<String, LookUp> alone = new HashMap<>();
  private final Map<String, LookUp> answers = new HashMap<>();
  private List<GeoPoint> known;

  /**
   * A look-up of nothing yet.
   *
   * @param map the map, whose addresses are opened when first needed
   * @param clients all clients of the book; none where there is no book
   */
  public LookUps(MapInUse map, List<Client> clients) {
    this.index = map::addresses;
    this.clients = List.copyOf(clients);
  }

  /**
   * Looks addresses up that will be asked for, with two threads.
   *
   * @param places the places, those with a pin among them
   */
  void prepare(List<Place> places) {
    List<String> open =
        places.stream()
            .filter(place -> place.pin().isEmpty())
            .map(Place::address)
            .distinct()
            .filter(address -> !alone.containsKey(address))
            .toList();
    if (!open.isEmpty()) {
      AddressIndex addresses = index.get();
      List<LookUp> found =
          FromBothEnds.of(open.size(), number -> find(addresses, open.get(number)));
      for (int number = 0; number < open.size(); number++) {
        alone.put(open.get(number), found.get(number));
      }
    }
  }

  /**
   * Looks an address up.
   *
   * @param address as typed
   * @return found, ambiguous (nearest to the book's other clients first) or none
   */
  public LookUp of(String address) {
    LookUp answer = answers.get(address);
    if (answer == null) {
      answer = alone(address);
      boolean ranked = answer.outcome() != Outcome.FOUND && answer.matches().size() > 1;
      if (ranked) {
        answer = index.get().find(answer.query().near(known()));
      }
      answers.put(address, answer);
    }
    return answer;
  }

  private LookUp alone(String address) {
    return alone.computeIfAbsent(address, typed -> find(index.get(), typed));
  }

  private static LookUp find(AddressIndex addresses, String address) {
    return addresses.find(AddressQuery.of(shortened(address)));
  }

  /** Pins, and addresses that mean one door; the ambiguous ones tell nothing yet. */
  private List<GeoPoint> known() {
    if (known == null) {
      known = clients.stream().map(Client::place).flatMap(place -> point(place).stream()).toList();
    }
    return known;
  }

  private Optional<GeoPoint> point(Place place) {
    if (place.pin().isPresent()) {
      return place.pin();
    }
    LookUp answer = alone(place.address());
    return answer
        .found()
        .filter(match -> match.grade() != Grade.STREET)
        .map(match -> match.point());
  }

  private static String shortened(String address) {
    return address.length() > AddressQuery.LONGEST
        ? address.substring(0, AddressQuery.LONGEST)
        : address;
  }
}
