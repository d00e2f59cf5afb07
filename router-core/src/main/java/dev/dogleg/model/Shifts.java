package dev.dogleg.model;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Who works when: the card's hours and days off, under what is special about a day.
 *
 * @param groomers the card's groomers, in its order
 * @param entries special days
 */
public record Shifts(List<Groomer> groomers, List<DayEntry> entries) {
  /** Copies the lists. */
  public Shifts {
    groomers = List.copyOf(groomers);
    entries = List.copyOf(entries);
  }

  /**
   * What is special about a groomer's day.
   *
   * @param groomer the groomer
   * @param date the day
   * @return the groomer's own entry first, then everybody's
   */
  public List<DayEntry> entriesOf(Groomer groomer, LocalDate date) {
    return entries.stream()
        .filter(entry -> entry.date().equals(date) && entry.speaksOf(groomer.id()))
        .sorted(Comparator.comparing(entry -> entry.groomerId().isEmpty()))
        .toList();
  }

  /**
   * A groomer's shift on a day.
   *
   * @param groomer the groomer
   * @param date the day
   * @return hours of the day's entry, else of the card; empty where the day is not worked: the
   *     groomer's own entry wins over everybody's
   */
  public Optional<WallSpan> hours(Groomer groomer, LocalDate date) {
    for (DayEntry entry : entriesOf(groomer, date)) {
      if (entry.off()) {
        return Optional.empty();
      }
      if (entry.hours().isPresent()) {
        return entry.hours();
      }
    }
    return groomer.hoursOn(date);
  }

  /**
   * Whether anybody works on a day.
   *
   * @param date the day
   * @return true where somebody has a shift
   */
  public boolean anybodyOn(LocalDate date) {
    return groomers.stream().anyMatch(groomer -> hours(groomer, date).isPresent());
  }
}
