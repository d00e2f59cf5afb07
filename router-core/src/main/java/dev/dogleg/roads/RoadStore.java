package dev.dogleg.roads;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.CheckedInputStream;
import java.util.zip.CheckedOutputStream;

/**
 * Writes and reads the flat arrays: a name and a version, each array with its length, a checksum.
 */
final class RoadStore {
  private static final long MAGIC = 0x646f676c65674c31L;
  private static final int CHUNK = 1 << 14;

  private RoadStore() {}

  /** All that is kept of one network. */
  static final class Stored {
    final Hierarchy hierarchy;

    /** Network number by key: see {@link Islands}. */
    final int[] network;

    Stored(Hierarchy hierarchy, int[] network) {
      this.hierarchy = hierarchy;
      this.network = network;
    }
  }

  static void write(Path file, Stored stored) throws IOException {
    RoadGraph graph = stored.hierarchy.graph;
    Hierarchy up = stored.hierarchy;
    CRC32 sum = new CRC32();
    try (DataOutputStream out =
        new DataOutputStream(
            new CheckedOutputStream(
                new BufferedOutputStream(Files.newOutputStream(file), 1 << 16), sum))) {
      out.writeLong(MAGIC);
      writeInts(out, graph.tail);
      writeInts(out, graph.edgeMs);
      writeInts(out, widen(graph.bearing));
      writeInts(out, graph.lengthCm);
      writeBytes(out, graph.roadClass);
      writeBytes(out, graph.entry);
      writeBytes(out, graph.gate);
      writeBytes(out, graph.doors);
      writeInts(out, graph.original);
      writeBytes(out, graph.junction);
      writeInts(out, split(graph.forbidden));
      writeInts(out, up.level);
      writeInts(out, up.firstKey);
      writeInts(out, up.lastKey);
      writeInts(out, up.skipped1);
      writeInts(out, up.skipped2);
      writeInts(out, stored.network);
      out.flush();
      out.writeLong(sum.getValue());
    }
  }

  /** Reads what was written; throws where a byte is wrong or missing. */
  static Stored read(Path file, VanCard van) throws IOException {
    CRC32 sum = new CRC32();
    try (DataInputStream in =
        new DataInputStream(
            new CheckedInputStream(
                new BufferedInputStream(Files.newInputStream(file), 1 << 16), sum))) {
      if (in.readLong() != MAGIC) {
        throw new IOException("not a road store");
      }
      RoadGraph graph =
          new RoadGraph(
              van,
              readInts(in),
              readInts(in),
              narrow(readInts(in)),
              readInts(in),
              readBytes(in),
              readBytes(in),
              readBytes(in),
              readBytes(in),
              readInts(in),
              readBytes(in),
              join(readInts(in)));
      int[] level = readInts(in);
      int[] firstKey = readInts(in);
      int[] lastKey = readInts(in);
      int[] skipped1 = readInts(in);
      int[] skipped2 = readInts(in);
      int[] network = readInts(in);
      long seen = sum.getValue();
      if (in.readLong() != seen) {
        throw new IOException("checksum differs");
      }
      return new Stored(
          new Hierarchy(graph, level, firstKey, lastKey, skipped1, skipped2), network);
    }
  }

  private static void writeInts(DataOutputStream out, int[] values) throws IOException {
    out.writeInt(values.length);
    ByteBuffer chunk = ByteBuffer.allocate(4 * CHUNK);
    for (int at = 0; at < values.length; at += CHUNK) {
      int count = Math.min(CHUNK, values.length - at);
      chunk.clear();
      chunk.asIntBuffer().put(values, at, count);
      out.write(chunk.array(), 0, 4 * count);
    }
  }

  private static int[] readInts(DataInputStream in) throws IOException {
    int[] values = new int[length(in)];
    ByteBuffer chunk = ByteBuffer.allocate(4 * CHUNK);
    for (int at = 0; at < values.length; at += CHUNK) {
      int count = Math.min(CHUNK, values.length - at);
      in.readFully(chunk.array(), 0, 4 * count);
      chunk.clear();
      chunk.asIntBuffer().get(values, at, count);
    }
    return values;
  }

  private static void writeBytes(DataOutputStream out, byte[] values) throws IOException {
    out.writeInt(values.length);
    out.write(values);
  }

  private static byte[] readBytes(DataInputStream in) throws IOException {
    byte[] values = new byte[length(in)];
    in.readFully(values);
    return values;
  }

  private static int length(DataInputStream in) throws IOException {
    int length = in.readInt();
    if (length < 0 || length > in.available() + (1L << 31)) {
      throw new IOException("array length " + length);
    }
    return length;
  }

  private static int[] widen(short[] values) {
    int[] wide = new int[values.length];
    for (int i = 0; i < wide.length; i++) {
      wide[i] = values[i];
    }
    return wide;
  }

  private static short[] narrow(int[] values) {
    short[] narrow = new short[values.length];
    for (int i = 0; i < narrow.length; i++) {
      narrow[i] = (short) values[i];
    }
    return narrow;
  }

  private static int[] split(long[] values) {
    int[] halves = new int[2 * values.length];
    for (int i = 0; i < values.length; i++) {
      halves[2 * i] = (int) (values[i] >>> 32);
      halves[2 * i + 1] = (int) values[i];
    }
    return halves;
  }

  private static long[] join(int[] halves) {
    long[] values = new long[halves.length / 2];
    for (int i = 0; i < values.length; i++) {
      values[i] = RoadGraph.turn(halves[2 * i], halves[2 * i + 1]);
    }
    return values;
  }
}
