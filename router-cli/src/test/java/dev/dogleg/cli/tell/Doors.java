package dev.dogleg.cli.tell;

import dev.dogleg.model.Client;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.Place;
import dev.dogleg.model.WallSpan;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** Doors of tests. */
final class Doors {
  static final LocalDate DAY = LocalDate.of(2027, 3, 1);

  private Doors() {}

  static Client client(String name, HowToTell tell, String phone) {
    return new Client(
        "c-1",
        name,
        Optional.of(phone).filter(text -> !text.isEmpty()),
        tell,
        new Place("14 Hazel Avenue, Brindlewick", Optional.empty()),
        "",
        "gate 4471",
        0,
        "");
  }

  static AtDoor door(String name, LocalDate date) {
    return door(client(name, HowToTell.TEXT, "+12065550103"), date, "13:00-13:30");
  }

  /** A door at which the plan has the van at the start of the span. */
  static AtDoor door(Client client, LocalDate date, String span) {
    return door(client, date, span, "", Optional.empty(), false);
  }

  static AtDoor door(
      Client client,
      LocalDate date,
      String span,
      String promised,
      Optional<LocalDate> agreed,
      boolean ask) {
    WallSpan told = span(span);
    return new AtDoor(
        List.of("c-1.fern@" + agreed.orElse(date)),
        client,
        List.of("Fern"),
        date,
        "Marlo Finch",
        told.fromSeconds(),
        told,
        promised.isEmpty() ? Optional.empty() : Optional.of(span(promised)),
        true,
        agreed,
        ask);
  }

  /** {@code 13:00-13:30}. */
  static WallSpan span(String text) {
    String[] parts = text.split("[:-]");
    return new WallSpan(
        3_600 * Integer.parseInt(parts[0]) + 60 * Integer.parseInt(parts[1]),
        3_600 * Integer.parseInt(parts[2]) + 60 * Integer.parseInt(parts[3]));
  }
}
