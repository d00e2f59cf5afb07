package dev.dogleg.roads;

import dev.dogleg.extract.Extract;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.GZIPInputStream;
import java.util.zip.ZipException;
import org.apache.commons.compress.compressors.bzip2.BZip2CompressorInputStream;

/** Makes a file that the importing library reads: unpacked, and with an ending it knows. */
final class MapUnpacker {
  /** OpenStreetMap text packs to a tenth or a twentieth; more than this is no map. */
  private static final int MOST_RATIO = 100;

  private static final long ALWAYS_ALLOWED = 64L << 20;

  private MapUnpacker() {}

  /**
   * Gives the file itself, or an unpacked copy.
   *
   * @param file what the user gave
   * @param folder where a copy may lie for a while
   * @return a plain file of ending {@code .osm} or {@code .osm.pbf}
   */
  static Path plain(MapFile file, Path folder) {
    String name = file.path().getFileName().toString();
    boolean known = name.endsWith(".osm") || name.endsWith(".xml");
    if (file.kind() == MapFile.Kind.PBF || (file.kind() == MapFile.Kind.XML && known)) {
      return file.path();
    }
    Path copy = folder.resolve("unpacked.osm");
    try (InputStream packed = new BufferedInputStream(Files.newInputStream(file.path()), 1 << 16);
        InputStream in = open(file, packed);
        OutputStream out = Files.newOutputStream(copy)) {
      copy(file, in, out);
    } catch (EOFException | ZipException e) {
      throw RoadFaults.truncated(file.path(), String.valueOf(e.getMessage()));
    } catch (IOException e) {
      // The bz2 reader has no exception of its own for a file cut short.
      throw file.packed()
          ? RoadFaults.truncated(file.path(), String.valueOf(e.getMessage()))
          : RoadFaults.unreadable(file.path(), e);
    }
    checkInside(file, copy);
    return copy;
  }

  /** What is wrong with the copy is said of the file that the user knows. */
  private static void checkInside(MapFile file, Path copy) {
    try {
      if (MapFile.look(new Extract(copy)).packed()) {
        throw RoadFaults.notOsm(file.path(), "packed twice");
      }
    } catch (FaultException e) {
      Fault inside = e.faults().get(0);
      throw inside.code().equals("map-truncated")
          ? RoadFaults.truncated(file.path(), "inside: " + inside.seen())
          : RoadFaults.notOsm(file.path(), "inside: " + inside.seen() + " " + inside.expected());
    }
  }

  private static InputStream open(MapFile file, InputStream packed) throws IOException {
    return switch (file.kind()) {
      case GZIP -> new GZIPInputStream(packed, 1 << 16);
      case BZIP2 -> new BZip2CompressorInputStream(packed, true);
      default -> packed;
    };
  }

  private static void copy(MapFile file, InputStream in, OutputStream out) throws IOException {
    long most = Math.max(ALWAYS_ALLOWED, MOST_RATIO * file.size());
    long copied = 0;
    byte[] chunk = new byte[1 << 16];
    for (int read = in.read(chunk); read >= 0; read = in.read(chunk)) {
      copied += read;
      if (copied > most) {
        throw RoadFaults.tooLarge(file.path(), "more than " + most + " bytes");
      }
      out.write(chunk, 0, read);
    }
  }
}
