package dev.dogleg.cli.prepare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.cli.console.Console;
import dev.dogleg.cli.csv.BookReader;
import dev.dogleg.cli.csv.ReadBook;
import dev.dogleg.cli.csv.ReadOptions;
import dev.dogleg.cli.export.PlanReader;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.VanDays;
import dev.dogleg.fault.Faults;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.time.TimeWindow;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A book and the sample map, as the week's request: town ring. */
class WeekPreparationTest {
  private static final Path ROOT =
      Path.of(System.getProperty("dogleg.root")).toAbsolutePath().normalize();
  private static final LocalDate MONDAY = LocalDate.of(2027, 3, 1);

  /** Seconds of driving to sixtieths. */
  private static final long SIXTY = 60;

  private static final String CARD =
      """
      country: US
      currency: USD
      time_zone: Etc/GMT+8
      groomers:
        - name: Marlo Finch
          home: 45 Hazel Avenue, Brindlewick
          hours: {mon: "8:00-18:00", tue: "8:00-18:00", wed: "8:00-18:00"}
        - name: Ona Reed
          home: 13 Hazel Avenue, Brindlewick
          hours: {tue: "8:00-18:00"}
          van: Foxglove
      vans:
        - name: Bluebell
        - name: Foxglove
          fresh_litres: 20
      break: none
      """;
  private static final String HEADER =
      "client,pet,address,size,coat,service,date,when,told,status,moves,value,likes,groomer,van,lock\n";
  private static final String ADA =
      "Ada,Biscuit,\"37 Vermilion Street, Brindlewick\",6 kg,curly,bath,";

  @TempDir Path dir;
  private final Faults faults = new Faults();

  /** Monday; Tuesday of Marlo; Tuesday of Ona; Wednesday. */
  private PreparedWeek week(String card, String rows, String earlier) throws IOException {
    Files.writeString(dir.resolve("business.yaml"), card);
    Files.writeString(dir.resolve("bookings.csv"), HEADER + rows);
    ReadBook read = BookReader.read(dir, ReadOptions.of(StarterTables.load()));
    Book book = read.book().orElseThrow(() -> new AssertionError(read.faults().all().toString()));
    List<LocalDate> dates = MONDAY.datesUntil(MONDAY.plusDays(3)).toList();
    List<VanDay> days = VanDays.of(book.business(), book.week().days(), dates);
    EarlierPlan plan = EarlierPlan.of(PlanReader.read(earlier, "plan.csv", faults));
    List<Booking> bookings =
        WeekPreparation.candidates(book, days, dates, plan, new Rows(), faults);
    PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
    Console console = new Console(nowhere, nowhere, false, StandardCharsets.UTF_8);
    try (MapInUse map =
        new MapInUse(
            ROOT.resolve("maps-sample/brindlewick.osm.pbf"),
            ROOT.resolve("router-cli/target/test-cache"),
            console,
            faults)) {
      return WeekPreparation.of(
              book, bookings, days, plan, read.tables(), map, new Rows(), 1, 1_000, faults)
          .orElseThrow(() -> new AssertionError(faults.all().toString()));
    }
  }

  private PreparedWeek week(String rows) throws IOException {
    return week(CARD, rows, "date,groomer,kind,booking\n");
  }

  private static WeekBooking only(PreparedWeek week) {
    assertEquals(1, week.request().bookings().size());
    return week.request().bookings().get(0);
  }

  private static Map<Integer, Long> prices(WeekBooking booking) {
    return booking.choices().stream()
        .collect(Collectors.toMap(DayChoice::day, DayChoice::extraSixtieths));
  }

  @Test
  void placesAreNumberedAlikeForAllVanDays() throws IOException {
    PreparedWeek week = week(ADA + "2027-03-01..2027-03-03,,,,,,,,,\n");
    assertEquals(
        List.of(
            "2027-03-01, Marlo Finch",
            "2027-03-02, Marlo Finch",
            "2027-03-02, Ona Reed",
            "2027-03-03, Marlo Finch"),
        week.days().stream().map(VanDay::title).toList());
    assertEquals(Set.of(0, 1, 2, 3), prices(only(week)).keySet());
    assertEquals(
        1, only(week).choices().stream().map(choice -> choice.visit().place()).distinct().count());
    assertEquals(
        1, week.request().days().stream().map(day -> day.travel().size()).distinct().count());
    assertTrue(only(week).counted());
    assertTrue(faults.isEmpty(), faults.all().toString());
  }

  @Test
  void whoNeedsAGroomerOrVanHasNoOther() throws IOException {
    assertEquals(
        Set.of(2), prices(only(week(ADA + "2027-03-01..2027-03-03,,,,,,,Ona Reed,,\n"))).keySet());
    assertEquals(
        Set.of(0, 1, 3),
        prices(only(week(ADA + "2027-03-01..2027-03-03,,,,,,,,Bluebell,\n"))).keySet());
  }

  @Test
  void anAskAndAChangeHaveTheirPrices() throws IOException {
    // An ask is the second remedy: 14,400 s; who moves gladly costs a change: 600 s.
    assertEquals(
        Map.of(0, 0L, 1, 14_400 * SIXTY, 2, 14_400 * SIXTY, 3, 14_400 * SIXTY),
        prices(only(week(ADA + "2027-03-01,,,,ask,,,,,\n"))));
    assertEquals(
        Map.of(0, 0L, 3, 600 * SIXTY),
        prices(only(week(ADA + "2027-03-01,Mon; Wed,,,any time,,,,,\n"))),
        "its own weekdays bind there too");
    assertEquals(
        Set.of(0), prices(only(week(ADA + "2027-03-01,,10:00-11:00,,ask,,,,,\n"))).keySet());
    assertEquals(
        Set.of(0),
        prices(
                only(
                    week(
                        CARD + "when_full: [longer day]\n",
                        ADA + "2027-03-01,,,,ask,,,,,\n",
                        "date,groomer,kind,booking\n")))
            .keySet(),
        "a remedy that is not named is not used");
  }

