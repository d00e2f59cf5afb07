package dev.dogleg.address;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.apache.lucene.index.DirectoryReader;
import org.apache.lucene.store.MMapDirectory;

/**
 * Where the index of a map lies in the cache: one folder a map and format, built beside its place
 * and moved into it whole, under a lock that other processes and threads wait for.
 */
final class IndexFolder {
  private static final int NAME_DIGITS = 16;

  /** A file lock does not keep threads of one process apart. */
  private static final Map<Path, Object> GATES = new ConcurrentHashMap<>();

  private final Path cache;
  private final String name;

  IndexFolder(Path cache, String checksum) {
    this.cache = cache;
    this.name = "address-" + Fields.FORMAT + "-" + checksum.substring(0, NAME_DIGITS);
  }

  /** Opens the index, building it first where it is missing or damaged. */
  DirectoryReader open(MapFile map, IndexBuilder builder, IndexProgress progress) {
    try {
      Files.createDirectories(cache);
      Path place = cache.resolve(name);
      if (Files.isDirectory(place)) {
        try {
          return DirectoryReader.open(new MMapDirectory(place));
        } catch (IOException damaged) {
          progress.at("rebuilding a damaged index", 0);
        }
      }
      Path gate = cache.toAbsolutePath().normalize().resolve(name);
      synchronized (GATES.computeIfAbsent(gate, key -> new Object())) {
        return openAlone(place, map, builder, progress);
      }
    } catch (IOException e) {
      throw new FaultException(
          new Fault(
              "cache-unwritable",
              Severity.STOP,
              Where.file(cache.toString()),
              "",
              "a folder that the address index can be kept in, but " + e,
              "free some space or name another cache folder"),
          e);
    }
  }

  /** {@return the index as it lies there; empty where there is none} */
  Optional<DirectoryReader> kept() throws IOException {
    Path place = cache.resolve(name);
    return Files.isDirectory(place)
        ? Optional.of(DirectoryReader.open(new MMapDirectory(place)))
        : Optional.empty();
  }

  private DirectoryReader openAlone(
      Path place, MapFile map, IndexBuilder builder, IndexProgress progress) throws IOException {
    try (FileChannel channel =
            FileChannel.open(
                cache.resolve(name + ".lock"),
                StandardOpenOption.CREATE,
                StandardOpenOption.WRITE);
        FileLock lock = channel.lock()) {
      if (!lock.isValid()) {
        throw new IOException("the lock of the cache was lost");
      }
      if (Files.isDirectory(place)) {
        try {
          return DirectoryReader.open(new MMapDirectory(place));
        } catch (IOException damaged) {
          IndexBuilder.delete(place);
        }
      }
      for (Path left : leftovers()) {
        IndexBuilder.delete(left);
      }
      Path building = Files.createTempDirectory(cache, name + ".building-");
      try {
        Path index = Files.createDirectory(building.resolve("index"));
        builder.build(map, index, building.resolve("scratch"), progress);
        Files.move(index, place, StandardCopyOption.ATOMIC_MOVE);
      } finally {
        deleteIfPossible(building);
      }
      return DirectoryReader.open(new MMapDirectory(place));
    }
  }

  /** Some systems keep mapped scratch files for a while; the next build then takes them away. */
  private static void deleteIfPossible(Path building) {
    try {
      IndexBuilder.delete(building);
    } catch (IOException stillMapped) {
      building.toFile().deleteOnExit();
    }
  }

  /** Of builds that were killed; nobody builds while the lock is ours. */
  private List<Path> leftovers() throws IOException {
    try (Stream<Path> files = Files.list(cache)) {
      return files
          .filter(file -> file.getFileName().toString().startsWith(name + ".building-"))
          .toList();
    }
  }
}
