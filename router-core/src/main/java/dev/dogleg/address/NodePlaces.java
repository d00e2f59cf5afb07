package dev.dogleg.address;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Where the wanted points lie: first all wanted ids are named, then places are put in, then they
 * are read. On disk, so that a country does not need the heap.
 *
 * <p>A place is packed as two 32-bit numbers in units of 1e-7 degree, the unit of the map format.
 */
final class NodePlaces {
  /** No point of the map packs to this: its latitude would be below the south pole. */
  private static final long ABSENT = 0;

  private static final int OFFSET = 2_000_000_000;

  private final Path folder;
  private final SortedRuns wanted;
  private MappedLongs ids;
  private MappedLongs places;
  private long cursor;

  NodePlaces(Path folder, int bufferLongs) {
    this.folder = folder;
    this.wanted = new SortedRuns(folder, bufferLongs);
  }

  void want(long id) throws IOException {
    wanted.add(id);
  }

  void seal() throws IOException {
    ids = wanted.merge("node-ids");
    places = new MappedLongs(folder.resolve("node-places"), ids.size());
  }

  void put(long id, double lat, double lon) {
    // Files are sorted as a rule, so the next wanted id is mostly the next one or far away.
    long at = -1;
    if (cursor < ids.size() && ids.get(cursor) == id) {
      at = cursor;
    } else if (cursor >= ids.size()
        || ids.get(cursor) < id
        || (cursor > 0 && ids.get(cursor - 1) >= id)) {
      at = ids.find(id);
    }
    if (at >= 0) {
      places.set(at, pack(lat, lon));
      cursor = at + 1;
    }
  }

  /** Packed place of a point, or 0 where the file does not hold it (cut at the border). */
  long packed(long id) {
    long at = ids.find(id);
    return at < 0 ? ABSENT : places.get(at);
  }

  static long pack(double lat, double lon) {
    long high = Math.round(lat * 1e7) + OFFSET;
    long low = Math.round(lon * 1e7) + OFFSET;
    return high << 32 | low;
  }

  static double lat(long packed) {
    return ((packed >>> 32) - OFFSET) / 1e7;
  }

  static double lon(long packed) {
    return ((packed & 0xFFFF_FFFFL) - OFFSET) / 1e7;
  }
}
