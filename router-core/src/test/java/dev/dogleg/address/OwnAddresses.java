package dev.dogleg.address;

import dev.dogleg.extract.Extract;
import dev.dogleg.model.GeoPoint;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

/**
 * The addresses that an extract itself bears, read from its tags as they stand: nothing is folded,
 * so that look-ups are judged by the map and not by the code under test.
 */
final class OwnAddresses {
  private static final double METRES_PER_DEGREE = 111_195;
  private static final GeometryFactory SHAPES = new GeometryFactory();

  final List<Own> all = new ArrayList<>();
  private final Map<String, List<Own>> byDoor = new HashMap<>();
  private final Map<String, List<Own>> byStreet = new HashMap<>();

  /** One object with its tags and its shape on a plane in metres. */
  record Own(
      String source,
      String number,
      String street,
      String postcode,
      String city,
      Geometry shape,
      double cosine) {

    /** Metres from a point to the outline, 0 inside it. */
    double metresTo(GeoPoint point) {
      return shape.distance(
          SHAPES.createPoint(
              new Coordinate(
                  point.lon() * METRES_PER_DEGREE * cosine, point.lat() * METRES_PER_DEGREE)));
    }

    double metresTo(Own other) {
      return shape.getCentroid().distance(other.shape.getCentroid());
    }

    /** Whether nothing in the tags says that the other is another address. */
    boolean sameDoorAs(Own other) {
      return door().equals(other.door())
          && (postcode.isEmpty() || other.postcode.isEmpty() || postcode.equals(other.postcode))
          && (city.isEmpty() || other.city.isEmpty() || city.equals(other.city));
    }

    /** Whether the other bears all that is typed for this one. */
    boolean alikeInAllTags(Own other) {
      return door().equals(other.door())
          && postcode.equals(other.postcode)
          && city.equals(other.city);
    }

    String door() {
      return street.toLowerCase(Locale.ROOT) + "|" + number.toLowerCase(Locale.ROOT);
    }
  }

  OwnAddresses(Path map) {
    Map<Long, double[]> nodes = new HashMap<>();
    MapFile file = new MapFile(new Extract(map));
    file.pass(
        new OsmSink() {
          @Override
          public boolean wantsNodes() {
            return true;
          }

          @Override
          public void node(long id, double lat, double lon, Map<String, String> tags) {
            nodes.put(id, new double[] {lat, lon});
            add("node " + id, List.of(new double[] {lat, lon}), tags);
          }
        },
        "",
        IndexProgress.SILENT);
    Map<Long, List<double[]>> ways = new HashMap<>();
    file.pass(
        new OsmSink() {
          @Override
          public boolean wantsWays() {
            return true;
          }

          @Override
          public void way(long id, long[] refs, Map<String, String> tags) {
            List<double[]> points = new ArrayList<>();
            for (long ref : refs) {
              if (nodes.containsKey(ref)) {
                points.add(nodes.get(ref));
              }
            }
            ways.put(id, points);
            add("way " + id, points, tags);
          }
        },
        "",
        IndexProgress.SILENT);
    file.pass(
        new OsmSink() {
          @Override
          public boolean wantsRelations() {
            return true;
          }

          @Override
          public void relation(long id, List<Member> members, Map<String, String> tags) {
            List<double[]> points = new ArrayList<>();
            for (Member member : members) {
              if (member.type() == 'w' && !member.role().equals("inner")) {
                points.addAll(ways.getOrDefault(member.id(), List.of()));
              }
            }
            add("relation " + id, points, tags);
          }
        },
        "",
        IndexProgress.SILENT);
    for (Own own : all) {
      byDoor.computeIfAbsent(own.door(), key -> new ArrayList<>()).add(own);
      byStreet
          .computeIfAbsent(own.street.toLowerCase(Locale.ROOT), key -> new ArrayList<>())
          .add(own);
    }
  }

  private void add(String source, List<double[]> points, Map<String, String> tags) {
    String street = tags.getOrDefault("addr:street", tags.getOrDefault("addr:place", "")).strip();
    String number = tags.getOrDefault("addr:housenumber", "").strip();
    if (street.isEmpty()
        || number.isEmpty()
        || points.isEmpty()
        || tags.containsKey("addr:interpolation")) {
      return;
    }
    double cosine = Math.cos(Math.toRadians(points.get(0)[0]));
    Coordinate[] line = new Coordinate[points.size()];
    for (int i = 0; i < line.length; i++) {
      line[i] =
          new Coordinate(
              points.get(i)[1] * METRES_PER_DEGREE * cosine, points.get(i)[0] * METRES_PER_DEGREE);
    }
    Geometry shape;
    if (line.length == 1) {
      shape = SHAPES.createPoint(line[0]);
    } else if (line.length > 3 && line[0].equals2D(line[line.length - 1])) {
      shape = SHAPES.createPolygon(line);
    } else {
      shape = SHAPES.createMultiPointFromCoords(line).convexHull();
    }
    all.add(
        new Own(
            source,
            number,
            street,
            tags.getOrDefault("addr:postcode", "").strip(),
            tags.getOrDefault("addr:city", "").strip(),
            shape,
            cosine));
  }

  /** A sample without repetition, the same for the same seed. */
  List<Own> sample(int count, long seed) {
    List<Own> shuffled = new ArrayList<>(all);
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = shuffled.size() - 1; i > 0; i--) {
      java.util.Collections.swap(shuffled, i, random.nextInt(i + 1));
    }
    return shuffled.subList(0, Math.min(count, shuffled.size()));
  }

  /** Every object that bears the address. */
  List<Own> bearing(Own own) {
    return byDoor.get(own.door()).stream().filter(own::sameDoorAs).toList();
  }

  boolean hasStreet(String street) {
    return byStreet.containsKey(street.toLowerCase(Locale.ROOT));
  }

  boolean hasDoor(String street, String number) {
    return byDoor.containsKey(
        street.toLowerCase(Locale.ROOT) + "|" + number.toLowerCase(Locale.ROOT));
  }

  boolean hasDoorWithoutHyphen(Own base, String number) {
    return onStreet(base).stream().anyMatch(o -> o.number.replace("-", "").equals(number));
  }

  List<Own> onStreet(Own own) {
    return byStreet.get(own.street().toLowerCase(Locale.ROOT));
  }
}
