package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.DateOrder;
import dev.dogleg.cli.words.MapBounds;
import dev.dogleg.cli.words.PointGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.TagGrammar;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Tag;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Makes corrections of the rows of {@code places.csv}. */
final class PlaceRows {
  private PlaceRows() {}

  static Corrections read(List<Cells> rows, Optional<MapBounds> bounds, DateOrder order) {
    Map<String, GeoPoint> points = new LinkedHashMap<>();
    Map<String, List<Tag>> tags = new LinkedHashMap<>();
    Map<String, Integer> rowOf = new LinkedHashMap<>();
    for (Cells cells : rows) {
      if (!cells.has(Column.ADDRESS)) {
        cells.aside("missing-cell", Column.ADDRESS, "an address as typed was expected", "");
        continue;
      }
      cells
          .readOrLook(Column.TAGS, text -> TagGrammar.read(text, order))
          .ifPresent(read -> tags.put(Corrections.key(cells.text(Column.ADDRESS)), read));
      if (cells.has(Column.TAGS) && !cells.has(Column.LAT) && !cells.has(Column.LON)) {
        continue;
      }
      if (!cells.has(Column.LAT) || !cells.has(Column.LON)) {
        Column column = cells.has(Column.LAT) ? Column.LON : Column.LAT;
        cells.aside("missing-cell", column, "latitude and longitude were expected", "");
        continue;
      }
      Reading<GeoPoint> point =
          PointGrammar.read(cells.text(Column.LAT), cells.text(Column.LON), bounds);
      for (Remark remark : point.remarks()) {
        cells.add(
            remark.at(cells.at(Column.LAT), cells.text(Column.LAT) + "," + cells.text(Column.LON)));
      }
      if (point.value().isEmpty()) {
        continue;
      }
      String key = Corrections.key(cells.text(Column.ADDRESS));
      GeoPoint before = points.putIfAbsent(key, point.value().get());
      if (before != null && !before.equals(point.value().get())) {
        cells.add(
            "duplicate-row",
            Severity.LOOK,
            Column.ADDRESS,
            "stands in row " + rowOf.get(key) + " already, with another point; that one is used",
            "remove one of them");
      }
      rowOf.putIfAbsent(key, cells.row().where().row());
    }
    return Corrections.of(points, tags);
  }
}
