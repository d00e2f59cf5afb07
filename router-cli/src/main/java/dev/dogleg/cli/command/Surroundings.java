package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Objects;
import java.util.Optional;

/**
 * What a command is given by the world around it; tests give their own.
 *
 * @param console where it speaks
 * @param clock what time it is; the card names the zone in which it is read
 * @param project folder of the project (demo book, sample map, starter tables), or empty where the
 *     program runs without it
 * @param typed how the program was called, to be shown where another call is advised
 * @param cache folder in which road networks and address indexes outlive a run
 */
public record Surroundings(
    Console console, Clock clock, Optional<Path> project, String typed, Path cache) {
  /** Checks that nothing is null. */
  public Surroundings {
    Objects.requireNonNull(console, "console");
    Objects.requireNonNull(clock, "clock");
    Objects.requireNonNull(project, "project");
    Objects.requireNonNull(typed, "typed");
    Objects.requireNonNull(cache, "cache");
  }

  /**
   * The day after today.
   *
   * @param zone zone in which the clock is read
   * @return tomorrow's date there
   */
  LocalDate tomorrow(ZoneId zone) {
    return LocalDate.now(clock.withZone(zone)).plusDays(1);
  }
}
