package dev.dogleg.address;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.LongBuffer;
import java.nio.MappedByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/** An array of longs in a file, mapped into memory; its length may pass 2^31. */
final class MappedLongs {
  private static final int SEGMENT_BITS = 24;
  private static final int SEGMENT = 1 << SEGMENT_BITS;

  private final LongBuffer[] segments;
  private final long size;

  /** Maps a file of {@code size} longs; a shorter file is filled up with zeros. */
  MappedLongs(Path file, long size) throws IOException {
    this.size = size;
    this.segments = new LongBuffer[(int) ((size + SEGMENT - 1) >> SEGMENT_BITS)];
    try (FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.CREATE)) {
      if (channel.size() < size * Long.BYTES) {
        channel.write(ByteBuffer.wrap(new byte[1]), size * Long.BYTES - 1);
      }
      for (int i = 0; i < segments.length; i++) {
        long from = (long) i * SEGMENT;
        long length = Math.min(SEGMENT, size - from);
        MappedByteBuffer mapped =
            channel.map(FileChannel.MapMode.READ_WRITE, from * Long.BYTES, length * Long.BYTES);
        segments[i] = mapped.asLongBuffer();
      }
    }
  }

  long size() {
    return size;
  }

  long get(long index) {
    return segments[(int) (index >> SEGMENT_BITS)].get((int) (index & (SEGMENT - 1)));
  }

  void set(long index, long value) {
    segments[(int) (index >> SEGMENT_BITS)].put((int) (index & (SEGMENT - 1)), value);
  }

  /** Index of a value in an ascending array, or -1. */
  long find(long value) {
    long low = 0;
    long high = size - 1;
    while (low <= high) {
      long middle = (low + high) >>> 1;
      long there = get(middle);
      if (there < value) {
        low = middle + 1;
      } else if (there > value) {
        high = middle - 1;
      } else {
        return middle;
      }
    }
    return -1;
  }
}
