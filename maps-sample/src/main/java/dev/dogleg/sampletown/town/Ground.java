package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.HouseStyle;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.Stroke;
import dev.dogleg.sampletown.draw.Tags;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** What was there before the roads: coast, island, river, railway. */
final class Ground {
  /** The river runs from north to south through the middle of the town. */
  static final Stroke RIVER =
      new Stroke(
          Plane.curve(
              Plane.points(
                  -2400, 8700, -2000, 7000, -2500, 5400, -1300, 3600, -800, 2100, -520, 700, -560,
                  -500, -250, -1650, 150, -2700, 150, -4600, 900, -6000, 1500, -7100, 1850, -7700),
              70),
          Tags.of("waterway", "river", "name", "River Dapple"),
          3,
          HouseStyle.NONE);

  /** Water from bank to bank. */
  static final double RIVER_HALF_WIDTH_METRES = 32;

  /** The sea lies to the right. */
  static final Stroke COAST =
      new Stroke(
          Plane.curve(
              Plane.points(
                  1850, -7700, 2700, -7400, 3700, -7200, 5200, -6300, 7500, -5900, 9900, -6000,
                  11600, -3600, 12300, 0, 11700, 4100, 9400, 7900, 4800, 9500, 0, 9900, -4900, 9500,
                  -9100, 7800, -11600, 4200, -12200, 400, -12100, -4200, -9900, -7700, -6500, -9000,
                  -2500, -9100, 600, -8400, 1850, -7700),
              180),
          Tags.of("natural", "coastline"),
          3,
          HouseStyle.NONE);

  /** The island that no road reaches. */
  static final Stroke ISLAND =
      new Stroke(
          Plane.curve(
              Plane.points(
                  7600, -8300, 7100, -7500, 6100, -7300, 5000, -7800, 4800, -8600, 5600, -9300,
                  6900, -9300, 7600, -8300),
              90),
          Tags.of("natural", "coastline", "place", "island", "name", "Otterholm"),
          3,
          HouseStyle.NONE);

  /** Straight through the town, from west to east. */
  static final Stroke RAILWAY =
      new Stroke(
          Plane.points(
              -11200, 900, -9000, -300, -6500, -1300, -4200, -1600, -3400, -1650, 3400, -1650, 4600,
              -1500, 7400, -300, 9800, 200, 11800, 100),
          Tags.of("railway", "rail", "name", "Dapple Valley Line"),
          2,
          HouseStyle.NONE);

  /**
   * Draws the edge of the water.
   *
   * @param metres from the middle of the river, positive on the eastern bank
   * @return points from north to south
   */
  static List<Coordinate> bank(double metres) {
    return Plane.beside(RIVER.points(), metres);
  }

  private Ground() {}
}
