package dev.dogleg.cli.command;

import dev.dogleg.arrival.CourseTerms;
import dev.dogleg.arrival.SpanTerms;
import dev.dogleg.arrival.TimeToTell;
import dev.dogleg.arrival.TimesToTell;
import dev.dogleg.cli.command.PlanFile.Group;
import dev.dogleg.cli.prepare.PlanFollower;
import dev.dogleg.cli.prepare.PreparedDay;
import dev.dogleg.cli.tell.AtDoor;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.model.Booking;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.Moves;
import dev.dogleg.model.Pet;
import dev.dogleg.model.ToldTime;
import dev.dogleg.model.WallSpan;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The doors of a plan's days with the spans that can be told of them. */
final class DoorTimes {
  private final BookInput input;
  private final PlanDays days;
  private final Map<String, Pet> pets;
  private final Faults faults;

  DoorTimes(BookInput input, PlanDays days, Faults faults) {
    this.input = input;
    this.days = days;
    this.pets = input.book().petsById();
    this.faults = faults;
  }

  /** The evening's spans of a day; none, and a fault, where the plan does not hold. */
  List<AtDoor> evening(Group group) {
    Optional<VanDay> vanDay = days.day(group);
    if (vanDay.isEmpty()) {
      faults.add(holdsNot(group, "this day is not worked"));
      return List.of();
    }
    PreparedDay day = days.week().day(vanDay.get().number());
    List<PlannedStop> stops = stops(group, day);
    OddsTerms odds = odds(day);
    List<TimeToTell> times =
        TimesToTell.eveningBefore(
            day.request(),
            stops,
            CourseTerms.fine(odds.services(), odds.day()),
            SpanTerms.EVENING_BEFORE.keeping(odds.keptPermille()));
    Map<String, PlannedStop> planned = visits(stops);
    List<AtDoor> doors = new ArrayList<>();
    for (TimeToTell time : times) {
      int arrive = planned.get(time.visitId()).arriveSeconds();
      door(
              day,
              time.visitId(),
              arrive,
              time.holding(arrive, SpanTerms.EVENING_BEFORE.roundSeconds()))
          .ifPresent(doors::add);
    }
    return doors;
  }

  /** What varies on a day, and how many promises are to be kept. */
  private static OddsTerms odds(PreparedDay day) {
    return day.request().terms().odds().orElseThrow();
  }

  /**
   * The narrow span of the door that the van has just left for; empty where the day has no such
   * door.
   *
   * @param group the day
   * @param who whether a door is meant
   * @param left when the van left
   */
  Optional<AtDoor> onMyWay(Group group, Predicate<AtDoor> who, ZonedDateTime left) {
    Optional<VanDay> vanDay = days.day(group);
    if (vanDay.isEmpty()) {
      return Optional.empty();
    }
    PreparedDay day = days.week().day(vanDay.get().number());
    WorkDay workDay = day.request().shift().day();
    int leave = Math.toIntExact(Duration.between(workDay.wallAt(0), left).toSeconds());
    List<PlannedStop> stops = new PlanFollower(day).follow(days.rows(group, day)).stops();
    PlannedStop before = stops.isEmpty() ? null : stops.get(0);
    for (PlannedStop stop : stops) {
      if (stop.kind() == PlannedStop.Kind.VISIT) {
        Optional<AtDoor> door =
            door(day, stop.visitId(), stop.arriveSeconds(), TimeWindow.ALWAYS).filter(who);
        if (door.isPresent()) {
          int drive = day.request().travel().driveSeconds(before.place(), stop.place(), leave);
          return onMyWay(day, door.get(), stop.visitId(), drive, leave);
        }
      }
      before = stop;
    }
    return Optional.empty();
  }

  private Optional<AtDoor> onMyWay(
      PreparedDay day, AtDoor door, String visitId, int driveSeconds, int leave) {
    WorkDay workDay = day.request().shift().day();
    int arrive = leave + driveSeconds;
    TimeWindow within =
        door.promised()
            .map(promised -> promised.on(workDay))
            .filter(promised -> arrive <= promised.toSeconds())
            .orElse(TimeWindow.ALWAYS);
    OddsTerms odds = odds(day);
    TimeToTell time =
        TimesToTell.onMyWay(
            visitId,
            driveSeconds,
            leave,
            within,
            odds.day(),
            SpanTerms.ON_MY_WAY.keeping(odds.keptPermille()));
    return door(day, visitId, arrive, time.arriveWithin());
  }

