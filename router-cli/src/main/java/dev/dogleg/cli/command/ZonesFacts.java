package dev.dogleg.cli.command;

import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.export.ZonesSheet;
import dev.dogleg.cli.export.ZonesSheet.About;
import dev.dogleg.cli.export.ZonesSheet.Cell;
import dev.dogleg.cli.export.ZonesSheet.Line;
import dev.dogleg.cli.export.ZonesSheet.Proposal;
import dev.dogleg.cli.export.ZonesSheet.Shared;
import dev.dogleg.cli.export.ZonesSheet.SharedArea;
import dev.dogleg.cli.export.ZonesSheet.Who;
import dev.dogleg.cli.prepare.EarlierPlan;
import dev.dogleg.cli.prepare.FreeWeek;
import dev.dogleg.cli.prepare.SharedAreas;
import dev.dogleg.cli.prepare.ZoneRound;
import dev.dogleg.cli.terms.ServedSeconds;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.ZoneWeekdays;
import dev.dogleg.fit.FitWeek;
import dev.dogleg.fit.PlannedVanDay;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Zone;
import dev.dogleg.plan.zone.ZoneDayPlan;
import dev.dogleg.plan.zone.ZoneDays;
import dev.dogleg.plan.zone.ZoneWeek;
import java.time.DayOfWeek;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Adds up what a planned round says of its zones. */
final class ZonesFacts {
  private final Book book;
  private final List<Zone> zones;
  private final ZoneRound round;
  private final FreeWeek free;
  private final EarlierPlan plan;
  private final List<VanDay> days;
  private final FitWeek planned;
  private final ZoneBounds bounds;
  private final WrongZoneDays wrongDays;

  /**
   * Adds up.
   *
   * @throws IllegalArgumentException where a day of the plan cannot serve what it has
   */
  ZonesFacts(Book book, ZoneRound round, FreeWeek free, EarlierPlan plan) {
    this.book = book;
    this.zones = book.week().zones();
    this.round = round;
    this.free = free;
    this.plan = plan;
    this.days = free.week().days();
    bounds = new ZoneBounds(zones, round, free);
    planned = FitWeek.of(free.week().request(), free.placed(), Set.of());
    wrongDays = new WrongZoneDays(bounds, free, planned);
  }

  /** {@return what the audit says of days that were planned to see what a visit costs} */
  List<String> findings() {
    return wrongDays.findings();
  }

  /** {@return the planned van-days, each in the best order of its visits} */
  List<PlannedVanDay> planned() {
    return planned.days();
  }

  /** {@return ids of visits on a day that is none of their zones'} */
  Set<String> wrong() {
    return wrongDays.visits();
  }

  private Who who(String clientId) {
    return new Who(clientId, book.clientsById().get(clientId).name());
  }

  /** Other weekdays for zones as a problem; empty where no zone's days could be others. */
  Optional<ZoneWeek> problem() {
    List<ZoneDays> asked = new ArrayList<>();
    boolean choice = false;
    for (Zone zone : zones) {
      Set<DayOfWeek> possible = EnumSet.noneOf(DayOfWeek.class);
      days.stream()
          .filter(day -> zone.groomerId().map(day.groomer().id()::equals).orElse(true))
          .forEach(day -> possible.add(day.day().date().getDayOfWeek()));
      Optional<Set<DayOfWeek>> weekdays = ZoneWeekdays.of(zone);
      Set<DayOfWeek> now = EnumSet.noneOf(DayOfWeek.class);
      weekdays.ifPresent(now::addAll);
      now.retainAll(possible);
      boolean moves = !now.isEmpty() && now.size() < possible.size();
      choice |= moves;
      asked.add(
          new ZoneDays(
              zone.name(), zone.groomerId(), zone.strength(), now, moves ? possible : now));
    }
    if (!choice) {
      return Optional.empty();
    }
    // A visit in a zone whose days are no weekdays keeps its day and is bound by none; nor does a
    // zone that must hold bind a visit that keeps its day: it would only be left out.
    Map<String, List<Integer>> around = new HashMap<>();
    free.around()
        .forEach(
            (id, some) -> {
              boolean moves = free.free().contains(id);
              if (some.stream()
                  .map(zones::get)
                  .allMatch(
                      zone ->
                          ZoneWeekdays.of(zone).isPresent()
                              && (moves || !zone.strength().must()))) {
                around.put(id, some);
              }
            });
    return Optional.of(new ZoneWeek(free.week().request(), asked, around));
  }

  /**
   * All there is to say.
   *
   * @param answer better days, where they were looked for
   * @param named bookings of the book that the plan names
   * @param rows rows of the plan
   */
  ZonesSheet sheet(Optional<ZoneDayPlan> answer, List<Booking> named, List<PlacedRow> rows) {
    return new ZonesSheet(
        days.stream()
            .map(day -> new ZonesSheet.Day(day.day().date(), day.groomer().name()))
            .toList(),
        lines(),
        round.clients().stream()
            .filter(one -> one.zones().isEmpty())
            .map(one -> who(one.client().id()))
            .toList(),
        shared(),
        SharedAreas.of(round.areas()).stream()
            .map(
                both ->
                    new SharedArea(
                        zones.get(both.one()).name(),
                        zones.get(both.other()).name(),
                        both.squareMetres()))
            .toList(),
        wrongDays.all(this::who),
        answer.map(this::proposal),
        planned.days().stream()
            .anyMatch(
                day ->
                    OtherTimes.of(
                        days.get(day.number()), day, free.week().labels().get(day.number()), plan)),
        unknown(named, rows));
  }

