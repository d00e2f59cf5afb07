package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.MatchGrammar;
import dev.dogleg.cli.words.MinutesGrammar;
import dev.dogleg.cli.words.RuleGrammar;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.model.Place;
import dev.dogleg.model.Strength;
import dev.dogleg.model.TagMatch;
import dev.dogleg.model.Zone;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;

/**
 * Makes zones of the rows of {@code zones.csv}; one may have the area of the feature of its name in
 * {@code zones.geojson}.
 */
final class ZoneRows {
  private static final int MOST_MINUTES = 600;

  private final Context context;
  private final Map<String, Geometry> areas;

  private ZoneRows(Context context, Map<String, Geometry> areas) {
    this.context = context;
    this.areas = areas;
  }

  /**
   * The zones.
   *
   * @param areas areas by folded name; those that a row names are taken out
   */
  static List<Zone> read(
      List<Cells> rows, Map<String, Geometry> areas, Context context, Sources sources) {
    ZoneRows reader = new ZoneRows(context, areas);
    List<Zone> zones = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Cells cells : rows) {
      String name = cells.text(Column.ZONE);
      if (name.isEmpty()) {
        cells.aside("missing-cell", Column.ZONE, "a name for the zone was expected", "");
      } else if (!names.add(Slug.fold(name))) {
        cells.aside("duplicate-row", Column.ZONE, "is the name of two zones", "rename one of them");
      } else {
        reader
            .zone(name, cells)
            .ifPresent(
                zone -> {
                  zones.add(zone);
                  sources.zone(zone.name(), cells.row());
                });
      }
    }
    return zones;
  }

  private Optional<Zone> zone(String name, Cells cells) {
    if (!cells.has(Column.DAYS)) {
      cells.aside(
          "missing-cell", Column.DAYS, "days on which you work there were expected", "mon; thu");
    }
    Optional<TagMatch> days = cells.read(Column.DAYS, MatchGrammar::read);
    Optional<Strength> strength = cells.read(Column.STRENGTH, RuleGrammar::strength);
    Optional<String> groomer = CrewCells.groomer(cells, context);
    Optional<Integer> minutes =
        cells.read(Column.MINUTES, text -> MinutesGrammar.read(text, 1, MOST_MINUTES));
    Optional<Place> from =
        cells.has(Column.FROM)
            ? Optional.of(context.placed(cells.text(Column.FROM)))
            : Optional.empty();
    if (cells.has(Column.FROM) != cells.has(Column.MINUTES)) {
      cells.aside(
          "missing-cell",
          cells.has(Column.FROM) ? Column.MINUTES : Column.FROM,
          "from and minutes belong together",
          "a place, and minutes on the road from there");
    }
    Optional<Geometry> area = Optional.ofNullable(areas.remove(Slug.fold(name)));
    List<String> postcodes = postcodes(cells.text(Column.POSTCODES));
    List<String> districts = districts(cells.text(Column.DISTRICTS));
    if (area.isEmpty() && postcodes.isEmpty() && districts.isEmpty() && from.isEmpty()) {
      cells.aside(
          "zone-nowhere",
          Column.ZONE,
          "postcodes, districts, minutes from a place, or an area of this name in zones.geojson was"
              + " expected",
          areas.isEmpty() ? "" : "areas there: " + String.join(", ", areas.keySet()));
    }
    if (cells.bad()) {
      return Optional.empty();
    }
    return Optional.of(
        new Zone(
            name,
            area,
            postcodes,
            districts,
            from,
            minutes.map(m -> OptionalInt.of(60 * m)).orElse(OptionalInt.empty()),
            days.orElse(TagMatch.ANY),
            groomer,
            strength.orElse(Strength.rather(15))));
  }

  private static List<String> districts(String text) {
    return Arrays.stream(text.split(";", -1))
        .map(String::strip)
        .filter(name -> !name.isEmpty())
        .distinct()
        .toList();
  }

  static List<String> postcodes(String text) {
    List<String> codes = new ArrayList<>();
    for (String part : text.split("[;,]", -1)) {
      String code = part.toUpperCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}*]", "");
      if (!code.isEmpty() && !code.equals("*")) {
        codes.add(code);
      }
    }
    return codes;
  }
}
