package dev.dogleg.cli.command;

import dev.dogleg.cli.command.LateCommand.WrongUsage;
import dev.dogleg.cli.export.LateSheet;
import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.prepare.LateDay;
import dev.dogleg.cli.prepare.LateSpans;
import dev.dogleg.cli.prepare.PreparedDay;
import dev.dogleg.cli.told.ToldBook;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.Client;
import dev.dogleg.model.HowToTell;
import dev.dogleg.plan.late.LateAnswer;
import dev.dogleg.plan.late.RestOfDay;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;

/** Joins the rows of a plan with the stops of the book: what is done, left, and how it is shown. */
final class LateFacts {
  private final Book book;
  private final LatePlan plan;
  private final LateDay late;
  private final ToldBook told;
  private final PreparedDay day;

  /** Visit by number of its door, from 0. */
  private final List<String> visits = new ArrayList<>();

  /**
   * Joins them.
   *
   * @param book the book
   * @param plan rows of the day
   * @param late the day with the stops that the rows name
   * @param told who wants no texts any more
   * @param faults takes rows whose bookings have no stop, and a van that cannot get home: they stop
   *     the run
   */
  LateFacts(Book book, LatePlan plan, LateDay late, ToldBook told, Faults faults) {
    this.book = book;
    this.plan = plan;
    this.late = late;
    this.told = told;
    day = late.day();
    Map<String, String> visitOf = new HashMap<>();
    day.stops().forEach((visit, label) -> label.bookings().forEach(id -> visitOf.put(id, visit)));
    for (PlacedRow row : plan.doors()) {
      String visit =
          LatePlan.bookings(row).stream()
              .map(visitOf::get)
              .filter(one -> one != null)
              .findFirst()
              .orElse("");
      if (visit.isEmpty() || visits.contains(visit)) {
        faults.add(
            new Fault(
                "unknown-booking",
                Severity.STOP,
                row.where().at("booking"),
                row.row().booking(),
                "a booking of the book that stands in one row and whose door the van reaches was"
                    + " expected",
                "mend it with: check --plan"));
      }
      visits.add(visit);
    }
    DayShift shift = day.request().shift();
    if (!day.request().travel().reaches(shift.startPlace(), shift.endPlace())) {
      faults.add(
          new Fault(
              "unreachable",
              Severity.STOP,
              Where.NOWHERE,
              day.places().get(shift.startPlace()).address(),
              "no road that the van may use leads from there to where the day ends",
              "say with --at where the van is"));
    }
  }

  private List<String> ids(Iterable<Integer> doors) {
    List<String> ids = new ArrayList<>();
    doors.forEach(door -> ids.add(visits.get(door)));
    return ids;
  }

  /**
   * Where the day stands.
   *
   * @param now what time it is
   * @param ready when the last door done will be ready, or empty: it is
   * @param breakTaken whether the break was taken, or empty: as the plan has it
   * @return the rest of the day
   * @throws WrongUsage where the times contradict each other
   */
  RestOfDay rest(LocalTime now, Optional<LocalTime> ready, Optional<Boolean> breakTaken) {
    int seconds = day.request().shift().day().elapsedAt(now);
    int until = ready.map(day.request().shift().day()::elapsedAt).orElse(seconds);
    if (until < seconds || until > seconds + RestOfDay.MOST_UNDER_WAY_SECONDS) {
      throw new WrongUsage("--ready lies before --now, or more than six hours after it");
    }
    Set<String> cancelled = new TreeSet<>(ids(plan.cancelled()));
    day.bookings()
        .forEach(
            (visit, bookings) -> {
              if (!bookings.isEmpty()
                  && bookings.stream().allMatch(b -> b.status() == BookingStatus.CANCELLED)) {
                cancelled.add(visit);
              }
            });
    List<String> done = ids(plan.done());
    done.forEach(cancelled::remove);
    return new RestOfDay(
        day.request(),
        late.promises(),
        visits,
        done,
        ready.isPresent() ? OptionalInt.of(until) : OptionalInt.empty(),
        cancelled,
        day.request().shift().startPlace(),
        seconds,
        breakTaken.orElse(plan.breakPassed()),
        used(),
        plan.waterStops(),
        late.movable());
  }

  private WaterUse used() {
    int fresh = 0;
    int grey = 0;
    Optional<WaterTerms> water = day.request().terms().water();
    for (String id : ids(plan.sinceWater())) {
      WaterUse use = water.map(terms -> terms.useOf(id)).orElse(WaterUse.NONE);
      fresh += use.freshMillilitres();
      grey += use.greyMillilitres();
    }
    return new WaterUse(Math.min(2_000_000, fresh), Math.min(2_000_000, grey));
  }

  /**
   * How it is shown.
   *
   * @param rest where the day stands
   * @param answer what may be done
   * @param standing where the van is, in words
   * @return the sheet
   */
  LateSheet sheet(RestOfDay rest, LateAnswer answer, String standing) {
    Map<String, Integer> numbers = new HashMap<>();
    Map<String, HowToTell> tell = new HashMap<>();
    for (int door = 0; door < visits.size(); door++) {
      String visit = visits.get(door);
      numbers.put(visit, door + 1);
      for (Booking booking : day.bookings().getOrDefault(visit, List.of())) {
        tell.put(visit, how(book.clientsById().get(booking.clientId())));
      }
    }
    List<String> left = new ArrayList<>(visits);
    left.removeAll(rest.done());
    left.removeAll(rest.cancelled());
    int last = rest.done().size() - 1;
    Optional<String> anchor = last < 0 ? Optional.empty() : Optional.of(rest.done().get(last));
    return new LateSheet(
        answer,
        day.request().shift(),
        rest.nowSeconds(),
        day.groomer().name(),
        day.van(),
        standing,
        day.places(),
        day.stops(),
        numbers,
        tell,
        anchor,
        rest.done().size(),
        answer.choices().stream()
            .map(choice -> LateSpans.of(choice, anchor, rest.nowSeconds()))
            .toList(),
        left);
  }

  /** How a client is told: who wants no texts any more, or has no phone for them, is called. */
  private HowToTell how(Client client) {
    boolean noText = told.stopped(client.id()) || client.phone().isEmpty();
    return client.tell() == HowToTell.TEXT && noText ? HowToTell.CALL : client.tell();
  }

  /** {@return notes of the plan's rows, by visit} */
  Map<String, String> notes() {
    Map<String, String> notes = new HashMap<>();
    for (int door = 0; door < visits.size(); door++) {
      notes.put(visits.get(door), plan.doors().get(door).row().note());
    }
    return notes;
  }
}
