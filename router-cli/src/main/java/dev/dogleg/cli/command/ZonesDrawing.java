package dev.dogleg.cli.command;

import dev.dogleg.cli.export.ZonesMap;
import dev.dogleg.cli.export.ZonesMap.Door;
import dev.dogleg.cli.export.ZonesMap.Drive;
import dev.dogleg.cli.export.ZonesMap.ZoneShape;
import dev.dogleg.cli.prepare.DayLines;
import dev.dogleg.cli.prepare.FreeWeek;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.ZoneRound;
import dev.dogleg.cli.prepare.ZoneRound.ZonedClient;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.fit.PlannedVanDay;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.GeoPoint;
import java.time.DayOfWeek;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Gathers what the map of the zones shows. */
final class ZonesDrawing {
  private final Book book;
  private final ZoneRound round;
  private final FreeWeek free;
  private final ZonesFacts facts;

  ZonesDrawing(Book book, ZoneRound round, FreeWeek free, ZonesFacts facts) {
    this.book = book;
    this.round = round;
    this.free = free;
    this.facts = facts;
  }

  /** The map; drives are drawn along the roads of each day's van. */
  ZonesMap draw(MapInUse map) {
    List<ZoneShape> shapes = new ArrayList<>();
    for (int zone = 0; zone < book.week().zones().size(); zone++) {
      int number = zone;
      shapes.add(
          new ZoneShape(
              book.week().zones().get(zone).name(),
              round.areas().get(zone),
              round.clients().stream()
                  .filter(one -> one.zones().contains(number))
                  .map(ZonedClient::point)
                  .toList()));
    }
    List<Drive> drives = new ArrayList<>();
    Set<GeoPoint> homes = new LinkedHashSet<>();
    for (PlannedVanDay day : facts.planned()) {
      VanDay vanDay = free.week().days().get(day.number());
      DayLines.of(free.week(), vanDay, day.plan(), book.business(), map)
          .forEach(line -> drives.add(new Drive(weekday(day.number()), line)));
      for (PlannedStop stop : day.plan().stops()) {
        if (stop.kind() == PlannedStop.Kind.LEAVE || stop.kind() == PlannedStop.Kind.HOME) {
          homes.add(free.week().places().get(stop.place()).point());
        }
      }
    }
    return new ZonesMap(shapes, doors(), List.copyOf(homes), drives);
  }

  private List<Door> doors() {
    Map<String, String> visits = new HashMap<>();
    free.placed()
        .keySet()
        .forEach(
            visit -> {
              for (Booking booking : free.week().bookings().get(visit)) {
                // Of several visits one that is on a wrong day is shown.
                visits.merge(
                    booking.clientId(),
                    visit,
                    (one, other) -> facts.wrong().contains(one) ? one : other);
              }
            });
    return round.clients().stream()
        .map(
            one -> {
              Optional<String> visit = Optional.ofNullable(visits.get(one.client().id()));
              return new Door(
                  one.point(),
                  visit.map(id -> weekday(free.placed().get(id))),
                  visit.filter(facts.wrong()::contains).isPresent());
            })
        .toList();
  }

  private DayOfWeek weekday(int day) {
    return free.week().days().get(day).day().date().getDayOfWeek();
  }
}
