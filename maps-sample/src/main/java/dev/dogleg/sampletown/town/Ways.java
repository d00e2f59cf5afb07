package dev.dogleg.sampletown.town;

import dev.dogleg.sampletown.draw.MapDraft;
import dev.dogleg.sampletown.draw.Stroke;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;

/** The joined strokes as ways, with their ids, their barriers, signals and turning circles. */
final class Ways {

  /** A stroke and the way it became. */
  record Written(Stroke stroke, long id) {}

  private static final Set<String> BIG = Set.of("primary", "secondary", "trunk");

  private final MapDraft draft;
  private final List<Barrier> barriers;
  private List<Stroke> strokes;
  private final List<Written> written = new ArrayList<>();

  Ways(MapDraft draft, List<Stroke> joined, List<Barrier> barriers) {
    this.draft = draft;
    this.strokes = joined.stream().map(stroke -> withBarriers(stroke, barriers)).toList();
    this.barriers = barriers;
  }

  private static Stroke withBarriers(Stroke stroke, List<Barrier> barriers) {
    Stroke changed = stroke;
    for (Barrier barrier : barriers) {
      if (stroke.name().equals(barrier.street())
          && stroke.at(stroke.metresAt(barrier.place())).distance(barrier.place()) < 0.2) {
        changed = changed.through(barrier.place());
      }
    }
    return changed;
  }

  /** Turn restrictions need ways that end where one turns. */
  void splitAt(List<Coordinate> vias) {
    List<Stroke> pieces = new ArrayList<>();
    for (Stroke stroke : strokes) {
      List<Coordinate> part = new ArrayList<>();
      for (Coordinate point : stroke.points()) {
        part.add(point);
        if (part.size() > 1 && stroke.isRoad() && vias.contains(point)) {
          pieces.add(stroke.with(part));
          part = new ArrayList<>(List.of(point));
        }
      }
      if (part.size() > 1) {
        pieces.add(stroke.with(part));
      }
    }
    strokes = pieces;
  }

  void write() {
    for (Stroke stroke : strokes) {
      written.add(new Written(stroke, draft.way(stroke.points(), stroke.tags())));
    }
    signals();
    for (Barrier barrier : barriers) {
      draft.tagCorner(barrier.place(), barrier.tags().toArray(new String[0]));
    }
  }

  List<Written> all() {
    return written;
  }

  List<Written> named(String name) {
    return written.stream().filter(way -> way.stroke.name().equals(name)).toList();
  }

  /** Lights where two big roads cross; a turning circle where a residential street ends. */
  private void signals() {
    Map<Coordinate, Set<String>> bigNames = new HashMap<>();
    Map<Coordinate, Integer> touched = new HashMap<>();
    for (Stroke stroke : strokes) {
      if (!stroke.isRoad()) {
        continue;
      }
      for (Coordinate point : stroke.points()) {
        touched.merge(point, 1, Integer::sum);
        if (BIG.contains(stroke.tags().get("highway")) && !stroke.name().isEmpty()) {
          bigNames.computeIfAbsent(point, p -> new java.util.TreeSet<>()).add(stroke.name());
        }
      }
    }
    for (Stroke stroke : strokes) {
      for (Coordinate point : stroke.points()) {
        if (bigNames.getOrDefault(point, Set.of()).size() > 1 && touched.get(point) > 1) {
          draft.tagCorner(point, "highway", "traffic_signals");
        }
      }
      if ("residential".equals(stroke.tags().get("highway")) && touched.get(stroke.end()) == 1) {
        draft.tagCorner(stroke.end(), "highway", "turning_circle");
      }
    }
  }
}
