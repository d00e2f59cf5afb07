package dev.dogleg.cli.terms;

import dev.dogleg.model.Zone;
import java.time.DayOfWeek;
import java.util.Collections;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** The weekdays of a zone, where its days are said by weekdays alone. */
public final class ZoneWeekdays {
  private ZoneWeekdays() {}

  /**
   * The weekdays of a zone.
   *
   * @param zone the zone
   * @return its weekdays; empty where other tags of a day matter too, so that its days are no
   *     weekdays
   */
  public static Optional<Set<DayOfWeek>> of(Zone zone) {
    Set<String> words = new TreeSet<>();
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day : DayOfWeek.values()) {
      words.addAll(VanDays.weekday(day));
      if (zone.days().matches(VanDays.weekday(day))) {
        days.add(day);
      }
    }
    return words.containsAll(zone.days().names())
        ? Optional.of(Collections.unmodifiableSet(days))
        : Optional.empty();
  }
}
