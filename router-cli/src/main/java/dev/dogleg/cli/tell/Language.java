package dev.dogleg.cli.tell;

import dev.dogleg.model.WallSpan;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** How one language says things. */
final class Language {
  private final Map<Phrase, MessageTemplate> messages = new EnumMap<>(Phrase.class);
  private final DateTimeFormatter date;
  private final DateTimeFormatter time;
  private final String and;

  /**
   * A language.
   *
   * @param tag BCP 47
   * @param texts a sound text for every phrase
   */
  Language(String tag, Map<Phrase, String> texts) {
    Locale locale = Locale.forLanguageTag(tag);
    texts.forEach(
        (phrase, text) -> {
          if (phrase.message()) {
            messages.put(phrase, MessageTemplate.of(text));
          }
        });
    date = DateTimeFormatter.ofPattern(texts.get(Phrase.DATE), locale);
    time = DateTimeFormatter.ofPattern(texts.get(Phrase.TIME), locale);
    and = texts.get(Phrase.AND);
  }

  String message(Phrase phrase, EnumMap<Field, String> values) {
    return messages.get(phrase).message(values);
  }

  String date(LocalDate day) {
    return date.format(day);
  }

  /** A time of day; midnight at a day's end is said as midnight. */
  String time(int wallSeconds) {
    return time.format(LocalTime.ofSecondOfDay(wallSeconds % WallSpan.MIDNIGHT));
  }

  /** {@code Biscuit}, {@code Biscuit and Mop}, {@code Biscuit, Mop and Pip}. */
  String list(List<String> names) {
    int last = names.size() - 1;
    return last < 1
        ? String.join("", names)
        : String.join(", ", names.subList(0, last)) + " " + and + " " + names.get(last);
  }
}
