package dev.dogleg.plan.zone;

import dev.dogleg.model.Strength;
import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;

/**
 * A zone as far as its days go.
 *
 * @param name unique in a problem
 * @param groomerId whose zone, or empty: everybody's; on other groomers' days it binds nobody
 * @param strength what a visit on another day pays
 * @param now weekdays on which it is worked now
 * @param possible weekdays on which it might be worked, those of {@code now} among them; the same
 *     as {@code now} where its days are not to be moved
 */
public record ZoneDays(
    String name,
    Optional<String> groomerId,
    Strength strength,
    Set<DayOfWeek> now,
    Set<DayOfWeek> possible) {
  /** Checks that today's days are possible. */
  public ZoneDays {
    Objects.requireNonNull(name, "name");
    Objects.requireNonNull(groomerId, "groomerId");
    Objects.requireNonNull(strength, "strength");
    now = sorted(now);
    possible = sorted(possible);
    if (!possible.containsAll(now)) {
      throw new IllegalArgumentException("zone " + name + ": " + now + " not in " + possible);
    }
  }

  private static Set<DayOfWeek> sorted(Set<DayOfWeek> days) {
    return days.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(days));
  }
}
