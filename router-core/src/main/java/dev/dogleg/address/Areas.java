package dev.dogleg.address;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.algorithm.locate.IndexedPointInAreaLocator;
import org.locationtech.jts.algorithm.locate.PointOnGeometryLocator;
import org.locationtech.jts.algorithm.locate.SimplePointInAreaLocator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Location;
import org.locationtech.jts.index.strtree.STRtree;

/** Towns, districts and postcodes of a map: boundaries, and points that name a place. */
final class Areas {
  private static final int INDEXED_FROM_POINTS = 1000;
  private static final double CELL_DEGREES = 0.1;
  private static final int TOWN_LEVEL = 8;
  private static final int WIDEST_TOWN_LEVEL = 6;
  private static final int COUNTRY_LEVEL = 2;
  private static final int NO_LEVEL = 99;

  private static final Map<String, Double> REACH_METRES =
      Map.of(
          "city", 8000.0,
          "town", 4000.0,
          "borough", 4000.0,
          "municipality", 4000.0,
          "village", 2500.0,
          "suburb", 2500.0,
          "hamlet", 1500.0,
          "quarter", 1500.0,
          "neighbourhood", 1500.0);

  private static final Set<String> DISTRICTS = Set.of("suburb", "quarter", "neighbourhood");

  private final List<Area> all = new ArrayList<>();
  private final Map<Long, List<Town>> towns = new HashMap<>();
  private final Set<String> wideNames = new TreeSet<>();
  private final Set<String> countries = new TreeSet<>();
  private STRtree tree = new STRtree();

  private record Area(
      List<String> names,
      String postcode,
      int level,
      Geometry shape,
      PointOnGeometryLocator inside) {}

  private record Town(List<String> names, String place, double lat, double lon) {}

  /**
   * An area whose limits the map shows.
   *
   * @param names every name of it, at least one
   * @param shape its polygons, longitude and latitude
   */
  record Named(List<String> names, Geometry shape) {}

  /**
   * What is known of a point.
   *
   * @param names every name of every area around it and every place near it
   * @param postcode of a boundary, empty where none
   * @param town name of its town, empty where none
   */
  record Around(Set<String> names, String postcode, String town) {}

  void add(Map<String, String> tags, List<long[]> outer, List<long[]> inner, boolean whole) {
    List<String> names = AddressTags.names(tags);
    int level = level(tags);
    if (level == COUNTRY_LEVEL) {
      String code = tags.getOrDefault("ISO3166-1:alpha2", tags.getOrDefault("ISO3166-1", ""));
      if (!code.isEmpty()) {
        countries.add(Letters.plain(code));
      }
    }
    Geometry shape = whole ? Rings.area(outer, inner) : null;
    if (shape == null || shape.isEmpty()) {
      // Cut at the border of the extract: the name is known, its limits are not.
      wideNames.addAll(names);
      return;
    }
    PointOnGeometryLocator locator =
        shape.getNumPoints() > INDEXED_FROM_POINTS
            ? new IndexedPointInAreaLocator(shape)
            : new SimplePointInAreaLocator(shape);
    Area area = new Area(names, postcode(tags), level, shape, locator);
    all.add(area);
    tree.insert(shape.getEnvelopeInternal(), area);
  }

  private static int level(Map<String, String> tags) {
    String level = tags.getOrDefault("admin_level", "");
    boolean administrative = tags.getOrDefault("boundary", "").equals("administrative");
    return administrative && level.matches("\\d{1,2}") ? Integer.parseInt(level) : NO_LEVEL;
  }

  private static String postcode(Map<String, String> tags) {
    String code = tags.getOrDefault("postal_code", tags.getOrDefault("addr:postcode", ""));
    if (code.isEmpty() && tags.getOrDefault("boundary", "").equals("postal_code")) {
      code = tags.getOrDefault("ref", "");
    }
    return code.contains(";") || code.contains(",") ? "" : code;
  }

