package dev.dogleg.cli.command;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.Progress;
import dev.dogleg.cli.export.OpeningsSheet;
import dev.dogleg.cli.export.OpeningsSheet.Cell;
import dev.dogleg.cli.prepare.CallerKind;
import dev.dogleg.cli.prepare.Callers;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.MoreRows;
import dev.dogleg.cli.prepare.PreparedWeek;
import dev.dogleg.cli.prepare.WeekPreparation;
import dev.dogleg.cli.prepare.ZoneDoors;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.fit.RoomAhead;
import dev.dogleg.fit.RoomAsk;
import dev.dogleg.fit.RoomQuestion;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Place;
import dev.dogleg.plan.week.WeekPlanner;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntConsumer;

/**
 * Asks for room at every known door and puts the cells of a table together.
 *
 * <p>Maintainers: a week takes so many bookings only, so doors are asked for by some; a cell holds
 * what holds at all of them.
 */
final class OpeningsTable {
  private final BookInput input;
  private final OpenDays open;
  private final MapInUse map;
  private final Console console;
  private final OpeningsSheet.Terms terms;
  private final Map<String, Cell> cells = new HashMap<>();
  private final Map<String, Integer> doors = new HashMap<>();
  private final Map<CallerKind, Integer> seconds = new HashMap<>();

  OpeningsTable(
      BookInput input, OpenDays open, MapInUse map, Console console, OpeningsSheet.Terms terms) {
    this.input = input;
    this.open = open;
    this.map = map;
    this.console = console;
    this.terms = terms;
  }

  /** One door of a zone. */
  private record ZoneDoor(String zone, int number, Place place) {}

  /** Whoever may call from a door of a zone. */
  private record Caller(String zone, CallerKind kind, String id) {}

  /**
   * Fills the table.
   *
   * @param zones doors by zone
   * @param faults takes what stops the run
   * @return false where the run is stopped
   */
  boolean fill(ZoneDoors zones, Faults faults) {
    List<ZoneDoor> all = new ArrayList<>();
    List<String> names = names(zones);
    for (String zone : names) {
      doors(zones, zone).forEach(place -> all.add(new ZoneDoor(zone, names.indexOf(zone), place)));
    }
    int some = open.room() / CallerKind.values().length;
    if (some < 1) {
      throw new FaultException(tooMany());
    }
    int days = open.days().size();
    int parts = (all.size() + some - 1) / some;
    try (Progress progress = console.progress("Looking for room")) {
      for (int part = 0; part < parts; part++) {
        int done = part;
        List<ZoneDoor> asked = all.subList(part * some, Math.min(all.size(), (part + 1) * some));
        if (!ask(
            asked, day -> progress.at((long) done * days + day, (long) parts * days), faults)) {
          return false;
        }
      }
    }
    return true;
  }

  private static Fault tooMany() {
    return new Fault(
        "too-many-visits",
        Severity.STOP,
        Where.NOWHERE,
        "",
        "room for callers beside the stops that ask for one day was expected",
        "ask for fewer --weeks, or give bookings narrower dates");
  }

  /** Names of zones, and of what lies in none where anybody lives there. */
  private static List<String> names(ZoneDoors zones) {
    List<String> names = new ArrayList<>(zones.zones());
    if (!zones.outside().isEmpty()) {
      names.add(outside(zones));
    }
    return names;
  }

  private static String outside(ZoneDoors zones) {
    String name = "outside the zones";
    while (zones.zones().contains(name)) {
      name += "'";
    }
    return name;
  }

  private static List<Place> doors(ZoneDoors zones, String name) {
    return zones.zones().contains(name) ? zones.doors(name) : zones.outside();
  }

