package dev.dogleg.cli.tell;

import java.util.Objects;

/**
 * A visit of which nothing is told now.
 *
 * @param door the visit
 * @param why why not, a few words
 * @param look whether a person should look at it
 */
public record Silence(AtDoor door, String why, boolean look) {
  /** Checks that nothing is null. */
  public Silence {
    Objects.requireNonNull(door, "door");
    Objects.requireNonNull(why, "why");
  }
}
