package dev.dogleg.cli.prepare;

import dev.dogleg.cli.prepare.WeekPlaces.Need;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Book;
import dev.dogleg.model.Place;
import dev.dogleg.model.Zone;
import java.util.ArrayList;
import java.util.List;

/** The places that a week needs, and where each stands in the book. */
final class WeekNeeds {
  private WeekNeeds() {}

  static List<Need> of(Book book, List<VanDay> days, List<WeekStop> stops, RowFinder rows) {
    List<Need> needs = new ArrayList<>();
    for (VanDay day : days) {
      ends(needs, day, day.start(), "start", rows);
      ends(needs, day, day.end(), "end", rows);
    }
    for (WeekStop stop : stops) {
      add(
          needs,
          stop.place(),
          source(stop, rows),
          stop.draft().told() ? Severity.STOP : Severity.ASIDE);
    }
    boolean tanks =
        days.stream()
            .anyMatch(
                day -> day.van().freshLitres().isPresent() || day.van().greyLitres().isPresent());
    if (tanks) {
      for (VanDay day : days) {
        if (book.business().week().water().atHome()) {
          add(needs, day.groomer().home(), home(day, rows), Severity.STOP);
        }
      }
      for (Place place : book.business().week().water().places()) {
        add(needs, place, plain(rows.waterPlaces(), "the list"), Severity.STOP);
      }
    }
    zones(needs, book, rows);
    return needs;
  }

  /** Places from which zones count their minutes. */
  static void zones(List<Need> needs, Book book, RowFinder rows) {
    for (Zone zone : book.week().zones()) {
      zone.from()
          .ifPresent(
              place ->
                  add(
                      needs,
                      place,
                      plain(rows.zone(zone.name()).at("from"), "the column from"),
                      Severity.STOP));
    }
  }

  private static void ends(
      List<Need> needs, VanDay day, Place place, String column, RowFinder rows) {
    boolean home = place.equals(day.groomer().home());
    add(
        needs,
        place,
        home ? home(day, rows) : plain(Where.file("days.csv").at(column), "the column " + column),
        Severity.STOP);
  }

  private static void add(List<Need> needs, Place place, DoorSource source, Severity severity) {
    Need need = new Need(place, source, severity);
    if (!needs.contains(need)) {
      needs.add(need);
    }
  }

  private static DoorSource home(VanDay day, RowFinder rows) {
    return DoorSource.home(rows.home(day.groomer().id()));
  }

  private static DoorSource plain(Where where, String what) {
    return new DoorSource(where, where, "write lat,lon into " + what);
  }

  /** Where the door of a stop stands. */
  static DoorSource source(WeekStop stop, RowFinder rows) {
    return stop.client().isPresent()
        ? DoorSource.client(rows.client(stop.client().get().id()))
        : plain(rows.errand(stop.errand().orElseThrow().id()).at("address"), "the column address");
  }
}
