package dev.dogleg.sampletown;

import dev.dogleg.sampletown.osm.OsmWay;
import java.awt.Color;
import java.util.Arrays;

/** How each class of way is drawn in the picture, from the bottom to the top. */
enum RoadLook {
  TRACK(0xb09060, 0.7f, "track"),
  SERVICE(0xb0b0b0, 0.7f, "service"),
  STREET(0x8c8c8c, 1f, "residential living_street"),
  LANE(0x6c6c6c, 1.3f, "unclassified tertiary"),
  RAIL(0x404040, 0.8f, ""),
  SECONDARY(0xd8a020, 1.9f, "secondary"),
  PRIMARY(0xe07820, 2.2f, "primary"),
  TRUNK(0xc04040, 2.4f, "trunk motorway_link"),
  MOTORWAY(0x4050b0, 2.4f, "motorway");

  private final Color colour;
  private final float width;
  private final String classes;

  RoadLook(int rgb, float width, String classes) {
    this.colour = new Color(rgb);
    this.width = width;
    this.classes = classes;
  }

  Color colour() {
    return colour;
  }

  float width() {
    return width;
  }

  boolean fits(OsmWay way) {
    return this == RAIL
        ? way.tags().containsKey("railway")
        : Arrays.asList(classes.split(" ")).contains(way.tags().getOrDefault("highway", "none"));
  }
}
