package dev.dogleg.roads;

import com.graphhopper.reader.ReaderWay;
import com.graphhopper.routing.ev.BooleanEncodedValue;
import com.graphhopper.routing.ev.DefaultImportRegistry;
import com.graphhopper.routing.ev.EdgeIntAccess;
import com.graphhopper.routing.ev.ImportRegistry;
import com.graphhopper.routing.ev.ImportUnit;
import com.graphhopper.routing.ev.IntEncodedValue;
import com.graphhopper.routing.ev.IntEncodedValueImpl;
import com.graphhopper.routing.ev.SimpleBooleanEncodedValue;
import com.graphhopper.routing.util.parsers.TagParser;
import com.graphhopper.storage.IntsRef;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The encoded values of our own: signed limits in whole centimetres and kilograms, and gates.
 *
 * <p>The library's own limits are kept in steps of ten centimetres and miss the tags of nodes; a
 * van of 2.74 m must not fit under 2.70 m, nor under a height bar that is a point on the map.
 */
final class VanTags implements ImportRegistry {
  static final String GATE = "van_gate";

  private static final Set<String> GATES =
      Set.of("gate", "lift_gate", "swing_gate", "sliding_gate", "hampshire_gate", "toll_booth");

  /** The limits, each with the tags that state it. */
  enum Limit {
    HEIGHT("van_limit_height", 12, false, "maxheight"),
    WIDTH("van_limit_width", 12, false, "maxwidth"),
    LENGTH("van_limit_length", 14, false, "maxlength"),
    WEIGHT("van_limit_weight", 17, true, "maxweight");

    final String valueName;
    final int bits;
    final boolean inKilograms;
    private final String tag;

    Limit(String valueName, int bits, boolean inKilograms, String tag) {
      this.valueName = valueName;
      this.bits = bits;
      this.inKilograms = inKilograms;
      this.tag = tag;
    }

    /** Every tag that may state it; the least one counts. */
    List<String> tags() {
      List<String> names = new ArrayList<>();
      for (String suffix : List.of("", ":physical", ":forward", ":backward", ":signed")) {
        names.add(tag + suffix);
      }
      if (inKilograms) {
        names.addAll(List.of("maxweightrating", "maxgcweight"));
      }
      return List.copyOf(names);
    }
  }

  private final ImportRegistry standard = new DefaultImportRegistry();

  @Override
  public ImportUnit createImportUnit(String name) {
    for (Limit limit : Limit.values()) {
      if (limit.valueName.equals(name)) {
        return ImportUnit.create(
            name,
            props -> new IntEncodedValueImpl(name, limit.bits, false),
            (lookup, props) ->
                new LimitParser(limit, limit.tags(), lookup.getIntEncodedValue(name)));
      }
    }
    if (GATE.equals(name)) {
      return ImportUnit.create(
          name,
          props -> new SimpleBooleanEncodedValue(name),
          (lookup, props) -> new GateParser(lookup.getBooleanEncodedValue(name)));
    }
    return standard.createImportUnit(name);
  }

  /** Tags of the points of a stretch that say something about all of it. */
  private static List<Map<String, Object>> pointTags(ReaderWay way) {
    List<Map<String, Object>> points = way.getTag("node_tags", List.of());
    if (way.hasTag("gh:barrier_edge") || points.size() < 3) {
      return way.hasTag("gh:barrier_edge") ? points : List.of();
    }
    return points.subList(1, points.size() - 1);
  }

  /** Takes the least limit of a way and of the barriers on it; 0 stands for none. */
  private record LimitParser(Limit limit, List<String> tags, IntEncodedValue value)
      implements TagParser {
    @Override
    public void handleWayTags(int edge, EdgeIntAccess access, ReaderWay way, IntsRef relation) {
      int least = Integer.MAX_VALUE;
      for (String tag : tags) {
        least = Math.min(least, SignedLimit.read(way.getTag(tag), limit.inKilograms));
        for (Map<String, Object> point : pointTags(way)) {
          Object text = point.get(tag);
          least = Math.min(least, SignedLimit.read((String) text, limit.inKilograms));
        }
      }
      if (least < 1 << limit.bits) {
        value.setInt(false, edge, access, Math.max(1, least));
      }
    }
  }

  /** Marks the short stretch that stands for a gate. */
  private record GateParser(BooleanEncodedValue value) implements TagParser {
    @Override
    public void handleWayTags(int edge, EdgeIntAccess access, ReaderWay way, IntsRef relation) {
      for (Map<String, Object> point : pointTags(way)) {
        Object barrier = point.get("barrier");
        if (barrier instanceof String kind && GATES.contains(kind)) {
          value.setBool(false, edge, access, true);
        }
      }
    }
  }
}
