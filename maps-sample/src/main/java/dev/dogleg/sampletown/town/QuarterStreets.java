package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.Grid;
import dev.dogleg.sampletown.draw.Growth;
import dev.dogleg.sampletown.draw.HouseStyle;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.StreetNet;
import dev.dogleg.sampletown.draw.Stroke;
import dev.dogleg.sampletown.draw.Tags;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.IntFunction;
import org.locationtech.jts.geom.Coordinate;

/** Fills the districts with streets: grids where the town is old, bent streets where it is new. */
final class QuarterStreets {
  private static final String[] LANES = {
    "West Mill Lane",
    "West Cooper Lane",
    "West Dyer Lane",
    "West Felt Lane",
    "West Bark Lane",
    "West Vat Lane",
    "West Currier Lane",
    "West Hide Lane"
  };

  private final StreetNet net;
  private final Map<String, District> districts = new HashMap<>();
  private final Random random;

  QuarterStreets(StreetNet net, List<District> districts, Random random) {
    this.net = net;
    this.random = random;
    districts.forEach(district -> this.districts.put(district.name(), district));
  }

  void draw() {
    riversides();
    northfield();
    halyard();
    oldFerry();
    tannersRow();
    south();
    suburbs();
  }

  private void riversides() {
    street(Quarters.riverside(true, 2480, 150), "North Quay", "tertiary");
    street(Quarters.riverside(true, 150, -1595), "South Quay", "tertiary");
    street(Quarters.riverside(false, 2380, 150), "Willow Bank", "residential");
    street(Quarters.riverside(false, 150, -1595), "Tannery Bank", "residential");
    street(Quarters.riverside(true, -1720, -2540), "Paseo de la Ribera", "residential");
    street(Quarters.riverside(false, -1720, -2500), "Am Fährufer", "residential");
  }

  private void northfield() {
    grid(
        "Northfield",
        700,
        150,
        0,
        112,
        n -> n < 1 ? null : residential("North " + Names.ordinal(n) + " Street", n));
    grid("Northfield", 700, 150, 90, 205, n -> n == 0 ? null : avenue(Names.avenue(n), n));
  }

  private void halyard() {
    grid(
        "Halyard",
        1900,
        150,
        0,
        118,
        n ->
            n < 1
                ? null
                : new Stroke(
                    Plane.points(0, 0, 1, 1),
                    tags("residential", Names.ordinal(40 + n) + " Road"),
                    0,
                    HouseStyle.HYPHENED));
    grid(
        "Halyard",
        1900,
        150,
        90,
        240,
        n ->
            n > -1
                ? null
                : pattern("residential", Names.ordinal(210 - n) + " Place", HouseStyle.NONE));
  }

  private void oldFerry() {
    grid(
        "Old Ferry",
        700,
        150,
        0,
        -96,
        n ->
            n < 1 || n == 12 || n == 18
                ? null
                : oneWay(residential("South " + Names.ordinal(n) + " Street", n), n));
    grid(
        "Old Ferry",
        700,
        150,
        90,
        175,
        n -> n == 0 || n == -3 ? null : oneWay(avenue(oldFerryAlley(n), n), n));
  }

  private static String oldFerryAlley(int number) {
    String[] names = {
      "Ferryman's Row",
      "Ropewalk",
      "Candle Street",
      "Salt Street",
      "Bell Street",
      "Anchor Street",
      "Lantern Street",
      "Net Street",
      "Herring Street",
      "Cask Street",
      "Tar Street"
    };
    int index = number + 2;
    return index >= 0 && index < names.length ? names[index] : null;
  }

  private void tannersRow() {
    grid(
        "Tanners Row",
        -1700,
        -1000,
        0,
        -128,
        n -> {
          int lane = 9 - (n + 9) + 4;
          return n == 0 || lane < 0 || lane >= LANES.length + 5
              ? null
              : residential(lane < LANES.length ? LANES[lane] : cross(lane), n);
        });
    grid(
        "Tanners Row",
        -1700,
        150,
        90,
        190,
        n -> n == 0 ? null : avenue(n == 2 ? "Mill Lane" : tannersCross(n), n));
  }

  private static String cross(int lane) {
    return new String[] {
          "West Lime Lane",
          "West Oakbark Lane",
          "West Sumac Lane",
          "West Tallow Lane",
          "West Awl Lane"
        }
        [lane - LANES.length];
  }

  private static String tannersCross(int number) {
    String[] names = {
      "Saffron Street", "Madder Street", "Woad Street", "Indigo Street", "Weld Street",
      "Alum Street", "Cochineal Street", "Sienna Street", "Umber Street", "Ochre Street",
      "Vermilion Street", "Russet Street"
    };
    int index = number + 6;
    return index >= 0 && index < names.length ? names[index] : null;
  }

  private void south() {
    grid(
        "Neulinden",
        -1700,
        -1720,
        0,
        -118,
        n -> n < 1 ? null : residential(Names.german(n - 1), 1));
    grid("Neulinden", -1700, -1720, 90, 230, n -> n == 0 ? null : avenue(germanCross(n), n));
    grid(
        "Las Garzas",
        700,
        -1720,
        0,
        -122,
        n -> n < 1 ? null : residential(Names.spanish(n - 1), 1));
    grid(
        "Las Garzas",
        700,
        -1720,
        90,
        250,
        n -> n == 0 || n == -2 ? null : avenue(spanishCross(n), n));
  }

