package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.HouseStyle;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.StreetNet;
import dev.dogleg.sampletown.draw.Stroke;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** The roads from the ring to the villages and the lanes between them. */
final class CountryRoads {
  private static final double REACH_METRES = 400;

  private final StreetNet net;

  CountryRoads(StreetNet net) {
    this.net = net;
  }

  void draw() {
    radials();
    links();
    lanes();
  }

  private void radials() {
    secondary("Currycombe Road", -3100, 150, -5200, 300, -7000, 1900, -8400, 3200);
    secondary("Nettlebank Road", 3500, 150, 5200, 100, 7500, -900, 8800, -2200);
    secondary("Fetlock Road", 700, 2690, 1000, 4100, 3500, 5300, 6300, 5400);
    secondary("Withy Road", -1700, -2210, -2500, -3300, -3000, -4400, -4700, -5500, -6600, -6200);
    secondary("Dapple Road", -1700, 2210, -2900, 3800, -3900, 5400, -3300, 6700);
    road("trunk", "Southern Approach", "80", HouseStyle.NONE, 700, -2668, 700, -3500, 700, -4550);
    road(
        "secondary",
        "Harbour Road",
        "70",
        HouseStyle.SCATTERED,
        700,
        -4550,
        1100,
        -5400,
        2300,
        -6300,
        2700,
        -7250);
  }

  private void links() {
    tertiary("Ridgeway", -3300, 6700, -1500, 7200, 1500, 6800, 4000, 6500, 6300, 5400);
    tertiary("Long Acre Road", -8400, 3200, -6900, 5300, -5200, 6600, -3300, 6700);
    tertiary("Skylark Road", 8800, -2200, 9800, 1400, 8500, 3800, 6300, 5400);
    road(
        "trunk",
        "Western Link",
        "90",
        HouseStyle.NONE,
        -9500,
        -3800,
        -10200,
        -2000,
        -10100,
        800,
        -8400,
        3200);
    road("trunk", "Eastern Link", "90", HouseStyle.NONE, 10000, -3900, 10300, -3200, 8800, -2200);
  }

  private void lanes() {
    lane("Hollow Lane", -8400, 3200, -8900, 1200, -8700, -1500, -7900, -4600, -6600, -6200);
    lane("Gull Road", 8800, -2200, 7600, -4900, 4300, -5700, 2300, -6300);
    lane("Mere Lane", -2900, 3800, -1900, 4300, -500, 4500, 1000, 4100);
    lane("Drove Lane", -6300, 1400, -6100, 3200, -4600, 4500, -3500, 4700);
    lane("Peat Lane", -5200, 300, -5700, -900, -5200, -2400, -3700, -3000, -2500, -3300);
    lane("Sallow Lane", 6600, -400, 7000, 1500, 6700, 3300, 6300, 5400);
    lane("Cuckoo Lane", 2000, 4700, 3200, 4000, 4700, 3700, 6700, 3300);
    lane("Marsh Lane", -4700, -5500, -3000, -6200, -1400, -6400, -300, -7000);
    lane("Sheepwash Lane", 1000, 4100, 1500, 5500, 1500, 6800);
    lane("Thorn Lane", 5200, 100, 5600, -1500, 5300, -3000, 3000, -3900, 700, -3700);
    lane("Dunes Lane", -6600, -6200, -8200, -6400, -9300, -5600, -9500, -3800);
  }

  private void secondary(String name, double... xy) {
    road("secondary", name, "90", HouseStyle.SCATTERED, xy);
  }

  private void tertiary(String name, double... xy) {
    road("tertiary", name, "80", HouseStyle.SCATTERED, xy);
  }

  private void lane(String name, double... xy) {
    road("unclassified", name, "70", HouseStyle.SCATTERED, xy);
  }

  /** Roads begin and end on others where there are any; villages come later, at exact points. */
  private void road(String kind, String name, String maxspeed, HouseStyle houses, double... xy) {
    List<Coordinate> through = Plane.points(xy);
    through.set(0, net.touch(through.get(0), REACH_METRES));
    int last = through.size() - 1;
    through.set(last, net.touch(through.get(last), REACH_METRES));
    net.add(
        Stroke.street(
            Plane.curve(through, 110),
            houses,
            "highway",
            kind,
            "name",
            name,
            "maxspeed",
            maxspeed));
  }
}
