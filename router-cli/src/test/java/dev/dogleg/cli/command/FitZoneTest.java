package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.cli.command.Newcomers.Described;
import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.export.ZoneRoomSheet;
import dev.dogleg.cli.export.ZoneRoomSheet.Day;
import dev.dogleg.cli.prepare.LookUps;
import dev.dogleg.cli.prepare.MapInUse;
import dev.dogleg.cli.prepare.ZoneDoors;
import dev.dogleg.fault.Faults;
import dev.dogleg.fit.FitAnswer;
import dev.dogleg.fit.FitAnswer.Verdict;
import dev.dogleg.fit.FitQuestion;
import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.model.Place;
import dev.dogleg.time.TimeWindow;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Room in a zone is what asking each of its doors alone says, and its times hold at all of them.
 */
class FitZoneTest {
  private static final int QUARTER = 900;

  @TempDir Path dir;
  private final Faults faults = new Faults();

  @BeforeEach
  void layOut() throws IOException {
    try (Stream<Path> files = Files.list(TestRun.ROOT.resolve("demo-data"))) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, dir.resolve(file.getFileName()));
      }
    }
    Files.writeString(
        dir.resolve("zones.csv"), "zone,days,districts\nNorthfield,weekdays,Northfield\n");
    Files.createDirectories(dir.resolve("plan"));
    Files.copy(
        TestRun.ROOT.resolve("router-cli/src/test/golden/fit-offers/plan.csv"),
        dir.resolve("plan/plan.csv"));
  }

  private static Described dog(String address, String size, String when) {
    return new Described(address, "Newcomer", "Pet", "", size, "", "full", when, "");
  }

  private AskedWeek week(BookInput input, Newcomers newcomers, MapInUse map) {
    PlannedDates planned = PlannedDates.read(Optional.empty(), input, TestRun.CLOCK, faults);
    return AskedWeek.of(input, newcomers, planned, map, fault -> true, faults).orElseThrow();
  }

  private void holds(String size, String when, boolean somewhere) throws IOException {
    BookInput input = BookInput.read(new BookChoice(dir, TestRun.MAP), false, faults).orElseThrow();
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Console console = new Console(nowhere, nowhere, false, StandardCharsets.UTF_8);
    try (MapInUse map = new MapInUse(TestRun.MAP, TestRun.CACHE, console, faults)) {
      List<Place> doors =
          ZoneDoors.of(
                  input.book(), map, new LookUps(map, input.book().clients()), input.rows(), faults)
              .orElseThrow()
              .doors("Northfield");
      assertEquals(6, doors.size());
      Newcomers all = Newcomers.at(doors, dog("", size, when), input, faults).orElseThrow();
      AskedWeek asked = week(input, all, map);
      ZoneRoomSheet sheet = new ZoneRoom(asked, "Northfield", doors.size()).sheet();
      assertEquals(6, sheet.doors());
      assertEquals(somewhere, sheet.fitting() > 0);
      List<List<Integer>> fits = new ArrayList<>();
      for (Place door : doors) {
        Newcomers one =
            Newcomers.of(
                    Optional.of(dog(door.address(), size, when)), Optional.empty(), input, faults)
                .orElseThrow();
        fits.add(alone(week(input, one, map)));
      }
      assertEquals(fits.stream().filter(days -> !days.isEmpty()).count(), sheet.fitting());
      for (Day day : sheet.days()) {
        int number = number(asked, day);
        assertEquals(
            fits.stream().filter(days -> days.contains(number)).count(),
            day.fitting(),
            day.toString());
        spansHold(asked, day, number);
      }
    }
  }

  private static int number(AskedWeek asked, Day day) {
    return asked.week().days().stream()
        .filter(one -> one.day().equals(day.day()))
        .findFirst()
        .orElseThrow()
        .number();
  }

  /** Van-days on which one door alone has room. */
  private static List<Integer> alone(AskedWeek asked) {
    assertEquals(1, asked.possible().size());
    FitAnswer answer = ask(asked, asked.possible().get(0));
    return answer.offers().stream().map(offer -> offer.day()).toList();
  }

  private static FitAnswer ask(AskedWeek asked, WeekBooking door) {
    return asked
        .fit()
        .ask(new FitQuestion(door, List.of(), 20, OtherDays.NEVER, FitQuestion.USUAL_EFFORT));
  }

  /** First and last told span of each stretch, as a window of each counted door. */
  private static void spansHold(AskedWeek asked, Day day, int number) {
    for (TimeWindow stretch : day.spans()) {
      int last = stretch.toSeconds() - 3_600;
      for (int from : new int[] {stretch.fromSeconds(), last}) {
        assertEquals(0, from % QUARTER, stretch.toString());
        int holding = 0;
        for (WeekBooking door : asked.possible()) {
          List<DayChoice> choices =
              door.choices().stream()
                  .filter(choice -> choice.day() == number)
                  .map(
                      choice ->
                          new DayChoice(
                              number,
                              choice.visit().arriving(List.of(new TimeWindow(from, from + 3_600))),
                              choice.extraSixtieths()))
                  .toList();
          WeekBooking told =
              new WeekBooking(door.id(), door.counted(), door.leftOutSixtieths(), choices);
          holding += ask(asked, told).sameDays() == Verdict.FITS ? 1 : 0;
        }
        assertTrue(
            holding >= day.fitting(), day.day().date() + " from " + from + ": " + holding + day);
      }
    }
  }

  @Test
  void aSmallDogAtAnyTime() throws IOException {
    holds("6 kg", "", true);
  }

  @Test
  void aBigDogFindsNoRoomAtAnyOfThem() throws IOException {
    holds("40 kg", "Mon; Wed after 13:00; Fri", false);
  }
}
