package dev.dogleg.roads;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.locks.ReentrantLock;
import java.util.stream.Stream;

/**
 * The cache folder: one entry for each map checksum, van card and version.
 *
 * <p>An entry is built beside its place under a lock and moved there in one step, so nobody ever
 * sees half of one. Its stamp, written last, names every file with its size.
 */
final class RoadCache {
  /** Raised whenever what is stored changes its meaning. */
  static final int FORMAT_VERSION = 2;

  private static final String STAMP = "stamp.txt";
  private static final ConcurrentHashMap<Path, ReentrantLock> IN_THIS_PROCESS =
      new ConcurrentHashMap<>();

  /** Fills an empty folder. */
  @FunctionalInterface
  interface Filler {
    void fill(Path folder) throws IOException;
  }

  private final Path folder;
  private final String key;
  private final Progress progress;

  RoadCache(Path folder, String mapChecksum, VanCard van, Progress progress) {
    this.folder = folder.toAbsolutePath().normalize();
    this.key = key(mapChecksum, van);
    this.progress = progress;
  }

  private static String key(String mapChecksum, VanCard van) {
    String text =
        String.join(
            "|", mapChecksum, van.toString(), VanProfile.VERSION, Integer.toString(FORMAT_VERSION));
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
      return HexFormat.of().formatHex(digest, 0, 8);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  String key() {
    return key;
  }

  private Path entry() {
    return folder.resolve("roads-" + key);
  }

  /**
   * Finds the entry, building it where it is missing or damaged.
   *
   * @param filler builds it
   * @return its folder
   */
  Path find(Filler filler) {
    if (complete()) {
      return entry();
    }
    ReentrantLock local = IN_THIS_PROCESS.computeIfAbsent(entry(), path -> new ReentrantLock());
    if (!local.tryLock()) {
      progress.begins(MapPhase.WAITING, "");
      local.lock();
    }
    try {
      return findLocked(filler);
    } catch (IOException | UncheckedIOException e) {
      throw RoadFaults.cacheUnusable(folder, String.valueOf(e.getMessage()));
    } finally {
      local.unlock();
    }
  }

  /** {@return the entry's folder; empty where it is missing or damaged} */
  Optional<Path> kept() {
    return complete() ? Optional.of(entry()) : Optional.empty();
  }

  private Path findLocked(Filler filler) throws IOException {
    Path firstMade = firstMissing(folder);
    Files.createDirectories(folder);
    Path lockFile = folder.resolve("roads-" + key + ".lock");
    boolean done = false;
    FileChannel held = lock(lockFile);
    try {
      if (!complete()) {
        build(filler);
      }
      done = true;
    } finally {
      Files.deleteIfExists(lockFile);
      held.close();
      if (!done) {
        removeWhereEmpty(firstMade);
      }
    }
    return entry();
  }

  /**
   * Opens and locks. The last holder may have deleted the file meanwhile; so the holder gives the
   * file a length that is its own process number, and looks whether the path now names a file of
   * that length. (Reading the file back would open it once more, and on POSIX closing any handle of
   * a file drops the process's locks on it.)
   */
  private FileChannel lock(Path lockFile) throws IOException {
    long own = ProcessHandle.current().pid();
    while (true) {
      FileChannel channel =
          FileChannel.open(lockFile, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      FileLock lock = channel.tryLock();
      if (lock == null) {
        progress.begins(MapPhase.WAITING, "");
        lock = channel.lock();
      }
      channel.truncate(0);
      channel.write(ByteBuffer.allocate(1), own);
      if (lock.isValid() && Files.exists(lockFile) && Files.size(lockFile) == own + 1) {
        return channel;
      }
      channel.close();
    }
  }

  private void build(Filler filler) throws IOException {
    if (Files.exists(entry())) {
      progress.notice(RoadFaults.cacheDamaged(entry(), damage()));
      remove(entry());
    }
    Path building = folder.resolve("roads-" + key + ".building");
    remove(building);
    try {
      Files.createDirectory(building);
      filler.fill(building);
      Files.writeString(building.resolve(STAMP), stamp(building));
      move(building, entry());
    } finally {
      remove(building);
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException e) {
      // Both lie in one folder; a file system that cannot do this still renames.
      Files.move(from, to);
    }
  }

  private boolean complete() {
    return damage().isEmpty();
  }

  /** What is wrong with the entry; empty where nothing is. */
  private String damage() {
    Path file = entry().resolve(STAMP);
    try {
      if (!Files.isRegularFile(file)) {
        return "no stamp";
      }
      return Files.readString(file).equals(stamp(entry())) ? "" : "files do not match the stamp";
    } catch (IOException | UncheckedIOException e) {
      return String.valueOf(e.getMessage());
    }
  }

  private String stamp(Path of) throws IOException {
    StringBuilder text = new StringBuilder();
    text.append("dogleg road cache, format ").append(FORMAT_VERSION).append('\n');
    text.append("key ").append(key).append('\n');
    try (Stream<Path> files = Files.walk(of)) {
      for (Path file : files.filter(Files::isRegularFile).sorted().toList()) {
        String name = of.relativize(file).toString().replace('\\', '/');
        if (!name.equals(STAMP) && !name.endsWith(".lock")) {
          text.append(Files.size(file)).append(' ').append(name).append('\n');
        }
      }
    }
    return text.toString();
  }

  /** Throws away an entry that turned out unreadable although its stamp fits. */
  void discard(String why) {
    progress.notice(RoadFaults.cacheDamaged(entry(), why));
    try {
      remove(entry());
    } catch (IOException e) {
      throw RoadFaults.cacheUnusable(folder, String.valueOf(e.getMessage()));
    }
  }

  private static Path firstMissing(Path path) {
    Path missing = null;
    for (Path at = path; at != null && !Files.exists(at); at = at.getParent()) {
      missing = at;
    }
    return missing;
  }

  /** Takes back the folders that only this run has made. */
  private void removeWhereEmpty(Path firstMade) throws IOException {
    if (firstMade == null) {
      return;
    }
    for (Path at = folder; at != null && at.startsWith(firstMade); at = at.getParent()) {
      try (Stream<Path> inside = Files.list(at)) {
        if (inside.findAny().isPresent()) {
          return;
        }
      }
      Files.deleteIfExists(at);
    }
  }

  private static void remove(Path path) throws IOException {
    if (!Files.exists(path)) {
      return;
    }
    try (Stream<Path> files = Files.walk(path)) {
      for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(file);
      }
    }
  }
}
