package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.tell.Phrases;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.cli.told.ToldEvent;
import dev.dogleg.cli.told.ToldLog;
import dev.dogleg.cli.told.ToldRow;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Client;
import java.io.IOException;
import java.time.OffsetDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Notes what owners replied. */
final class Answers {
  private static final Where PLACE = Where.file("--answer");

  private final BookInput input;
  private final Phrases phrases;
  private final ToldLog log;
  private final Faults faults;

  Answers(BookInput input, Phrases phrases, ToldLog log, Faults faults) {
    this.input = input;
    this.phrases = phrases;
    this.log = log;
    this.faults = faults;
  }

  /**
   * Notes replies, all or none.
   *
   * @param replies each {@code CLIENT=REPLY}
   * @param now when
   * @param console takes a line each
   * @return false, with faults, where one cannot be noted
   * @throws IOException where the log cannot be written
   */
  boolean note(List<String> replies, OffsetDateTime now, Console console) throws IOException {
    List<ToldRow> rows = new ArrayList<>();
    List<String> lines = new ArrayList<>();
    for (String reply : replies) {
      int at = reply.indexOf('=');
      Optional<Client> client = client(reply.substring(0, at).strip());
      Optional<ToldEvent> event = event(reply.substring(at + 1).strip());
      if (client.isPresent() && event.isPresent()) {
        row(client.get(), event.get(), now).ifPresent(rows::add);
        lines.add(client.get().name() + ": " + said(event.get()));
      }
    }
    if (faults.stops()) {
      return false;
    }
    log.append(rows);
    lines.forEach(console::say);
    return true;
  }

  private Optional<Client> client(String name) {
    List<Client> meant =
        input.book().clients().stream()
            .filter(one -> one.id().equals(name) || one.name().equalsIgnoreCase(name))
            .toList();
    if (meant.size() != 1) {
      stop(
          meant.isEmpty() ? "unknown-client" : "ambiguous-client",
          name,
          "the name or the id of one client was expected",
          "");
      return Optional.empty();
    }
    return Optional.of(meant.get(0));
  }

  private Optional<ToldEvent> event(String reply) {
    Optional<ToldEvent> event = phrases.answer(reply);
    if (event.isEmpty()) {
      Optional<String> word = phrases.stopWordIn(reply);
      stop(
          "unknown-reply",
          reply,
          "yes, no, stop, start or none was expected",
          word.map(found -> "it holds the stop word " + found + ": write stop if that is meant")
              .orElse("more words stand in " + Phrases.FILE));
    }
    return event;
  }

  private Optional<ToldRow> row(Client client, ToldEvent event, OffsetDateTime now) {
    if (event == ToldEvent.STOPPED || event == ToldEvent.RESUMED) {
      return Optional.of(new ToldRow(now, event, 0, 0, client.id(), Optional.empty(), ""));
    }
    Optional<ToldRow> last = ToldBook.of(log.rows()).lastOf(client.id());
    if (last.isEmpty()) {
      stop("nothing-told", client.name(), "somebody who was told something was expected", "");
    }
    return last.map(row -> new ToldRow(now, event, row.run(), 0, client.id(), row.told(), ""));
  }

  private static String said(ToldEvent event) {
    return switch (event) {
      case STOPPED ->
          "gets no more texts. If it may have been the visit that was meant, call and ask.";
      case RESUMED -> "gets texts again.";
      default -> event.word().toLowerCase(Locale.ROOT) + ", noted for what was told last.";
    };
  }

  private void stop(String code, String seen, String expected, String hint) {
    faults.add(new Fault(code, Severity.STOP, PLACE, seen, expected, hint));
  }
}
