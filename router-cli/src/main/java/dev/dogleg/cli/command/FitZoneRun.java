package dev.dogleg.cli.command;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.cli.command.Newcomers.Described;
import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.cli.export.ZoneRoomJson;
import dev.dogleg.cli.export.ZoneRoomSheet;
import dev.dogleg.cli.export.ZoneRoomText;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.ZoneDoors;
import dev.dogleg.cli.prepare.ZoneName;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.FaultException;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.fit.Offer;
import dev.dogleg.model.Place;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * What {@code fit --zone} does: asks at every known door of a zone, says at how many there is room
 * and which times hold at all of those. Writes nothing.
 */
final class FitZoneRun {

  /**
   * What was asked for on the command line.
   *
   * @param choice which book
   * @param plan the planned days, or empty for {@code plan/plan.csv} of the book
   * @param zone name of the zone, as typed
   * @param described the newcomer of the options, whose address is not used
   * @param json whether to print JSON
   */
  record Order(
      BookChoice choice, Optional<Path> plan, String zone, Described described, boolean json) {}

  private static final int FIRST_DOOR_ROW = 2;

  private final Surroundings surroundings;
  private final Console console;
  private final Order order;
  private final Faults faults = new Faults();

  FitZoneRun(Surroundings surroundings, Order order) {
    this.surroundings = surroundings;
    this.console = surroundings.console();
    this.order = order;
  }

  /** Runs. */
  ExitCode run() throws IOException {
    Optional<PlannedBook> read =
        PlannedBook.read(order.choice(), order.plan(), surroundings.clock(), faults);
    if (read.isEmpty()) {
      return stopped();
    }
    PlannedBook book = read.get();
    BookInput input = book.input();
    Optional<String> zone = ZoneName.of(order.zone(), input.book().week().zones(), faults);
    if (zone.isEmpty() || faults.stops()) {
      return stopped();
    }
    try (MapInUse map = new MapInUse(input.map(), surroundings.cache(), console, faults)) {
      return asked(book, zone.get(), map);
    } catch (FaultException failed) {
      failed.faults().forEach(faults::add);
      return stopped();
    }
  }

  private ExitCode asked(PlannedBook book, String zone, MapInUse map) {
    BookInput input = book.input();
    Optional<ZoneDoors> doors = book.doors(map, faults);
    if (doors.isEmpty()) {
      return stopped();
    }
    List<Place> places = doors.get().doors(zone);
    if (places.isEmpty()) {
      faults.add(
          new Fault(
              "zone-without-client",
              Severity.STOP,
              Where.file("--zone"),
              zone,
              "a zone in which a client of the book lives was expected: it is asked at their doors",
              "ask with an address instead"));
      return stopped();
    }
    Faults ofOptions = new Faults();
    Optional<Newcomers> newcomers = Newcomers.at(places, order.described(), input, ofOptions);
    // What the options say is said once, not for every door.
    ofOptions.all().stream()
        .filter(fault -> ofOptions.stops() || fault.where().row() == FIRST_DOOR_ROW)
        .forEach(faults::add);
    Optional<AskedWeek> asked =
        newcomers.flatMap(
            some -> AskedWeek.of(input, some, book.planned(), map, fault -> false, faults));
    if (asked.isEmpty()) {
      return stopped();
    }
    ZoneRoom room = new ZoneRoom(asked.get(), zone, places.size());
    List<String> findings =
        room.offers().stream()
            .flatMap((Offer offer) -> DayAudit.check(offer.request(), offer.after()).stream())
            .map(one -> one.text() + " [" + one.code() + "]")
            .toList();
    if (!findings.isEmpty()) {
      console.warn("Dogleg's own fault: its audit does not pass an answer.");
      findings.forEach(finding -> console.warn("  " + finding));
      return ExitCode.OWN_FAULT;
    }
    return shown(input, room.sheet());
  }

  private ExitCode shown(BookInput input, ZoneRoomSheet sheet) {
    if (order.json()) {
      console.say(ZoneRoomJson.of(sheet));
    } else {
      ZoneRoomText.lines(sheet).forEach(console::say);
      console.say("");
      console.say(PlanNotes.attribution(input.map()));
      console.say("Nothing was written: whoever is taken goes into the book.");
    }
    String report = FaultReport.of(faults.all(), false);
    if (!report.isEmpty()) {
      console.warn(report);
    }
    return sheet.fitting() > 0 ? ExitCode.DONE : ExitCode.NOT_FOUND;
  }

  private ExitCode stopped() {
    console.warn(FaultReport.of(faults.all(), true));
    console.warn("Nothing was answered, and nothing was written.");
    return ExitCode.STOPPED;
  }
}
