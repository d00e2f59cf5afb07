package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.HouseBuilder;
import dev.dogleg.sampletown.draw.HouseDrawing;
import dev.dogleg.sampletown.draw.Locality;
import dev.dogleg.sampletown.draw.MapDraft;
import dev.dogleg.sampletown.draw.Plane;
import dev.dogleg.sampletown.draw.StreetNet;
import dev.dogleg.sampletown.draw.Stroke;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;

/**
 * Draws the whole town, in the order: ground, roads, quarters, crossings, joints, houses, names.
 */
public final class Brindlewick {
  private static final long SEED = 20_260_101L;

  private final StreetNet net = new StreetNet();
  private final MapDraft draft = new MapDraft();
  private final List<District> districts = new Quarters().all();

  private Brindlewick() {}

  /**
   * Draws the town.
   *
   * @return the same map on every call
   */
  public static TownMap draw() {
    return new Brindlewick().drawn();
  }

  private TownMap drawn() {
    List.of(Ground.RIVER, Ground.COAST, Ground.ISLAND, Ground.RAILWAY).forEach(net::add);
    new MainRoads(net).draw();
    new CountryRoads(net).draw();
    new Motorway(net).draw();
    new QuarterStreets(net, districts, new Random(SEED)).draw();
    OddPlaces odd = new OddPlaces(net);
    odd.draw();
    Crossings crossings = new Crossings(net);
    crossings.draw();
    List<Stroke> joined = net.joined();
    Ways ways = new Ways(draft, joined, odd.barriers());
    TurnRestrictions turns = new TurnRestrictions();
    ways.splitAt(turns.vias(joined));
    ways.write();
    crossings.levelCrossings().forEach(c -> draft.tagCorner(c, "railway", "level_crossing"));
    turns.write(ways, draft);
    HouseDrawing houses = new HouseDrawing(draft);
    HouseBuilder builder = new HouseBuilder(joined, this::locality, houses, new Random(SEED + 1));
    builder.build();
    odd.houses(houses, this::locality);
    new Places(draft, districts).write();
    Woods.draw(draft, new Random(SEED + 2));
    return new TownMap(draft.map(), new Landmarks(ways, odd, houses).all());
  }

  private Locality locality(Coordinate point) {
    for (District district : districts) {
      if (district.holds(point)) {
        return district.locality();
      }
    }
    Locality nearest = new Locality("", "Brindlewick", "BRW 100");
    double metres = Math.max(0, point.distance(Plane.at(0, 0)) - 2500);
    for (Village village : Village.all()) {
      if (village.centre().distance(point) < metres) {
        metres = village.centre().distance(point);
        nearest = village.locality();
      }
    }
    return nearest;
  }
}
