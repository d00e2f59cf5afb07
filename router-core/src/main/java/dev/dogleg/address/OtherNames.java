package dev.dogleg.address;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;

/** Further names of streets, so that houses are found under a name only their street bears. */
final class OtherNames {
  private static final double REACH_DEGREES = 0.005;

  private final Map<String, List<Named>> byName = new HashMap<>();

  private record Named(Envelope box, List<String> others) {}

  void add(MapObject street) {
    String name = street.tag("name");
    List<String> others = new ArrayList<>(AddressTags.names(street.tags()));
    others.remove(name);
    if (others.isEmpty()) {
      return;
    }
    Envelope box = new Envelope();
    for (long place : street.places()) {
      if (place != 0) {
        box.expandToInclude(NodePlaces.lon(place), NodePlaces.lat(place));
      }
    }
    box.expandBy(REACH_DEGREES);
    byName
        .computeIfAbsent(Letters.bare(name), key -> new ArrayList<>())
        .add(new Named(box, others));
  }

  /** Other names of a street near a point, in the order of the file. */
  Set<String> of(String name, long packed) {
    Set<String> others = new LinkedHashSet<>();
    for (Named named : byName.getOrDefault(Letters.bare(name), List.of())) {
      if (named.box.contains(NodePlaces.lon(packed), NodePlaces.lat(packed))) {
        others.addAll(named.others);
      }
    }
    return others;
  }
}
