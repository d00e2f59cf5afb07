package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.HouseStyle;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.StreetNet;
import dev.dogleg.sampletown.draw.Stroke;
import java.util.List;

/** The ring, the old town wall, the streets that cross the town, and the roads to the villages. */
final class MainRoads {
  static final double RING_X_METRES = 3300;
  static final double RING_Y_METRES = 2700;
  static final double WALL_X_METRES = 3140;
  static final double WALL_Y_METRES = 2545;

  private final StreetNet net;

  MainRoads(StreetNet net) {
    this.net = net;
  }

  void draw() {
    ring();
    townStreets();
    countryRoads();
  }

  private void ring() {
    net.add(
        Stroke.street(
            Plane.ellipse(Plane.at(200, 0), RING_X_METRES, RING_Y_METRES, 72),
            HouseStyle.NONE,
            "highway",
            "trunk",
            "name",
            "Brindle Ring",
            "ref",
            "B1",
            "maxspeed",
            "80"));
    net.add(
        Stroke.street(
            Plane.ellipse(Plane.at(200, 0), WALL_X_METRES, WALL_Y_METRES, 72),
            HouseStyle.COUNTED,
            "highway",
            "tertiary",
            "name",
            "Old Wall Walk",
            "maxspeed",
            "50"));
  }

  private void townStreets() {
    street("primary", "West Market Street", HouseStyle.COUNTED, "50", -3086, 150, -540, 150);
    street("primary", "East Market Street", HouseStyle.COUNTED, "50", -540, 150, 3486, 150);
    street("primary", "High Street", HouseStyle.HUNDREDS, "50", 700, 2668, 700, -2668);
    street("secondary", "Station Road", HouseStyle.COUNTED, "50", -1700, 2205, -1700, -2205);
    street("secondary", "Halyard Boulevard", HouseStyle.HYPHENED, "50", 1900, 2300, 1900, 150);
    street("tertiary", "Arch Street", HouseStyle.COUNTED, "50", 1200, 150, 1200, -2490);
    street("unclassified", "Tanner Street", HouseStyle.COUNTED, "50", -2690, -1000, 1200, -1000);
    street("tertiary", "Railway Terrace", HouseStyle.COUNTED, "50", -2250, -1595, 2640, -1595);
    street("tertiary", "Southside Road", HouseStyle.COUNTED, "50", -2150, -1720, 2530, -1720);
  }

  private void countryRoads() {
    road("secondary", "Currycombe Road", "90", -3100, 150, -5200, 300, -7000, 1900, -8400, 3200);
    road("secondary", "Nettlebank Road", "90", 3500, 150, 5200, 100, 7500, -900, 8800, -2200);
    road("secondary", "Fetlock Road", "90", 700, 2690, 1000, 4100, 3500, 5300, 6300, 5400);
    road(
        "secondary",
        "Withy Road",
        "90",
        -1700,
        -2210,
        -2500,
        -3300,
        -3000,
        -4400,
        -4700,
        -5500,
        -6600,
        -6200);
    road("secondary", "Dapple Road", "90", -1700, 2210, -2900, 3800, -3900, 5400, -3300, 6700);
    road("trunk", "Southern Approach", "80", 700, -2668, 700, -3500, 700, -4550);
    road("secondary", "Harbour Road", "70", 700, -4550, 1100, -5400, 2300, -6300, 2700, -7250);
    road(
        "tertiary", "Ridgeway", "80", -3300, 6700, -1500, 7200, 1500, 6800, 4000, 6500, 6300, 5400);
    road("tertiary", "Long Acre Road", "80", -8400, 3200, -6900, 5300, -5200, 6600, -3300, 6700);
    road(
        "unclassified",
        "Hollow Lane",
        "70",
        -8400,
        3200,
        -8900,
        1200,
        -8700,
        -1500,
        -7900,
        -4600,
        -6600,
        -6200);
    road("tertiary", "Skylark Road", "80", 8800, -2200, 9800, 1400, 8500, 3800, 6300, 5400);
    road("unclassified", "Gull Road", "70", 8800, -2200, 7600, -4900, 4300, -5700, 2300, -6300);
    road("trunk", "Western Link", "90", -9500, -3800, -10200, -2000, -10100, 800, -8400, 3200);
    road("trunk", "Eastern Link", "90", 10000, -3900, 10300, -3200, 8800, -2200);
  }

  private void street(String kind, String name, HouseStyle houses, String maxspeed, double... xy) {
    net.add(
        Stroke.street(
            Plane.points(xy), houses, "highway", kind, "name", name, "maxspeed", maxspeed));
  }

  private void road(String kind, String name, String maxspeed, double... xy) {
    List<org.locationtech.jts.geom.Coordinate> bends = Plane.curve(Plane.points(xy), 110);
    net.add(
        Stroke.street(bends, HouseStyle.NONE, "highway", kind, "name", name, "maxspeed", maxspeed));
  }
}
