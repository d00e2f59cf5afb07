package dev.dogleg.cli.tell;

import dev.dogleg.cli.told.Occasion;
import dev.dogleg.model.WallSpan;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.Optional;

/** Writes messages in the language of each client. */
public final class Writer {
  private final Phrases phrases;
  private final String business;
  private final String usualLanguage;

  /**
   * A writer.
   *
   * @param phrases templates and words
   * @param business name of the business; empty: the groomer's stands for it
   * @param usualLanguage language of clients who name none; one that the phrases know
   */
  public Writer(Phrases phrases, String business, String usualLanguage) {
    this.phrases = phrases;
    this.business = business;
    this.usualLanguage = usualLanguage;
    if (!phrases.knows(usualLanguage)) {
      throw new IllegalArgumentException("no phrases for " + usualLanguage);
    }
  }

  /**
   * What stands under a visit in its owner's calendar.
   *
   * @param door the visit
   * @param span what was told
   * @return the text, on one line
   */
  public String calendar(AtDoor door, WallSpan span) {
    return message(door, Phrase.CALENDAR, span, Optional.empty());
  }

  /**
   * The title of a visit in its owner's calendar.
   *
   * @param door the visit
   * @return business and pets, on one line
   */
  public String title(AtDoor door) {
    String who = business.isEmpty() ? door.groomer() : business;
    return PlainMarks.of(who + ": " + language(door).list(door.pets()));
  }

  private Language language(AtDoor door) {
    return phrases.language(door.client().language().filter(phrases::knows).orElse(usualLanguage));
  }

  /** What a person says of a visit, on the phone or through the neighbour. */
  String spoken(AtDoor door, Occasion occasion, WallSpan span, Optional<LocalDate> oldDate) {
    Phrase phrase = occasion == Occasion.ASK ? Phrase.ASK : Phrase.CALL;
    return message(door, phrase, span, oldDate);
  }

  /** The message of a visit; {@code oldDate} where another day was told or agreed before. */
  String message(AtDoor door, Occasion occasion, WallSpan span, Optional<LocalDate> oldDate) {
    return message(door, Phrase.of(occasion), span, oldDate);
  }

  private String message(AtDoor door, Phrase phrase, WallSpan span, Optional<LocalDate> oldDate) {
    Language language = language(door);
    EnumMap<Field, String> values = new EnumMap<>(Field.class);
    String name = door.client().name();
    values.put(Field.CLIENT, name);
    values.put(Field.FIRST, name.strip().split("\\s+")[0]);
    values.put(Field.PETS, language.list(door.pets()));
    values.put(Field.DATE, language.date(door.date()));
    values.put(Field.FROM, language.time(span.fromSeconds()));
    values.put(Field.TO, language.time(span.toSeconds()));
    values.put(Field.BUSINESS, business.isEmpty() ? door.groomer() : business);
    values.put(Field.GROOMER, door.groomer());
    values.put(Field.OLD_DATE, language.date(oldDate.orElse(door.date())));
    return language.message(phrase, values);
  }
}
