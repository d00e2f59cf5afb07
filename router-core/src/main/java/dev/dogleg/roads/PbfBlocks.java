package dev.dogleg.roads;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;

/**
 * Walks the block headers of a {@code .osm.pbf} without unpacking anything, so that a file cut
 * short is known before the work begins.
 *
 * <p>Source: OpenStreetMap wiki, "PBF Format": four bytes of header length (at most 64 KiB), a
 * BlobHeader (field 1 type, field 3 size of the blob, at most 32 MiB), the blob.
 */
final class PbfBlocks {
  private static final int MOST_HEADER = 64 * 1024;
  private static final int MOST_BLOB = 32 * 1024 * 1024;

  private PbfBlocks() {}

  static void check(Path path) throws IOException {
    try (RandomAccessFile file = new RandomAccessFile(path.toFile(), "r")) {
      long end = file.length();
      long at = 0;
      int blocks = 0;
      while (at < end) {
        if (end - at < 4) {
          throw RoadFaults.truncated(path, "block " + blocks + " of " + end + " bytes");
        }
        file.seek(at);
        int headerLength = file.readInt();
        if (headerLength <= 0 || headerLength > MOST_HEADER) {
          throw blocks == 0
              ? RoadFaults.notOsm(path, "header of " + headerLength + " bytes")
              : RoadFaults.truncated(path, "block " + blocks + " at byte " + at);
        }
        if (at + 4 + headerLength > end) {
          throw RoadFaults.truncated(path, "block " + blocks + " at byte " + at);
        }
        byte[] header = new byte[headerLength];
        file.readFully(header);
        int blob = blobSize(header);
        if (blob < 0 || blob > MOST_BLOB || at + 4 + headerLength + blob > end) {
          throw RoadFaults.truncated(path, "block " + blocks + " at byte " + at);
        }
        at += 4L + headerLength + blob;
        blocks++;
      }
    }
  }

  /** Field 3 of a BlobHeader, or -1. */
  private static int blobSize(byte[] header) {
    int[] at = {0};
    int size = -1;
    while (at[0] < header.length) {
      long tag = varint(header, at);
      if ((tag & 7) == 0) {
        long value = varint(header, at);
        size = tag >>> 3 == 3 ? (int) Math.min(value, Integer.MAX_VALUE) : size;
      } else if ((tag & 7) == 2) {
        long skip = varint(header, at);
        if (skip < 0 || skip > header.length - at[0]) {
          return -1;
        }
        at[0] += (int) skip;
      } else {
        return -1;
      }
    }
    return size;
  }

  private static long varint(byte[] bytes, int[] at) {
    long value = 0;
    for (int shift = 0; shift < 64 && at[0] < bytes.length; shift += 7) {
      byte next = bytes[at[0]++];
      value |= (long) (next & 0x7f) << shift;
      if (next >= 0) {
        return value;
      }
    }
    return -1;
  }
}
