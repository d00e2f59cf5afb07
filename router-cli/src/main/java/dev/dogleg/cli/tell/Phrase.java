package dev.dogleg.cli.tell;

import dev.dogleg.cli.told.Occasion;
import dev.dogleg.cli.told.ToldEvent;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a row of the table of templates is for. */
enum Phrase {
  EVENING(Occasion.EVENING),
  ON_MY_WAY(Occasion.ON_MY_WAY),
  CHANGED(Occasion.CHANGED),
  ASK(Occasion.ASK),
  LATE(Occasion.LATE),
  CALENDAR,
  CALL,
  DATE,
  TIME,
  AND,
  STOP(ToldEvent.STOPPED),
  START(ToldEvent.RESUMED),
  YES(ToldEvent.CONFIRMED),
  NO(ToldEvent.REFUSED),
  NO_ANSWER(ToldEvent.NO_ANSWER);

  private final Optional<Occasion> occasion;
  private final Optional<ToldEvent> answer;

  Phrase() {
    this.occasion = Optional.empty();
    this.answer = Optional.empty();
  }

  Phrase(Occasion occasion) {
    this.occasion = Optional.of(occasion);
    this.answer = Optional.empty();
  }

  Phrase(ToldEvent answer) {
    this.occasion = Optional.empty();
    this.answer = Optional.of(answer);
  }

  /** {@return whether it is a template with fields} */
  boolean message() {
    return occasion.isPresent() || this == CALENDAR || this == CALL;
  }

  /** {@return the fields that its template may use} */
  List<String> fields() {
    boolean older = this == ASK || this == CHANGED;
    return Arrays.stream(Field.values())
        .filter(field -> older || field != Field.OLD_DATE)
        .map(Field::word)
        .toList();
  }

  /** {@return the answer that this lists the words of, or empty} */
  Optional<ToldEvent> answer() {
    return answer;
  }

  String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static Optional<Phrase> of(String word) {
    return Arrays.stream(values()).filter(one -> one.word().equals(word)).findFirst();
  }

  static Phrase of(Occasion occasion) {
    return Arrays.stream(values())
        .filter(one -> one.occasion.filter(occasion::equals).isPresent())
        .findFirst()
        .orElseThrow();
  }
}