  private boolean ask(List<ZoneDoor> asked, IntConsumer progress, Faults faults) {
    Callers callers =
        new Callers(input.book(), place -> input.read().corrections().tags(place.address()));
    List<Caller> all = new ArrayList<>();
    for (ZoneDoor door : asked) {
      for (CallerKind kind : CallerKind.values()) {
        all.add(new Caller(door.zone(), kind, callers.add(door.number(), kind, door.place())));
      }
    }
    Faults preparing = new Faults();
    Optional<PreparedWeek> prepared = prepared(callers, preparing);
    if (prepared.isEmpty()) {
      faults.addAll(preparing);
      return false;
    }
    PreparedWeek week = prepared.get();
    List<Caller> heads = new ArrayList<>();
    List<RoomAsk> asks = asks(all, week, heads);
    RoomAhead answer =
        RoomAhead.of(
            week.request(),
            open.placed(week),
            new RoomQuestion(
                asks,
                terms.spanSeconds(),
                terms.stepSeconds(),
                terms.marginSeconds(),
                terms.overtime(),
                OptionalInt.of(10 * terms.keptPercent()),
                DayRequest.USUAL_EFFORT),
            progress);
    for (RoomAhead.Room room : answer.rooms()) {
      Caller head = heads.get(room.ask());
      cells.merge(
          key(head.zone(), head.kind(), room.day()),
          new Cell(
              room.allowed(),
              room.spans(),
              room.proven(),
              (int) (room.extraSixtieths() / Prices.SIXTIETHS_PER_DRIVE_SECOND)),
          (one, other) -> one.and(other, terms.spanSeconds()));
    }
    return true;
  }

  private Optional<PreparedWeek> prepared(Callers callers, Faults preparing) {
    Book book = callers.joined();
    List<VanDay> days = open.days();
    MoreRows rows =
        new MoreRows(
            input.rows(),
            id -> callers.knows(id) ? Optional.of(Where.NOWHERE) : Optional.empty(),
            id -> callers.knows(id) ? Optional.of(Where.NOWHERE) : Optional.empty());
    List<Booking> bookings =
        WeekPreparation.candidates(book, days, open.dates(), open.earlier(), rows, preparing);
    return WeekPreparation.of(
        book,
        bookings,
        days,
        open.earlier(),
        input.tables(),
        map,
        rows,
        1,
        WeekPlanner.USUAL_EFFORT,
        preparing);
  }

  /** One ask a zone and kind; a door that no van can be driven to is none. */
  private List<RoomAsk> asks(List<Caller> all, PreparedWeek week, List<Caller> heads) {
    Map<String, WeekBooking> byId = new HashMap<>();
    week.request().bookings().forEach(booking -> byId.put(booking.id(), booking));
    Map<String, List<WeekBooking>> byAsk = new LinkedHashMap<>();
    for (Caller caller : all) {
      WeekBooking booking = byId.get(caller.id());
      if (booking == null) {
        continue;
      }
      WeekBooking longer =
          Callers.lasting(
              booking,
              week.request().days(),
              10 * input.book().business().planPercent(),
              10 * terms.enoughPercent());
      String key = key(caller.zone(), caller.kind(), 0);
      if (!byAsk.containsKey(key)) {
        heads.add(caller);
      }
      byAsk.computeIfAbsent(key, one -> new ArrayList<>()).add(longer);
      if (caller.kind() == CallerKind.SMALL) {
        doors.merge(caller.zone(), 1, Integer::sum);
      }
      int most =
          longer.choices().stream()
              .map(DayChoice::visit)
              .mapToInt(visit -> visit.serviceSeconds())
              .max()
              .orElse(0);
      seconds.merge(caller.kind(), most, Math::max);
    }
    List<RoomAsk> asks = new ArrayList<>();
    int head = 0;
    for (List<WeekBooking> some : byAsk.values()) {
      Caller one = heads.get(head++);
      asks.add(new RoomAsk(one.zone(), one.kind().word(), some));
    }
    return asks;
  }

  private static String key(String zone, CallerKind kind, int day) {
    return kind + " " + day + " " + zone;
  }

  /** The blocks of the table. */
  List<OpeningsSheet.Zone> zones(ZoneDoors zones) {
    List<OpeningsSheet.Zone> blocks = new ArrayList<>();
    for (String name : names(zones)) {
      List<OpeningsSheet.Row> rows = new ArrayList<>();
      int known = doors.getOrDefault(name, 0);
      for (VanDay day : known == 0 ? List.<VanDay>of() : open.days()) {
        List<Cell> row = new ArrayList<>();
        for (CallerKind kind : CallerKind.values()) {
          row.add(cells.get(key(name, kind, day.number())));
        }
        rows.add(new OpeningsSheet.Row(day.day(), day.groomer().name(), row));
      }
      blocks.add(new OpeningsSheet.Zone(name, known, rows));
    }
    return blocks;
  }

  /** The columns of the table. */
  List<OpeningsSheet.Kind> kinds() {
    List<OpeningsSheet.Kind> kinds = new ArrayList<>();
    for (CallerKind kind : CallerKind.values()) {
      kinds.add(
          new OpeningsSheet.Kind(kind.word(), kind.standsFor(), seconds.getOrDefault(kind, 0)));
    }
    return kinds;
  }
}
