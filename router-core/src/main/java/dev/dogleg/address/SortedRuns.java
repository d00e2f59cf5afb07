package dev.dogleg.address;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * Sorts any number of longs with a fixed heap: sorted runs are written to a folder, then merged
 * into one file without duplicates. Knuth, The Art of Computer Programming 3, section 5.4.
 */
final class SortedRuns {
  private final Path folder;
  private final long[] buffer;
  private int filled;
  private final List<Path> runs = new ArrayList<>();

  SortedRuns(Path folder, int bufferLongs) {
    this.folder = folder;
    this.buffer = new long[bufferLongs];
  }

  void add(long value) throws IOException {
    if (filled == buffer.length) {
      spill();
    }
    buffer[filled++] = value;
  }

  private void spill() throws IOException {
    Arrays.sort(buffer, 0, filled);
    Path run = folder.resolve("run-" + runs.size());
    runs.add(run);
    try (DataOutputStream out = output(run)) {
      for (int i = 0; i < filled; i++) {
        if (i == 0 || buffer[i] != buffer[i - 1]) {
          out.writeLong(buffer[i]);
        }
      }
    }
    filled = 0;
  }

  /** Merges all that was added into one ascending file; this object is spent afterwards. */
  MappedLongs merge(String name) throws IOException {
    spill();
    Path merged = folder.resolve(name);
    long count = 0;
    PriorityQueue<Run> queue = new PriorityQueue<>(Comparator.comparingLong((Run run) -> run.head));
    try (DataOutputStream out = output(merged)) {
      for (Path path : runs) {
        Run run = new Run(path);
        if (run.advance()) {
          queue.add(run);
        }
      }
      long last = 0;
      while (!queue.isEmpty()) {
        Run run = queue.remove();
        if (count == 0 || run.head != last) {
          last = run.head;
          out.writeLong(last);
          count++;
        }
        if (run.advance()) {
          queue.add(run);
        }
      }
    } finally {
      for (Path path : runs) {
        Files.deleteIfExists(path);
      }
    }
    return new MappedLongs(merged, count);
  }

  private static DataOutputStream output(Path path) throws IOException {
    return new DataOutputStream(new BufferedOutputStream(Files.newOutputStream(path), 1 << 16));
  }

  /** One run while it is merged. */
  private static final class Run {
    private final DataInputStream in;
    private long head;

    Run(Path path) throws IOException {
      in = new DataInputStream(new BufferedInputStream(Files.newInputStream(path), 1 << 14));
    }

    boolean advance() throws IOException {
      try {
        head = in.readLong();
        return true;
      } catch (EOFException e) {
        in.close();
        return false;
      }
    }
  }
}
