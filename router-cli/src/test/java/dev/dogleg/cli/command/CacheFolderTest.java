package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Where caches outlive a run. */
class CacheFolderTest {
  @TempDir Path project;

  @Test
  void aNamedFolderWins() {
    Path named = project.resolve("named");
    assertEquals(
        named,
        CacheFolder.choose(
            Map.of("DOGLEG_CACHE", named.toString()), Optional.of(project), Path.of("/home/x")));
  }

  @Test
  void elseTheProjectsOwnFolder() {
    assertEquals(
        project.resolve(".cache"),
        CacheFolder.choose(Map.of(), Optional.of(project), Path.of("/home/x")));
  }

  @Test
  void elseTheUsersCacheFolder() {
    Path gone = project.resolve("no such folder");
    assertEquals(
        Path.of("/home/x/.cache/dogleg"),
        CacheFolder.choose(Map.of(), Optional.of(gone), Path.of("/home/x")));
    assertEquals(
        Path.of("/c/dogleg"),
        CacheFolder.choose(Map.of("XDG_CACHE_HOME", "/c"), Optional.empty(), Path.of("/home/x")));
  }
}
