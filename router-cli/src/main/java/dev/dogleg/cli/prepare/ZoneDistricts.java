package dev.dogleg.cli.prepare;

import dev.dogleg.address.AddressIndex;
import dev.dogleg.address.District;
import dev.dogleg.address.DistrictLookUp;
import dev.dogleg.cli.words.Nearness;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Zone;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.locationtech.jts.geom.Geometry;

/** The districts of the map that zones name. */
public final class ZoneDistricts {
  private static final int SHOWN = 8;

  private final Map<String, List<District>> byZone = new LinkedHashMap<>();

  private ZoneDistricts() {}

  /**
   * Finds districts by their names.
   *
   * @param zones zones of a book
   * @param map the map; its addresses are opened only where a zone names a district
   * @param rows where things stand
   * @param faults takes what is wrong: a district that cannot be used stops the run, for clients
   *     would lie outside their zone unseen; one that only addresses know needs a look
   * @return the districts that can be used
   */
  public static ZoneDistricts of(List<Zone> zones, MapInUse map, RowFinder rows, Faults faults) {
    ZoneDistricts all = new ZoneDistricts();
    for (Zone zone : zones) {
      List<District> districts = new ArrayList<>();
      for (String name : zone.districts()) {
        DistrictLookUp answer = map.addresses().district(name);
        answer.district().ifPresent(districts::add);
        Where cell = rows.zone(zone.name()).at("districts");
        if (answer.outcome() == DistrictLookUp.Outcome.ADDRESSES) {
          faults.add(byAddresses(answer, cell));
        } else if (answer.district().isEmpty()) {
          faults.add(unusable(answer, cell, map.addresses()));
        }
      }
      all.byZone.put(zone.name(), List.copyOf(districts));
    }
    return all;
  }

  private static Fault byAddresses(DistrictLookUp answer, Where cell) {
    District district = answer.district().orElseThrow();
    return new Fault(
        "district-by-addresses",
        Severity.LOOK,
        cell,
        answer.asked(),
        "the map shows no limits; "
            + (district.addresses() == 1
                ? "one address bears"
                : district.addresses() + " addresses bear")
            + " the name: a door is in it where the nearest such address, at most "
            + District.NEAREST_METRES
            + " m off, does",
        "to be exact draw it in zones.geojson");
  }

  private static Fault unusable(DistrictLookUp answer, Where cell, AddressIndex map) {
    String otherwise =
        "draw it in zones.geojson, or give postcodes, or minutes from a place in the middle";
    return switch (answer.outcome()) {
      case SEVERAL ->
          stop(
              "district-ambiguous",
              cell,
              answer,
              "is the name of areas of the map that lie apart",
              otherwise);
      case CUT ->
          stop(
              "district-without-limits",
              cell,
              answer,
              "its limits leave the map file",
              "take a larger extract, or " + otherwise);
      case POINT ->
          stop(
              "district-without-limits",
              cell,
              answer,
              "is a point on the map: where it ends the map does not say",
              otherwise);
      default ->
          stop("unknown-district", cell, answer, "is no district of the map", near(answer, map));
    };
  }

  private static Fault stop(
      String code, Where cell, DistrictLookUp answer, String expected, String hint) {
    return new Fault(code, Severity.STOP, cell, answer.asked(), expected, hint);
  }

  private static String near(DistrictLookUp answer, AddressIndex map) {
    List<String> known = map.districtNames();
    Map<String, String> byLower = new TreeMap<>();
    known.forEach(name -> byLower.putIfAbsent(name.toLowerCase(Locale.ROOT), name));
    return Nearness.nearest(answer.asked().toLowerCase(Locale.ROOT), byLower.keySet())
        .map(near -> "did you mean " + byLower.get(near) + "?")
        .orElseGet(
            () ->
                known.isEmpty()
                    ? "the map names none"
                    : "the map has "
                        + String.join(", ", known.subList(0, Math.min(SHOWN, known.size())))
                        + (known.size() > SHOWN ? " and " + (known.size() - SHOWN) + " more" : ""));
  }

  /** Whether one of a zone's districts holds a point. */
  boolean hold(Zone zone, GeoPoint point) {
    return of(zone).stream().anyMatch(district -> district.holds(point));
  }

  /** Limits of a zone's districts, of those that have any. */
  List<Geometry> areas(Zone zone) {
    return of(zone).stream().flatMap(district -> district.area().stream()).toList();
  }

  private List<District> of(Zone zone) {
    return byZone.getOrDefault(zone.name(), List.of());
  }
}
