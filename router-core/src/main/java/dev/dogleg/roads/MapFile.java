package dev.dogleg.roads;

import dev.dogleg.extract.Extract;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.regex.Pattern;

/** A map file as the user gave it: what kind it is, by its first bytes, and its checksum. */
final class MapFile {
  private static final int HEAD_BYTES = 4096;
  private static final Pattern ROOT = Pattern.compile("<osm[\\s/>]");

  /** What the first bytes say. */
  enum Kind {
    PBF,
    XML,
    GZIP,
    BZIP2
  }

  private final Extract extract;
  private final Kind kind;
  private final long size;

  private MapFile(Extract extract, Kind kind, long size) {
    this.extract = extract;
    this.kind = kind;
    this.size = size;
  }

  /**
   * Looks at a file.
   *
   * @param extract the file
   * @return the file, of a kind that can be read
   * @throws dev.dogleg.fault.FaultException where it is missing, empty or of no such kind
   */
  static MapFile look(Extract extract) {
    Path path = extract.path();
    if (!Files.exists(path)) {
      throw RoadFaults.missing(path);
    }
    if (Files.isDirectory(path)) {
      throw RoadFaults.directory(path);
    }
    try (InputStream in = Files.newInputStream(path)) {
      byte[] head = in.readNBytes(HEAD_BYTES);
      if (head.length == 0) {
        throw RoadFaults.empty(path);
      }
      MapFile file = new MapFile(extract, kind(path, head), Files.size(path));
      if (file.kind == Kind.PBF) {
        PbfBlocks.check(path);
      }
      return file;
    } catch (IOException e) {
      throw RoadFaults.unreadable(path, e);
    }
  }

  private static Kind kind(Path path, byte[] head) {
    if (startsWith(head, 'P', 'K')) {
      throw RoadFaults.zipped(path);
    }
    if (startsWith(head, 0x1f, 0x8b)) {
      return Kind.GZIP;
    }
    if (startsWith(head, 'B', 'Z', 'h')) {
      return Kind.BZIP2;
    }
    if (startsWith(head, 0, 0, 0) && head.length > 15) {
      // Four bytes of length, then a string field of nine letters.
      String type = new String(head, 4, 11, StandardCharsets.ISO_8859_1);
      if (type.equals("\n\tOSMHeader")) {
        return Kind.PBF;
      }
    }
    String text = new String(head, StandardCharsets.UTF_8).replace("\uFEFF", "").stripLeading();
    if (!text.startsWith("<")) {
      throw RoadFaults.notOsm(path, printable(text));
    }
    // A document type may pull in other files; no map needs one.
    if (text.contains("<!DOCTYPE") || !ROOT.matcher(text).find()) {
      throw RoadFaults.notOsm(path, printable(text));
    }
    return Kind.XML;
  }

  private static String printable(String text) {
    String line = text.lines().findFirst().orElse("").replaceAll("[^\\p{Print}]", "?");
    return line.substring(0, Math.min(40, line.length()));
  }

  private static boolean startsWith(byte[] head, int... first) {
    return head.length >= first.length
        && Arrays.equals(Arrays.copyOf(head, first.length), toBytes(first));
  }

  private static byte[] toBytes(int[] values) {
    byte[] bytes = new byte[values.length];
    for (int i = 0; i < bytes.length; i++) {
      bytes[i] = (byte) values[i];
    }
    return bytes;
  }

  Path path() {
    return extract.path();
  }

  Kind kind() {
    return kind;
  }

  long size() {
    return size;
  }

  boolean packed() {
    return kind == Kind.GZIP || kind == Kind.BZIP2;
  }

  /** Memory that reading will take, judged by size and kind: see docs/BENCHMARKS.md, Roads. */
  long memoryBytes() {
    long asPbf =
        switch (kind) {
          case PBF -> size;
          case BZIP2 -> size * 3 / 4;
          case GZIP -> size / 2;
          case XML -> size / 16;
        };
    return 160_000_000L + 40 * asPbf;
  }

  /** SHA-256 of all bytes, in hexadecimal. */
  String checksum() {
    try {
      return extract.checksum();
    } catch (IOException e) {
      throw RoadFaults.unreadable(path(), e);
    }
  }
}
