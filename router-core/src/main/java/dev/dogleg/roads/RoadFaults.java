package dev.dogleg.roads;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.nio.file.Path;

/** The faults of this package, each said once. */
final class RoadFaults {
  private static final String ANY_EXTRACT =
      "use an OpenStreetMap extract of the region, a file that ends in .osm.pbf";

  private RoadFaults() {}

  private static FaultException stop(
      Path file, String code, String seen, String expected, String hint) {
    return new FaultException(fault(Severity.STOP, file, code, seen, expected, hint));
  }

  private static Fault fault(
      Severity severity, Path file, String code, String seen, String expected, String hint) {
    return new Fault(code, severity, Where.file(file.toString()), seen, expected, hint);
  }

  static FaultException missing(Path file) {
    return stop(file, "map-missing", "", "there is no such map file", "check the path of the map");
  }

  static FaultException directory(Path file) {
    return stop(
        file,
        "map-is-folder",
        "",
        "a map file was expected, this is a folder",
        "name the file in it");
  }

  static FaultException unreadable(Path file, Exception cause) {
    FaultException stop =
        stop(
            file,
            "map-unreadable",
            String.valueOf(cause.getMessage()),
            "the map file cannot be read",
            "check its permissions and the disk");
    stop.initCause(cause);
    return stop;
  }

  static FaultException empty(Path file) {
    return stop(file, "map-empty", "", "the map file has no bytes", "download it again");
  }

  static FaultException zipped(Path file) {
    return stop(
        file,
        "map-zipped",
        "",
        "the map file is a zip archive",
        "unzip it and name the .osm.pbf or .osm file inside");
  }

  static FaultException notOsm(Path file, String seen) {
    return stop(file, "map-not-osm", seen, "this is not an OpenStreetMap file", ANY_EXTRACT);
  }

  static FaultException truncated(Path file, String seen) {
    return stop(
        file,
        "map-truncated",
        seen,
        "the map file ends too early or is damaged",
        "download it again and compare its size with the source's");
  }

  static FaultException tooLarge(Path file, String seen) {
    return stop(
        file,
        "map-too-large",
        seen,
        "the packed file unpacks to more than a map of its size holds",
        "use the .osm.pbf of the same region");
  }

  static FaultException unsorted(Path file, String seen) {
    return stop(
        file,
        "map-unsorted",
        seen,
        "nodes must come first, then ways, then relations",
        "sort it: osmium sort " + file.getFileName() + " -o sorted.osm.pbf");
  }

  static FaultException negativeIds(Path file, String seen) {
    return stop(
        file,
        "map-negative-ids",
        seen,
        "ids must be positive numbers",
        "renumber it: osmium renumber " + file.getFileName() + " -o renumbered.osm.pbf");
  }

  static FaultException noRoads(Path file) {
    return stop(
        file,
        "map-without-roads",
        "",
        "the map file holds no road that a van can drive",
        "use an extract that holds ways tagged highway, with their nodes");
  }

  static FaultException memory(Path file, String seen) {
    return stop(
        file,
        "map-needs-memory",
        seen,
        "memory ran out while the map was read",
        "give Java more memory (-Xmx), or cut the extract to the region that is driven");
  }

  static FaultException unknown(Path file, Throwable cause) {
    Throwable root = cause;
    while (root.getCause() != null && root.getCause() != root) {
      root = root.getCause();
    }
    FaultException stop =
        stop(
            file,
            "map-damaged",
            root.getClass().getSimpleName() + ": " + root.getMessage(),
            "the map file cannot be read to its end",
            "download it again, or check it: osmium fileinfo -e " + file.getFileName());
    stop.initCause(cause);
    return stop;
  }

  static FaultException cacheUnusable(Path folder, String seen) {
    return stop(
        folder,
        "road-cache-unusable",
        seen,
        "the cache folder cannot be written",
        "name a folder that can be written, or free some space");
  }

  static Fault cacheDamaged(Path folder, String seen) {
    return fault(
        Severity.NOTE,
        folder,
        "road-cache-damaged",
        seen,
        "the road cache is incomplete or damaged and is built anew",
        "");
  }

  static Fault littleMemory(Path file, String seen) {
    return fault(
        Severity.NOTE,
        file,
        "map-may-need-memory",
        seen,
        "reading this map may need more memory than Java has been given",
        "if it fails, give Java more memory (-Xmx) or cut the extract");
  }
}
