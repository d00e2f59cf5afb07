package dev.dogleg.roads;

import static com.graphhopper.json.Statement.If;
import static com.graphhopper.json.Statement.Op.LIMIT;
import static com.graphhopper.json.Statement.Op.MULTIPLY;

import com.graphhopper.config.Profile;
import com.graphhopper.util.CustomModel;
import com.graphhopper.util.TurnCostsConfig;
import java.util.List;

/** A van card as a profile of the importing library: what is closed, and how fast the rest is. */
final class VanProfile {
  static final String NAME = "van";

  /** Importing library and meaning of the profile; part of the cache key. */
  static final String VERSION = "graphhopper-11.0/1";

  /** Every encoded value that the model names, and those that are read for other ends. */
  static final String ENCODED_VALUES =
      "car_access|block_private=false, car_average_speed, road_class, road_class_link,"
          + " road_environment, road_access, van_limit_height, van_limit_width, van_limit_length,"
          + " van_limit_weight, van_gate";

  /** Ways that no van drives; leaving them out makes the graph smaller. */
  static final List<String> IGNORED_HIGHWAYS =
      List.of(
          "footway",
          "cycleway",
          "path",
          "steps",
          "bridleway",
          "corridor",
          "platform",
          "elevator",
          "construction",
          "proposed",
          "abandoned",
          "razed",
          "raceway",
          "via_ferrata");

  private VanProfile() {}

  static Profile of(VanCard van) {
    return new Profile(NAME)
        .setCustomModel(model(van))
        .setTurnCostsConfig(
            new TurnCostsConfig(List.of("motorcar", "motor_vehicle"), van.turns().uTurn()));
  }

  /** Pure time: distance has no price here, the plan prices it. */
  private static CustomModel model(VanCard van) {
    CustomModel model = new CustomModel().setDistanceInfluence(0d);
    model.addToPriority(If("!car_access", MULTIPLY, "0"));
    close(model, VanTags.Limit.HEIGHT, van.heightCm());
    close(model, VanTags.Limit.WIDTH, van.widthCm());
    close(model, VanTags.Limit.LENGTH, van.lengthCm());
    close(model, VanTags.Limit.WEIGHT, van.weightKg());
    if (!van.ferries()) {
      model.addToPriority(If("road_environment == FERRY", MULTIPLY, "0"));
    }
    model.addToSpeed(If("true", LIMIT, "car_average_speed"));
    model.addToSpeed(If("true", LIMIT, Integer.toString(van.topSpeedKmh())));
    return model;
  }

  private static void close(CustomModel model, VanTags.Limit limit, int measure) {
    String name = limit.valueName;
    model.addToPriority(If(name + " > 0 && " + name + " < " + measure, MULTIPLY, "0"));
  }
}