  void addTown(Map<String, String> tags, double lat, double lon) {
    Town town = new Town(AddressTags.names(tags), tags.get("place"), lat, lon);
    towns.computeIfAbsent(cell(lat, lon, 0, 0), cell -> new ArrayList<>()).add(town);
  }

  void seal() {
    if (all.isEmpty()) {
      tree = new STRtree();
    }
    tree.build();
  }

  /** Names of areas that the extract cuts; whether a house lies in one is not known. */
  Set<String> wideNames() {
    return wideNames;
  }

  /** Areas with a name and limits, in the map's order. */
  List<Named> named() {
    return all.stream()
        .filter(area -> !area.names.isEmpty())
        .map(area -> new Named(area.names, area.shape))
        .toList();
  }

  /** Names of places that the map knows as points. */
  Set<String> pointNames() {
    Set<String> names = new TreeSet<>();
    towns.values().forEach(some -> some.forEach(town -> names.addAll(town.names)));
    return names;
  }

  /** Codes of the countries whose border the map shows, small letters. */
  Set<String> countries() {
    return countries;
  }

  Around at(long packed) {
    double lat = NodePlaces.lat(packed);
    double lon = NodePlaces.lon(packed);
    Coordinate point = new Coordinate(lon, lat);
    Set<String> names = new LinkedHashSet<>();
    String postcode = "";
    String town = "";
    int townLevel = 0;
    int postcodeLevel = -1;
    List<Area> found = new ArrayList<>();
    for (Object candidate : tree.query(new Envelope(point))) {
      Area area = (Area) candidate;
      if (area.inside.locate(point) != Location.EXTERIOR) {
        found.add(area);
      }
    }
    found.sort(Comparator.comparingInt(area -> -area.level));
    for (Area area : found) {
      names.addAll(area.names);
      if (!area.postcode.isEmpty() && area.level > postcodeLevel) {
        postcode = area.postcode;
        postcodeLevel = area.level;
      }
      if (area.level <= TOWN_LEVEL && area.level >= WIDEST_TOWN_LEVEL && area.level > townLevel) {
        town = area.names.isEmpty() ? "" : area.names.get(0);
        townLevel = area.level;
      }
    }
    // Without the limits of a municipality people name districts from farther away.
    String near = addTownsNear(lat, lon, names, townLevel == 0 ? 2 : 1);
    return new Around(names, postcode, town.isEmpty() ? near : town);
  }

  /** Adds the names of places within reach; the nearest settlement, else the nearest district. */
  private String addTownsNear(double lat, double lon, Set<String> names, double reach) {
    String settlement = "";
    String district = "";
    double settlementShare = 1;
    double districtShare = 1;
    for (int dy = -1; dy <= 1; dy++) {
      for (int dx = -1; dx <= 1; dx++) {
        for (Town town : towns.getOrDefault(cell(lat, lon, dy, dx), List.of())) {
          double share = metres(lat, lon, town.lat, town.lon) / REACH_METRES.get(town.place);
          if (share > reach) {
            continue;
          }
          names.addAll(town.names);
          if (DISTRICTS.contains(town.place)) {
            if (share < districtShare) {
              districtShare = share;
              district = town.names.get(0);
            }
          } else if (share < settlementShare) {
            settlementShare = share;
            settlement = town.names.get(0);
          }
        }
      }
    }
    return settlement.isEmpty() ? district : settlement;
  }

  private static long cell(double lat, double lon, int dy, int dx) {
    long y = (long) Math.floor(lat / CELL_DEGREES) + dy;
    long x = (long) Math.floor(lon / CELL_DEGREES) + dx;
    return y * 100_000 + x;
  }

  /** Metres on a plane touching the earth here; good to 0.1 % over a few kilometres. */
  static double metres(double latA, double lonA, double latB, double lonB) {
    double north = (latB - latA) * 111_195;
    double east = (lonB - lonA) * 111_195 * Math.cos(Math.toRadians((latA + latB) / 2));
    return Math.hypot(north, east);
  }
}
