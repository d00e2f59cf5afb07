package dev.dogleg.cli.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

/**
 * Chooses the folder in which caches outlive a run: what {@code DOGLEG_CACHE} names; else {@code
 * .cache} in the project folder where that may be written; else {@code dogleg} in the user's own
 * cache folder.
 */
final class CacheFolder {
  private CacheFolder() {}

  /**
   * Chooses.
   *
   * @param environment the process's environment
   * @param project project folder, or empty
   * @param userHome the user's home folder
   * @return the folder; it need not exist
   */
  static Path choose(Map<String, String> environment, Optional<Path> project, Path userHome) {
    String named = environment.getOrDefault("DOGLEG_CACHE", "");
    if (!named.isBlank()) {
      return Path.of(named).toAbsolutePath();
    }
    if (project.isPresent() && Files.isWritable(project.get())) {
      return project.get().resolve(".cache");
    }
    String xdg = environment.getOrDefault("XDG_CACHE_HOME", "");
    String local = environment.getOrDefault("LOCALAPPDATA", "");
    Path users = Path.of(!xdg.isBlank() ? xdg : !local.isBlank() ? local : "");
    return (users.toString().isEmpty() ? userHome.resolve(".cache") : users).resolve("dogleg");
  }
}