  private List<Line> lines() {
    Map<String, Line> lines = new LinkedHashMap<>();
    Map<String, List<Cell>> cells = new HashMap<>();
    for (int zone = 0; zone < zones.size(); zone++) {
      int number = zone;
      Zone one = zones.get(zone);
      String days = one.days() + "; " + one.strength();
      int living = (int) round.clients().stream().filter(c -> c.zones().contains(number)).count();
      lines.put("" + zone, new Line(About.ZONE, one.name(), days, living, List.of()));
    }
    int outside = (int) round.clients().stream().filter(one -> one.zones().isEmpty()).count();
    lines.put(About.NO_ZONE.name(), new Line(About.NO_ZONE, "", "", outside, List.of()));
    lines.put(About.OTHER.name(), new Line(About.OTHER, "", "", 0, List.of()));
    lines.put(About.HOME.name(), new Line(About.HOME, "", "", 0, List.of()));
    lines
        .keySet()
        .forEach(
            key -> cells.put(key, new ArrayList<>(days.stream().map(day -> Cell.NONE).toList())));
    for (PlannedVanDay day : planned.days()) {
      Map<String, Integer> served = served(day);
      for (PlannedStop stop : day.plan().stops()) {
        List<Cell> row = cells.get(key(stop, day.number()));
        row.set(day.number(), row.get(day.number()).plus(cell(stop, served)));
      }
    }
    return lines.entrySet().stream()
        .map(
            entry ->
                new Line(
                    entry.getValue().about(),
                    entry.getValue().name(),
                    entry.getValue().days(),
                    entry.getValue().clients(),
                    cells.get(entry.getKey())))
        .toList();
  }

  /** The line that a stop counts to; a break counts to the visit at whose door it is taken. */
  private String key(PlannedStop stop, int day) {
    if (stop.kind() == PlannedStop.Kind.HOME) {
      return About.HOME.name();
    }
    if (stop.visitId().isEmpty() || free.week().bookings().get(stop.visitId()).isEmpty()) {
      return About.OTHER.name();
    }
    List<Integer> all = bounds.zonesOf(stop.visitId());
    return all.stream()
        .filter(zone -> bounds.binds(zone, day) && bounds.worked(zone, day))
        .findFirst()
        .or(() -> all.stream().findFirst())
        .map(String::valueOf)
        .orElse(About.NO_ZONE.name());
  }

  /** Seconds at each door, as the rules make them in the day's order. */
  private Map<String, Integer> served(PlannedVanDay day) {
    Map<String, Integer> asked = new LinkedHashMap<>();
    day.plan().stops().stream()
        .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
        .map(PlannedStop::visitId)
        .forEach(
            id -> asked.put(id, free.week().labels().get(day.number()).get(id).serviceSeconds()));
    return ServedSeconds.of(
        List.copyOf(asked.keySet()),
        asked,
        free.week().request().days().get(day.number()).terms().rules());
  }

  private Cell cell(PlannedStop stop, Map<String, Integer> served) {
    boolean visit = stop.kind() == PlannedStop.Kind.VISIT;
    return new Cell(
        visit ? 1 : 0,
        visit && wrong().contains(stop.visitId()) ? 1 : 0,
        visit ? served.get(stop.visitId()) : 0,
        stop.driveSeconds());
  }

  private List<Shared> shared() {
    Map<List<Integer>, List<Who>> bySet = new LinkedHashMap<>();
    round.clients().stream()
        .filter(one -> one.zones().size() > 1)
        .forEach(
            one ->
                bySet
                    .computeIfAbsent(one.zones(), key -> new ArrayList<>())
                    .add(who(one.client().id())));
    return bySet.entrySet().stream()
        .map(
            entry ->
                new Shared(
                    entry.getKey().stream().map(zone -> zones.get(zone).name()).toList(),
                    entry.getValue()))
        .toList();
  }

  private Proposal proposal(ZoneDayPlan answer) {
    int changed = 0;
    List<DayPlan> best = answer.best().plan().days();
    for (int day = 0; day < best.size(); day++) {
      for (PlannedStop stop : best.get(day).stops()) {
        boolean visit = stop.kind() == PlannedStop.Kind.VISIT;
        changed += visit && free.placed().get(stop.visitId()) != day ? 1 : 0;
      }
    }
    long weeks =
        days.stream()
            .map(day -> day.day().date())
            .map(
                date ->
                    date.get(IsoFields.WEEK_BASED_YEAR)
                        + " "
                        + date.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR))
            .distinct()
            .count();
    return new Proposal(
        zones.stream().map(Zone::name).toList(),
        answer,
        (int) weeks,
        free.placed().size(),
        free.free().size(),
        changed,
        planned.days().stream()
            .flatMap(day -> day.plan().stops().stream())
            .mapToInt(PlannedStop::driveSeconds)
            .sum());
  }

  /** How many bookings of the plan are not planned here. */
  private int unknown(List<Booking> named, List<PlacedRow> rows) {
    Set<String> counted = new HashSet<>();
    free.week().labels().forEach(day -> day.values().forEach(l -> counted.addAll(l.bookings())));
    Set<String> all =
        rows.stream()
            .filter(row -> row.row().kind().equals("visit") || row.row().kind().equals("errand"))
            .flatMap(row -> PlanFile.ids(row).stream())
            .collect(Collectors.toCollection(TreeSet::new));
    named.forEach(booking -> all.add(booking.id()));
    all.removeAll(counted);
    return all.size();
  }
}