  @Test
  void whatIsDueLaterHasAPriceAndSoHasTheWaitingList() throws IOException {
    WeekBooking due = only(week(ADA + "2027-03-02..2027-03-09,,,,,,,,,\n"));
    assertFalse(due.counted());
    assertEquals(57_600 * SIXTY, due.leftOutSixtieths(), "the third remedy");
    assertTrue(
        only(week(
                CARD + "when_full: [ask]\n",
                ADA + "2027-03-02..2027-03-09,,,,,,,,,\n",
                "date,groomer,kind,booking\n"))
            .counted());
    WeekBooking waiting = only(week(ADA + ",,,waiting,,85,,,,\n"));
    // 85 dollars at 45 an hour are 85 / 45 x 3,600 = 6,800 seconds.
    assertEquals(6_800 * SIXTY, waiting.leftOutSixtieths());
    assertEquals(4, waiting.choices().size(), "without a date any day will do");
  }

  @Test
  void oneClientsBookingsAreOneStopWhereThatIsSure() throws IOException {
    String mop = ADA.replace("Biscuit", "Mop");
    assertEquals(
        "ada.biscuit@2027-03-01..2027-03-03;ada.mop@2027-03-01..2027-03-03",
        only(week(
                ADA
                    + "2027-03-01..2027-03-03,,,,,,,,,\n"
                    + mop
                    + "2027-03-01..2027-03-03,after 9,,,,,,,,\n"))
            .id());
    for (String other :
        List.of(
            "2027-03-01..2027-03-02,,,,,,,,,\n",
            "2027-03-01..2027-03-03,,,waiting,,,,,,\n",
            "2027-03-01..2027-03-03,,,,,,,Ona Reed,,\n")) {
      PreparedWeek week = week(ADA + "2027-03-01..2027-03-03,,,,,,,,,\n" + mop + other);
      assertEquals(2, week.request().bookings().size(), other);
    }
    PreparedWeek apart =
        week(ADA + "2027-03-01,9-10,,,,,,,,\n" + mop + "2027-03-01,15-16,,,,,,,,\n");
    assertEquals(2, apart.request().bookings().size(), "two arrivals");
  }

  private static final String EARLIER =
      """
      date,groomer,kind,booking,arrive
      2027-03-02,marlo-finch,visit,someone-else,09:00:00
      2027-03-02,marlo-finch,visit,ada.biscuit@2027-03-01..2027-03-03,10:00:00
      """;

  @Test
  void theEarlierPlanHoldsByPriceOrByLock() throws IOException {
    String row = ADA + "2027-03-01..2027-03-03,,,,,,,,,";
    assertEquals(
        Map.of(0, 600 * SIXTY, 1, 0L, 2, 600 * SIXTY, 3, 600 * SIXTY),
        prices(only(week(CARD, row + "\n", EARLIER))));
    assertEquals(Set.of(1), prices(only(week(CARD, row + "day\n", EARLIER))).keySet());
    PreparedWeek time = week(CARD, row + "time\n", EARLIER);
    assertEquals(
        List.of(new TimeWindow(35_100, 36_900)),
        only(time).choices().get(0).visit().arriveWithin(),
        "10:00, a quarter of an hour either way");
    PreparedWeek place = week(CARD, row + "place\n", EARLIER);
    assertEquals(
        List.of(
            new DayRule.PlaceInDay(
                "lock of Ada",
                OptionalLong.empty(),
                Set.of(only(place).id()),
                DayPlace.EXACTLY,
                2)),
        place.request().days().get(1).terms().rules());
    assertTrue(faults.isEmpty(), faults.all().toString());
    week(CARD, row + "day\n", "date,groomer,kind,booking\n");
    assertEquals("lock-without-plan", faults.all().get(0).code());
  }

  @Test
  void overtimeFollowsTheOrderOfRemedies() throws IOException {
    String row = ADA + "2027-03-01,,,,,,,,,\n";
    PreparedWeek usual = week(row);
    assertEquals(120, usual.request().prices().overtimeMinuteSeconds());
    assertEquals(3_600, usual.request().days().get(0).shift().overtimeSeconds());
    PreparedWeek second =
        week(CARD + "when_full: [ask, longer day]\n", row, "date,groomer,kind,booking\n");
    assertEquals(480, second.request().prices().overtimeMinuteSeconds());
    PreparedWeek never = week(CARD + "when_full: [ask]\n", row, "date,groomer,kind,booking\n");
    assertEquals(0, never.request().days().get(0).shift().overtimeSeconds());
  }

  @Test
  void waterWhereATankIsSmallAndZonesByMinutes() throws IOException {
    Files.writeString(
        dir.resolve("zones.csv"),
        "zone,days,from,minutes,strength\nAround,wed,\"12 Vermilion Street, Brindlewick\",5,must\n");
    String two =
        ADA
            + "2027-03-01..2027-03-03,,,,,,,,,\n"
            + "Bo,Rex,\"115 North 10th Street, Northfield\",30 kg,double,bath,2027-03-02,,,,,,,,,\n";
    PreparedWeek week = week(two);
    assertEquals(Set.of(3), prices(week.request().bookings().get(0)).keySet());
    assertTrue(week.request().days().get(1).terms().water().isEmpty(), "Bluebell has no tanks");
    assertEquals(
        20_000,
        week.request().days().get(2).terms().water().orElseThrow().tank().freshMillilitres());
  }
}
