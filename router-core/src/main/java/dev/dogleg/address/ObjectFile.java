package dev.dogleg.address;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.Closeable;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** A scratch file of map objects: written once, then read from the start as often as needed. */
final class ObjectFile implements Closeable {
  private final Path path;
  private final DataOutputStream out;
  private long count;

  ObjectFile(Path path) throws IOException {
    this.path = path;
    this.out = new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(path), 1 << 16));
  }

  void add(MapObject object) throws IOException {
    object.write(out);
    count++;
  }

  long count() {
    return count;
  }

  /** Ends the writing and reads all objects in the order written. */
  void each(Taker taker) throws IOException {
    out.flush();
    try (DataInputStream in =
        new DataInputStream(new BufferedInputStream(Files.newInputStream(path), 1 << 16))) {
      for (long i = 0; i < count; i++) {
        taker.take(MapObject.read(in));
      }
    }
  }

  @Override
  public void close() throws IOException {
    out.close();
  }

  /** Takes one object. */
  @FunctionalInterface
  interface Taker {
    /** Takes it; may fail where it writes. */
    void take(MapObject object) throws IOException;
  }
}
