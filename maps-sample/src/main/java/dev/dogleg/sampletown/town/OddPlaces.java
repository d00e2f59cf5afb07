package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.House;
import dev.dogleg.sampletown.draw.HouseDrawing;
import dev.dogleg.sampletown.draw.HouseStyle;
import dev.dogleg.sampletown.draw.Locality;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.StreetNet;
import dev.dogleg.sampletown.draw.Stroke;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.locationtech.jts.geom.Coordinate;

/** Private drives, yards, back lanes, tracks, barriers: what makes an address hard to reach. */
final class OddPlaces {
  static final String PRIVATE_DRIVE = "Marlpit Drive";
  static final String DESTINATION_STREET = "Lantern Street";
  static final String BOLLARD_STREET = "Salt Street";
  static final String LOW_BAR_STREET = "Net Street";
  static final String NARROW_STREET = "Herring Street";
  static final String BACK_LANE = "Coalman's Passage";
  static final String HIDDEN_STREET = "North 3rd Street";

  /** Ten metres from the back lane, forty-six from its own street. */
  static final Coordinate HIDDEN_DOOR = Plane.at(1007, 532);

  static final Coordinate FARM_DOOR = Plane.at(-9460, -330);

  private final StreetNet net;
  private final List<Barrier> barriers = new ArrayList<>();
  private House hidden;
  private House farm;

  OddPlaces(StreetNet net) {
    this.net = net;
  }

  void draw() {
    privateDrive();
    retag(DESTINATION_STREET, "motor_vehicle", "destination");
    // both ways, so that the doors behind a barrier can still be reached from the other end
    for (String street : List.of(BOLLARD_STREET, LOW_BAR_STREET, NARROW_STREET)) {
      retag(street, "oneway", "no");
    }
    barrier(BOLLARD_STREET, -378, "barrier", "bollard");
    barrier(LOW_BAR_STREET, -378, "barrier", "height_restrictor", "maxheight", "2.2");
    barrier(NARROW_STREET, -762, "barrier", "gate", "access", "yes", "maxwidth", "1.9");
    net.add(
        Stroke.street(
            Plane.points(905, 542, 1110, 542),
            HouseStyle.NONE,
            "highway",
            "service",
            "service",
            "alley",
            "name",
            BACK_LANE));
    tradingEstate();
    tracks();
  }

  private void privateDrive() {
    List<Coordinate> through =
        Plane.points(2560, 4960, 2700, 4760, 2900, 4650, 3050, 4450, 3300, 4400);
    through.set(0, net.touch(through.get(0), 200));
    Stroke drive =
        net.add(
            Stroke.street(
                Plane.curve(through, 40),
                HouseStyle.COUNTED,
                "highway",
                "service",
                "service",
                "driveway",
                "access",
                "private",
                "name",
                PRIVATE_DRIVE));
    barriers.add(
        new Barrier(
            PRIVATE_DRIVE, drive.at(40), List.of("barrier", "lift_gate", "access", "private")));
  }

  private void tradingEstate() {
    street("unclassified", "Foundry Way", 700, -3400, 1250, -3400, 1650, -3650, 1650, -4050);
    street("service", "Foundry Yard", 1250, -3400, 1250, -3750, 1650, -3750);
    street("service", "Cooperage Yard", 1250, -3560, 1020, -3560, 1020, -3900);
  }

  private void street(String kind, String name, double... xy) {
    net.add(Stroke.street(Plane.points(xy), HouseStyle.NONE, "highway", kind, "name", name));
  }

  private void tracks() {
    track(-8915, 0, -9200, -150, -9450, -300, -9700, -250);
    track(-6900, 5300, -7300, 5900, -7200, 6700);
    track(1500, 6800, 1300, 7500, 1900, 8200);
    track(4000, 6500, 4400, 7300, 5100, 7500);
    track(9800, 1400, 9000, 1100, 8300, 1400, 7600, 1000);
    track(7600, -4900, 8300, -5200, 9000, -5000);
    track(-4700, -5500, -4200, -6400, -3400, -6900, -2000, -7000);
    Stroke farm = net.strokes().get(net.strokes().size() - 7);
    barriers.add(new Barrier("", farm.at(60), List.of("barrier", "gate")));
  }

  private void track(double... xy) {
    List<Coordinate> through = Plane.points(xy);
    through.set(0, net.touch(through.get(0), 300));
    net.add(
        Stroke.street(
            Plane.curve(through, 60), HouseStyle.NONE, "highway", "track", "tracktype", "grade2"));
  }

  private void retag(String name, String... keysAndValues) {
    for (Stroke stroke : List.copyOf(net.strokes())) {
      if (stroke.name().equals(name)) {
        net.replace(stroke, stroke.tagged(keysAndValues));
      }
    }
  }

  /** Streets of Old Ferry run from south to north; the barrier stands between two crossings. */
  private void barrier(String street, double y, String... tags) {
    Stroke stroke =
        net.strokes().stream().filter(s -> s.name().equals(street)).findFirst().orElseThrow();
    Coordinate place = stroke.at(stroke.metresAt(Plane.at(stroke.start().x, y)));
    barriers.add(new Barrier(street, place, List.of(tags)));
  }

  /** {@return all barriers, their places being on their streets} */
  List<Barrier> barriers() {
    return barriers;
  }

  /** Builds the two houses that do not stand where one looks for them. */
  void houses(HouseDrawing drawing, Function<Coordinate, Locality> locality) {
    House neighbour =
        drawing.houses().stream()
            .filter(house -> house.street().equals(HIDDEN_STREET) && !house.number().endsWith("a"))
            .min(
                (a, b) ->
                    Double.compare(a.door().distance(HIDDEN_DOOR), b.door().distance(HIDDEN_DOOR)))
            .orElseThrow();
    hidden =
        new House(
            neighbour.number() + "b", HIDDEN_STREET, locality.apply(HIDDEN_DOOR), HIDDEN_DOOR);
    drawing.node(hidden);
    farm = new House("99", "Hollow Lane", locality.apply(FARM_DOOR), FARM_DOOR);
    drawing.node(farm);
  }

  House hidden() {
    return hidden;
  }

  House farm() {
    return farm;
  }
}
