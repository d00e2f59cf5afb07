package dev.dogleg.cli.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Writes the files of a run whole or not at all: each beside its place, flushed, and only when all
 * are there moved into place. Readable by their owner only, for they say who is at home when.
 */
public final class WholeFiles {
  private final Path folder;
  private final Map<String, String> texts = new LinkedHashMap<>();

  /**
   * Files of one folder.
   *
   * @param folder where they shall lie; made where it does not exist
   */
  public WholeFiles(Path folder) {
    this.folder = folder;
  }

  /**
   * Adds a file.
   *
   * @param name file name
   * @param text what shall stand in it; null for: there shall be no such file, for yesterday's
   *     would mislead
   */
  public void put(String name, String text) {
    texts.put(name, text);
  }

  /**
   * Writes everything.
   *
   * @return where the files lie, in the order added
   * @throws IOException where a file cannot be written; those in place stay as they were unless
   *     moving itself failed
   */
  public List<Path> write() throws IOException {
    Files.createDirectories(folder);
    Map<String, Path> beside = new LinkedHashMap<>();
    List<Path> written = new ArrayList<>();
    try {
      for (Map.Entry<String, String> entry : texts.entrySet()) {
        if (entry.getValue() != null) {
          beside.put(entry.getKey(), writeBeside(entry.getKey(), entry.getValue()));
        }
      }
      for (Map.Entry<String, String> entry : texts.entrySet()) {
        Path place = folder.resolve(entry.getKey());
        if (entry.getValue() == null) {
          Files.deleteIfExists(place);
        } else {
          OwnerFile.moveInto(beside.get(entry.getKey()), place);
          written.add(place);
        }
      }
      return List.copyOf(written);
    } finally {
      for (Path left : beside.values()) {
        Files.deleteIfExists(left);
      }
    }
  }

  private Path writeBeside(String name, String text) throws IOException {
    Path file = Files.createTempFile(folder, "." + name + ".", ".part", OwnerFile.ownerOnly());
    OwnerFile.fill(file, text);
    return file;
  }
}
