package dev.dogleg.cli.words;

import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** The words for weekdays: {@code Tue}, {@code tues}, {@code Tuesday}, {@code Tuesdays}. */
public final class Weekdays {
  private static final Set<DayOfWeek> WEEKEND = EnumSet.of(DayOfWeek.SATURDAY, DayOfWeek.SUNDAY);

  private Weekdays() {}

  /**
   * One weekday.
   *
   * @param word its name, of three letters or more, any case, also in the plural
   * @return the weekday, or empty
   */
  public static Optional<DayOfWeek> day(String word) {
    String text = word.toLowerCase(Locale.ROOT);
    if (text.length() < 3) {
      return Optional.empty();
    }
    for (DayOfWeek day : DayOfWeek.values()) {
      String name = day.name().toLowerCase(Locale.ROOT);
      if ((name + "s").equals(text)
          || ((text.length() <= 5 || text.equals(name)) && name.startsWith(text))) {
        return Optional.of(day);
      }
    }
    return Optional.empty();
  }

  /** A word that names several days, or one. */
  static Optional<Set<DayOfWeek>> days(String word) {
    return switch (word) {
      case "weekday", "weekdays" -> Optional.of(EnumSet.complementOf(EnumSet.copyOf(WEEKEND)));
      case "weekend", "weekends" -> Optional.of(EnumSet.copyOf(WEEKEND));
      case "daily" -> Optional.of(EnumSet.allOf(DayOfWeek.class));
      default -> day(word).map(EnumSet::of);
    };
  }

  /** From one weekday to another, over Sunday where need be. */
  static Set<DayOfWeek> span(DayOfWeek from, DayOfWeek to) {
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    for (DayOfWeek day = from; ; day = day.plus(1)) {
      days.add(day);
      if (day == to) {
        return days;
      }
    }
  }
}