  /** The events of a day: as written, or timed anew where the times do not hold. */
  private List<PlannedStop> stops(Group group, PreparedDay day) {
    PlanFollower.Followed followed = new PlanFollower(day).follow(days.rows(group, day));
    if (followed.timesReadable() && followed.written().isEmpty()) {
      return followed.stops();
    }
    if (followed.retimed().breaches().isEmpty()) {
      faults.add(
          new Fault(
              "plan-re-timed",
              // An early van waits for the start of what was told since: no matter for anybody.
              Severity.NOTE,
              group.rows().get(0).where().at("arrive"),
              group.date().toString(),
              "times that hold were expected; those of the same order timed anew are told",
              "dogleg check --plan says why"));
      return followed.retimed().stops();
    }
    faults.add(holdsNot(group, followed.retimed().breaches().get(0).text()));
    return List.of();
  }

  private static Fault holdsNot(Group group, String why) {
    return new Fault(
        "plan-holds-not",
        Severity.LOOK,
        group.rows().get(0).where(),
        group.date() + ", " + group.groomer().name(),
        "a plan that holds was expected: " + why,
        "nothing of this day is told; dogleg check --plan lists every breach");
  }

  private static Map<String, PlannedStop> visits(List<PlannedStop> stops) {
    return stops.stream()
        .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
        .collect(Collectors.toMap(PlannedStop::visitId, stop -> stop, (one, other) -> one));
  }

  /** A visit as it is told of; empty for an errand and for what is not open any more. */
  private Optional<AtDoor> door(
      PreparedDay day, String visitId, int arriveSeconds, TimeWindow within) {
    List<Booking> bookings =
        day.bookings().getOrDefault(visitId, List.of()).stream()
            .filter(booking -> booking.status().open())
            .toList();
    if (bookings.isEmpty()) {
      return Optional.empty();
    }
    WorkDay workDay = day.request().shift().day();
    LocalDate date = workDay.date();
    Optional<Booking> elsewhere =
        bookings.stream()
            .filter(booking -> booking.dates().filter(span -> !span.holds(date)).isPresent())
            .findFirst();
    return Optional.of(
        new AtDoor(
            bookings.stream().map(Booking::id).toList(),
            input.book().clientsById().get(bookings.get(0).clientId()),
            bookings.stream()
                .flatMap(booking -> booking.pets().stream())
                .map(pet -> pets.get(pet.petId()).name())
                .distinct()
                .toList(),
            date,
            day.groomer().name(),
            wall(workDay, arriveSeconds),
            new WallSpan(
                wall(workDay, within.fromSeconds()),
                wall(workDay, Math.min(within.toSeconds(), 2 * WallSpan.MIDNIGHT))),
            elsewhere.isPresent() ? Optional.empty() : promised(bookings),
            bookings.stream().allMatch(booking -> booking.status() == BookingStatus.BOOKED),
            elsewhere.flatMap(Booking::dates).map(DateSpan::from),
            elsewhere.filter(booking -> booking.terms().moves() != Moves.ANY_TIME).isPresent()));
  }

  /** What binds already: the narrowest of what was told of the visit's bookings. */
  private static Optional<WallSpan> promised(List<Booking> bookings) {
    return bookings.stream()
        .flatMap(booking -> booking.told().stream())
        .map(ToldTime::arriveWithin)
        .reduce((one, other) -> one.holds(other) ? other : one);
  }

  /** Wall-clock seconds; what lies after midnight is told as midnight. */
  private static int wall(WorkDay day, int elapsedSeconds) {
    ZonedDateTime wall = day.wallAt(elapsedSeconds);
    return wall.toLocalDate().isAfter(day.date())
        ? WallSpan.MIDNIGHT
        : wall.toLocalTime().toSecondOfDay();
  }
}