  private static String germanCross(int number) {
    String[] names = {
      "Pudelgasse",
      "Dackelsteig",
      "Töpfergasse",
      "Spitzweg",
      "Bäckerzeile",
      "Möwengasse",
      "Kürschnergasse",
      "Seilerweg",
      "Färberhof",
      "Fährgasse"
    };
    int index = number + 6;
    return index >= 0 && index < names.length ? names[index] : null;
  }

  private static String spanishCross(int number) {
    String[] names = {
      "Calle Muñoz",
      "Calle del Álamo",
      "Calle Galgo",
      "Calle Cigüeña",
      "Calle Jabón",
      "Calle Olmo",
      "Calle del Túnel",
      "Calle Marítima",
      "Calle Podenco",
      "Calle Azafrán",
      "Calle Lebrel",
      "Calle Ría"
    };
    int index = number + 8;
    return index >= 0 && index < names.length ? names[index] : null;
  }

  private void suburbs() {
    Stroke westover = collector("Westover Drive", -2500, 150, -2350, 600, -2150, 1050, -1700, 1300);
    Stroke brook = collector("Brook Drive", -1700, 1300, -1300, 1500, -1120, 1000, -1180, 150);
    Stroke kiln = collector("Kiln Hill Road", 1200, -500, 1700, -300, 2200, -700, 2900, -900);
    Stroke potash = collector("Potash Road", 2050, 150, 2000, -150, 2200, -700, 2000, -1595);
    Stroke heron =
        collector("Heronsgate Drive", 4200, 120, 4300, 900, 4800, 1700, 5600, 1500, 5700, 30);
    Stroke orfrais =
        collector(
            "Avenue de Saint-Orfrais",
            -3900,
            170,
            -3900,
            900,
            -4400,
            1500,
            -5200,
            1300,
            -5300,
            340);
    Map<String, Stroke> spines = new HashMap<>();
    Village.all().forEach(village -> spines.put(village.name(), spine(village)));
    Growth growth = new Growth(net, random);
    grow(growth, "Westover", List.of(westover, brook), Names.suburb(0, 110), 230);
    grow(growth, "Kiln Hill", List.of(kiln, potash), Names.suburb(110, 90), 230);
    grow(growth, "Heronsgate", List.of(heron), Names.suburb(200, 110), 240);
    grow(growth, "Saint-Orfrais", List.of(orfrais), Names.french(), 240);
    int first = 310;
    for (Village village : Village.all()) {
      growth.fill(
          village.area(),
          List.of(spines.get(village.name())),
          Names.suburb(first, 32),
          190,
          HouseStyle.COUNTED);
      first += 32;
    }
  }

  private Stroke spine(Village village) {
    return net.add(
        Stroke.street(
            village.spine(),
            HouseStyle.COUNTED,
            "highway",
            "residential",
            "name",
            village.streetName(),
            "maxspeed",
            "50"));
  }

  private void grow(
      Growth growth, String name, List<Stroke> seeds, Iterator<String> names, double spacing) {
    growth.fill(districts.get(name).area(), seeds, names, spacing, HouseStyle.COUNTED);
  }

  private Stroke collector(String name, double... xy) {
    List<Coordinate> through = Plane.points(xy);
    through.set(0, net.touch(through.get(0), 150));
    int last = through.size() - 1;
    through.set(last, net.touch(through.get(last), 150));
    return net.add(
        Stroke.street(
            Plane.curve(through, 45),
            HouseStyle.COUNTED,
            "highway",
            "tertiary",
            "name",
            name,
            "maxspeed",
            "50"));
  }

  private void street(List<Coordinate> points, String name, String kind) {
    net.add(Stroke.street(points, HouseStyle.COUNTED, "highway", kind, "name", name));
  }

  private void grid(
      String district,
      double x,
      double y,
      double degrees,
      double spacing,
      IntFunction<Stroke> kind) {
    Grid.lines(net, districts.get(district).area(), Plane.at(x, y), degrees, spacing, kind);
  }

  private static Map<String, String> tags(String kind, String name) {
    return Tags.of("highway", kind, "name", name);
  }

  private static Stroke pattern(String kind, String name, HouseStyle houses) {
    return name == null ? null : new Stroke(Plane.points(0, 0, 1, 1), tags(kind, name), 0, houses);
  }

  private static Stroke residential(String name, int number) {
    HouseStyle houses = number % 7 == 5 ? HouseStyle.INTERPOLATED : HouseStyle.HUNDREDS;
    Stroke pattern = pattern("residential", name, houses);
    return pattern == null || number % 4 != 0 ? pattern : pattern.tagged("maxspeed", "30");
  }

  private static Stroke avenue(String name, int number) {
    boolean houses = number % 3 == 0 || number == 2 || number == 4;
    Stroke pattern = pattern("residential", name, houses ? HouseStyle.COUNTED : HouseStyle.NONE);
    return pattern == null || number % 5 != 0
        ? pattern
        : pattern.tagged("highway", "living_street");
  }

  private static Stroke oneWay(Stroke pattern, int number) {
    return pattern == null ? null : pattern.tagged("oneway", number % 2 == 0 ? "yes" : "-1");
  }
}
