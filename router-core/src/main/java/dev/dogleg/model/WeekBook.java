package dev.dogleg.model;

import java.util.List;

/**
 * What a book says besides clients, pets and bookings.
 *
 * @param days special days
 * @param rules rules by tag, in the file's order
 * @param zones zones, in the file's order
 * @param errands the groomer's own stops
 */
public record WeekBook(
    List<DayEntry> days, List<TagRule> rules, List<Zone> zones, List<Errand> errands) {
  /** Nothing. */
  public static final WeekBook NONE = new WeekBook(List.of(), List.of(), List.of(), List.of());

  /** Copies the lists. */
  public WeekBook {
    days = List.copyOf(days);
    rules = List.copyOf(rules);
    zones = List.copyOf(zones);
    errands = List.copyOf(errands);
  }
}
