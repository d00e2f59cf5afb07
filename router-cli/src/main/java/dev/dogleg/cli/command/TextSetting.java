package dev.dogleg.cli.command;

import dev.dogleg.cli.csv.OwnTables;
import dev.dogleg.cli.tell.Phrases;
import dev.dogleg.cli.tell.Writer;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.model.Client;
import java.time.Clock;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZonedDateTime;
import java.util.Optional;

/** What texts are written with: phrases, languages, and what time it is. */
final class TextSetting {
  private final BookInput input;
  private final Clock clock;
  private final Faults faults;
  private final Phrases phrases;

  TextSetting(BookInput input, Clock clock, Faults faults) {
    this.input = input;
    this.clock = clock;
    this.faults = faults;
    this.phrases =
        Phrases.of(
            StarterTables.rows(Phrases.FILE),
            OwnTables.rows(input.folder(), Phrases.FILE, faults),
            faults);
  }

  /** {@return templates and words in force} */
  Phrases phrases() {
    return phrases;
  }

  /** The writer; empty where a fault stops: nobody can be written to. */
  Optional<Writer> writer() {
    String usual = input.texts().language();
    if (!phrases.knows(usual)) {
      unknown(Severity.STOP, Where.file(input.card()).at("texts.language"), usual);
    }
    for (Client client : input.book().clients()) {
      client
          .language()
          .filter(tag -> !phrases.knows(tag))
          .ifPresent(
              tag -> unknown(Severity.LOOK, input.rows().client(client.id()).at("language"), tag));
    }
    return faults.stops()
        ? Optional.empty()
        : Optional.of(new Writer(phrases, input.book().business().name(), usual));
  }

  private void unknown(Severity severity, Where where, String tag) {
    faults.add(
        new Fault(
            "unknown-language",
            severity,
            where,
            tag,
            "a language of the templates was expected: " + String.join(", ", phrases.tags()),
            severity == Severity.LOOK
                ? "until then the card's language is used"
                : "add its rows to " + Phrases.FILE + " in the book folder"));
  }

  /**
   * A time as typed: with its date, or of today.
   *
   * @param typed as typed; empty: the clock
   * @param option the option, for the fault
   * @return the time in the owners' zone; empty, with a fault, where it cannot be read
   */
  Optional<ZonedDateTime> time(Optional<String> typed, String option) {
    ZonedDateTime now =
        ZonedDateTime.now(clock.withZone(input.book().business().zone())).withNano(0);
    if (typed.isEmpty()) {
      return Optional.of(now);
    }
    try {
      String text = typed.get().strip();
      LocalDateTime local =
          text.contains("T")
              ? LocalDateTime.parse(text)
              : LocalTime.parse(text).atDate(LocalDate.from(now));
      return Optional.of(local.atZone(now.getZone()));
    } catch (DateTimeException bad) {
      faults.add(
          new Fault(
              "bad-time",
              Severity.STOP,
              Where.file(option),
              typed.get(),
              "a time like 18:30 or 2027-02-28T18:30 was expected",
              ""));
      return Optional.empty();
    }
  }
}
