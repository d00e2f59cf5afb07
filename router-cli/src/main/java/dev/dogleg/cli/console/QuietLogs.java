package dev.dogleg.cli.console;

import java.util.List;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Keeps the libraries' own chatter out of a groomer's sight. */
public final class QuietLogs {
  // The log manager keeps loggers weakly: without this list their levels would be forgotten.
  private static final List<Logger> KEPT =
      List.of(
          Logger.getLogger("com.graphhopper"),
          Logger.getLogger("org.apache.lucene"),
          Logger.getLogger("com.carrotsearch"),
          Logger.getLogger("org.jline"));

  private QuietLogs() {}

  /**
   * Lets through what is severe only.
   *
   * @param wanted {@code info} to hear the libraries; anything else, or null, for silence
   */
  public static void set(String wanted) {
    Level level = "info".equals(wanted) ? Level.INFO : Level.SEVERE;
    Logger.getLogger("").setLevel(level);
    KEPT.forEach(logger -> logger.setLevel(level));
  }
}
