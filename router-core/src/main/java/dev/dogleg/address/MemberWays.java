package dev.dogleg.address;

import java.io.Closeable;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.ByteBuffer;
import java.nio.file.Path;

/** Points of the ways that relations are made of, on disk, found by way id. */
final class MemberWays implements Closeable {
  private final MappedLongs ids;
  private final MappedLongs offsets;
  private final RandomAccessFile file;
  private long end = 1;

  MemberWays(Path folder, SortedRuns wanted) throws IOException {
    ids = wanted.merge("way-ids");
    offsets = new MappedLongs(folder.resolve("way-offsets"), ids.size());
    file = new RandomAccessFile(folder.resolve("way-points").toFile(), "rw");
  }

  boolean wants(long id) {
    return ids.find(id) >= 0;
  }

  void put(long id, long[] nodes) throws IOException {
    ByteBuffer bytes = ByteBuffer.allocate(Integer.BYTES + nodes.length * Long.BYTES);
    bytes.putInt(nodes.length);
    for (long node : nodes) {
      bytes.putLong(node);
    }
    file.seek(end);
    file.write(bytes.array());
    offsets.set(ids.find(id), end);
    end += bytes.capacity();
  }

  /** Points of a way, empty where the file does not hold it. */
  long[] nodes(long id) throws IOException {
    long at = ids.find(id);
    long offset = at < 0 ? 0 : offsets.get(at);
    if (offset == 0) {
      return new long[0];
    }
    file.seek(offset);
    byte[] bytes = new byte[file.readInt() * Long.BYTES];
    file.readFully(bytes);
    long[] nodes = new long[bytes.length / Long.BYTES];
    ByteBuffer.wrap(bytes).asLongBuffer().get(nodes);
    return nodes;
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
