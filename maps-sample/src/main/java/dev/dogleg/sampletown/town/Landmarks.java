package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.House;
import dev.dogleg.sampletown.draw.HouseDrawing;
import dev.dogleg.sampletown.draw.MapDraft;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Coordinate;

/** Collects the places that tests and the README speak of. */
final class Landmarks {
  private final Ways ways;
  private final OddPlaces odd;
  private final HouseDrawing houses;
  private final List<Landmark> found = new ArrayList<>();

  Landmarks(Ways ways, OddPlaces odd, HouseDrawing houses) {
    this.ways = ways;
    this.odd = odd;
    this.houses = houses;
  }

  List<Landmark> all() {
    place("town_centre", Plane.at(700, 150), "High Street meets East Market Street");
    bridges();
    barriers();
    access();
    lookups();
    return found;
  }

  private void bridges() {
    Stroke low = piece("Arch Street", "maxheight");
    place("low_bridge", middle(low), "Arch Street passes under the railway; maxheight 2.4 m");
    place(
        "low_bridge_north", Plane.at(1200, -1500), "on Arch Street 150 m north of the low bridge");
    place(
        "low_bridge_south", Plane.at(1200, -1800), "on Arch Street 150 m south of the low bridge");
    Stroke weak = piece("Tanner Street", "maxweight");
    place("weak_bridge", middle(weak), "Tanner's Bridge over the river; maxweight 3 t");
    place("weak_bridge_west", Plane.at(-640, -1000), "on Tanner Street west of the weak bridge");
    place("weak_bridge_east", Plane.at(-260, -1000), "on Tanner Street east of the weak bridge");
    Stroke queens = piece("East Market Street", "bridge");
    place("market_bridge", middle(queens), "East Market Street crosses the river; no limits");
    place("no_left_turn_from", Plane.at(700, 60), "High Street heading north to the turn");
    place("no_left_turn_to", Plane.at(600, 150), "the forbidden turn to the left leads here");
    place("one_way_east", Plane.at(660, -330), "South 5th Street; traffic runs westwards only");
    place("one_way_west", Plane.at(570, -330), "South 5th Street; traffic runs westwards only");
    place("motorway", Plane.at(3000, -4490), "M7 east of its second interchange");
  }

  private void barriers() {
    pair("bollard", Plane.at(525, -345), Plane.at(525, -411), "the bollard on Salt Street");
    pair("height_bar", Plane.at(-175, -345), Plane.at(-175, -411), "the bar over Net Street");
    pair("width_gate", Plane.at(-350, -794), Plane.at(-350, -730), "the gate of Herring Street");
    for (Barrier barrier : odd.barriers()) {
      String kind = barrier.tags().get(1);
      String name = kind + (barrier.street().isEmpty() ? "_farm" : "");
      place(
          barrier.tags().contains("maxwidth") ? "width_limit" : name,
          barrier.place(),
          String.join(" ", barrier.tags())
              + " on "
              + (barrier.street().isEmpty() ? "a farm track" : barrier.street()));
    }
  }

  /** Two points of one block, with something between them. */
  private void pair(String name, Coordinate from, Coordinate to, String what) {
    place(name + "_from", from, "before " + what);
    place(name + "_to", to, "behind " + what);
  }

  private void access() {
    house("private_drive_house", on(OddPlaces.PRIVATE_DRIVE), "its street has access=private");
    house(
        "destination_only_house",
        on(OddPlaces.DESTINATION_STREET),
        "its street has motor_vehicle=destination");
    house("island_house", on("Lighthouse Street"), "no road or ferry reaches the island");
    house("hidden_door", odd.hidden()::equals, "nearest street is " + OddPlaces.BACK_LANE);
    house("farm_on_track", odd.farm()::equals, "nearest way is a track behind a gate");
  }

  private void lookups() {
    house(
        "ambiguous_town",
        on("Mill Lane")
            .and(h -> h.number().equals("12") && h.locality().city().equals("Brindlewick")),
        "12 Mill Lane exists twice");
    house(
        "ambiguous_village",
        on("Mill Lane")
            .and(h -> h.number().equals("12") && h.locality().city().equals("Currycombe")),
        "12 Mill Lane exists twice");
    House implied = houses.implied().get(houses.implied().size() / 2);
    place(
        "interpolation_only",
        implied.door(),
        "this number exists only by an interpolation way",
        address(implied));
    house(
        "suffix",
        h -> h.number().endsWith("a") && h.street().startsWith("Lark"),
        "house number with a letter");
    house("hyphen", on("45th Road"), "house number with a hyphen");
    house("ordinal", on("North 9th Street"), "direction and ordinal in the street name");
    house("direction_lane", on("West Mill Lane"), "direction in the street name");
    house("german", on("Lindenstraße"), "sharp s");
    house("german_long", on("Bürgermeister-Köhler-Straße"), "umlauts and hyphens");
    house("spanish", on("Paseo José Núñez"), "accents and tilde");
    house("french", on("Rue du Général-Crépin"), "accents and hyphen");
    house("village", on("Forge Street"), "village eight kilometres out");
  }

  private static Predicate<House> on(String street) {
    return house -> house.street().equals(street);
  }

  private void house(String name, Predicate<House> which, String what) {
    House house =
        houses.houses().stream()
            .filter(which)
            .findFirst()
            .orElseThrow(() -> new IllegalStateException("no house for " + name));
    place(name, house.door(), what, address(house));
  }

  private static String address(House house) {
    String area =
        house.locality().suburb().isEmpty() ? house.locality().city() : house.locality().suburb();
    return house.number() + " " + house.street() + " " + area;
  }

  private Stroke piece(String street, String key) {
    return ways.named(street).stream()
        .map(Ways.Written::stroke)
        .filter(stroke -> stroke.tags().containsKey(key))
        .findFirst()
        .orElseThrow(() -> new IllegalStateException(street + " has no piece with " + key));
  }

  private static Coordinate middle(Stroke stroke) {
    return stroke.at(stroke.length() / 2);
  }

  private void place(String name, Coordinate point, String what) {
    place(name, point, what, "");
  }

  private void place(String name, Coordinate point, String what, String address) {
    found.add(new Landmark(name, MapDraft.latE7(point), MapDraft.lonE7(point), what, address));
  }
}
