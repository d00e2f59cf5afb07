package dev.dogleg.cli.csv;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import dev.dogleg.cli.file.TextFile;
import dev.dogleg.cli.words.MatchGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.RuleGrammar;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Strength;
import dev.dogleg.model.TagMatch;
import dev.dogleg.model.Zone;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.geojson.GeoJsonReader;

/**
 * Reads {@code zones.geojson}: a FeatureCollection of polygons (RFC 7946). A feature's {@code name}
 * joins it to a row of {@code zones.csv}; its own {@code days} and {@code strength} make it a zone
 * without one.
 */
final class ZoneAreas {
  private static final int MOST_FEATURES = 1_000;

  private final String file;
  private final Faults faults;
  private final Map<String, Geometry> areas = new LinkedHashMap<>();
  private final Map<String, Zone> zones = new LinkedHashMap<>();

  private ZoneAreas(String file, Faults faults) {
    this.file = file;
    this.faults = faults;
  }

  static ZoneAreas none() {
    return new ZoneAreas("", new Faults());
  }

  static ZoneAreas read(TextFile text, Faults faults) {
    ZoneAreas read = new ZoneAreas(text.name(), faults);
    try {
      JsonNode root = new ObjectMapper().readTree(text.text());
      read.collection(root);
    } catch (IOException broken) {
      read.stop("unreadable-zones", 0, "cannot be read as JSON");
    }
    return read;
  }

  /** Areas by folded name; a row of zones.csv takes its own out. */
  Map<String, Geometry> areas() {
    return areas;
  }

  /** Zones that their features describe wholly and that no row named. */
  List<Zone> zones() {
    List<Zone> left = new ArrayList<>();
    zones.forEach(
        (name, zone) -> {
          if (areas.containsKey(name)) {
            left.add(zone);
          }
        });
    areas.forEach(
        (name, area) -> {
          if (!zones.containsKey(name)) {
            faults.add(
                new Fault(
                    "zone-without-days",
                    Severity.LOOK,
                    Where.file(file).at(name),
                    name,
                    "days on which you work there were expected",
                    "add a property days, or a row to zones.csv"));
          }
        });
    return left;
  }

  private void collection(JsonNode root) {
    JsonNode features = root.path("features");
    if (!root.path("type").asText().equals("FeatureCollection") || !features.isArray()) {
      stop("unreadable-zones", 0, "a FeatureCollection (RFC 7946) was expected");
      return;
    }
    if (features.size() > MOST_FEATURES) {
      stop("unreadable-zones", 0, "at most " + MOST_FEATURES + " features are read");
      return;
    }
    int number = 0;
    for (JsonNode feature : features) {
      feature(feature, ++number);
    }
  }

  private void feature(JsonNode feature, int number) {
    JsonNode properties = feature.path("properties");
    String name = properties.path("name").asText("").strip();
    Optional<Geometry> area = area(feature.path("geometry"));
    if (name.isEmpty()) {
      aside("zone-without-name", number, "", "a property name was expected");
    } else if (area.isEmpty()) {
      aside(
          "bad-zone-area",
          number,
          name,
          "a sound Polygon or MultiPolygon was expected: longitude, latitude; rings closed, not"
              + " crossing themselves");
    } else if (areas.putIfAbsent(Slug.fold(name), area.get()) != null) {
      aside("duplicate-row", number, name, "is the name of two features");
    } else if (properties.hasNonNull("days")) {
      Optional<TagMatch> days = cell(properties, "days", number, MatchGrammar::read);
      Optional<Strength> strength =
          properties.hasNonNull("strength")
              ? cell(properties, "strength", number, RuleGrammar::strength)
              : Optional.of(Strength.rather(15));
      if (days.isPresent() && strength.isPresent()) {
        zones.put(
            Slug.fold(name),
            new Zone(
                name,
                area,
                List.of(),
                List.of(),
                Optional.empty(),
                OptionalInt.empty(),
                days.get(),
                Optional.empty(),
                strength.get()));
      } else {
        areas.remove(Slug.fold(name));
      }
    }
  }

  private <T> Optional<T> cell(
      JsonNode properties, String name, int number, Function<String, Reading<T>> grammar) {
    String text = properties.path(name).asText().strip();
    Reading<T> reading = grammar.apply(text);
    for (Remark remark : reading.remarks()) {
      faults.add(remark.at(where(number).at(name), text));
    }
    return reading.value();
  }

  private static Optional<Geometry> area(JsonNode geometry) {
    if (!geometry.isObject()) {
      return Optional.empty();
    }
    try {
      Geometry read = new GeoJsonReader().read(geometry.toString());
      Envelope box = read.getEnvelopeInternal();
      boolean onEarth =
          !read.isEmpty()
              && box.getMinX() >= -180
              && box.getMaxX() <= 180
              && box.getMinY() >= -90
              && box.getMaxY() <= 90;
      return read instanceof Polygonal && onEarth && read.isValid()
          ? Optional.of(read)
          : Optional.empty();
    } catch (ParseException | RuntimeException broken) {
      // The library answers malformed coordinates with exceptions of many kinds.
      return Optional.empty();
    }
  }

  /** A feature has no line of its own once parsed: its number in the file stands for the row. */
  private Where where(int number) {
    return Where.row(file, number);
  }

  private void aside(String code, int number, String seen, String expected) {
    faults.add(
        new Fault(
            code,
            Severity.ASIDE,
            where(number).at("feature"),
            seen,
            expected,
            "the row counts features of the file"));
  }

  private void stop(String code, int number, String expected) {
    faults.add(new Fault(code, Severity.STOP, where(number), "", expected, ""));
  }
}
