package dev.dogleg.cli.settings;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Faults;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.model.Business;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.WallSpan;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The business card. */
class CardReaderTest {
  private static final Path STARTER =
      Path.of(System.getProperty("dogleg.root"), "seeds", "business.yaml");

  @TempDir Path dir;

  private Optional<Card> read(String text, Faults faults) {
    try {
      Path file = dir.resolve("business.yaml");
      Files.writeString(file, text);
      return CardReader.read(file, "business.yaml", faults);
    } catch (IOException e) {
      throw new IllegalStateException(e);
    }
  }

  @Test
  void theStarterCardIsSoundAndSaysTheDefaults() throws IOException {
    Faults faults = new Faults();
    Card card = CardReader.read(STARTER, "business.yaml", faults).orElseThrow();
    assertEquals(List.of(), faults.all());
    Business business = card.business();
    assertEquals(Prices.STARTER, card.prices());
    assertEquals(4_500, business.worth().hourMinor());
    // Its remarks promise that keys left out take the values written there.
    String needed =
        """
        country: US
        time_zone: America/New_York
        groomers:
          - {name: Robin, home: 2 Orchard Row, hours: {mon: 8:00-18:00, tue: 8:00-18:00,
             wed: 8:00-18:00, thu: 8:00-18:00, fri: 8:00-18:00}}
        vans: [{name: Van 1}]
        break: {minutes: 30}
        name: Foxglove Mobile Grooming
        """;
    assertEquals(business, read(needed, faults).orElseThrow().business());
  }

  /**
   * Five small curly-coated dogs of 75 minutes with 18 stop minutes each, six drives of 15 minutes
   * and half an hour of lunch: 465 + 90 + 30 = 585 minutes (common practice, no source).
   */
  @Test
  void theStarterShiftHoldsTheCheckDay() {
    Card card = CardReader.read(STARTER, "business.yaml", new Faults()).orElseThrow();
    Business business = card.business();
    int day = 5 * (75 * 60 + business.stopSeconds()) + 6 * 15 * 60;
    day += business.dailyBreak().orElseThrow().lengthSeconds();
    assertEquals(585 * 60, day);
    WallSpan shift = business.groomers().get(0).hours().get(DayOfWeek.MONDAY);
    assertTrue(day <= shift.toSeconds() - shift.fromSeconds(), "600 minutes hold 585");
  }

  @Test
  void plainWordsBecomePricesAndFiguresWin() throws IOException {
    String base = Files.readString(STARTER);
    Faults faults = new Faults();
    String wishes =
        base.replace("home_early: no", "home_early: yes")
            .replace("fewer_miles: no", "fewer_miles: yes")
            .replace("fewest_changes: yes", "fewest_changes: no");
    Card card = read(wishes, faults).orElseThrow();
    assertEquals(new Prices(60, 20, 120, 30), card.prices());
    assertEquals(0, card.business().worth().changeSeconds());
    Card figures = read(wishes + "prices: {kilometre_seconds: 7}\n", faults).orElseThrow();
    assertEquals(new Prices(7, 20, 120, 30), figures.prices());
    assertTrue(faults.isEmpty(), () -> faults.all().toString());
  }

  @Test
  void daysOffAndPathsAndInForce() throws IOException {
    String text =
        Files.readString(STARTER)
            .replace("days_off: []", "days_off: [2027-05-03, 2027-07-05..2027-07-16]")
            .replace("# map: ../maps/region.osm.pbf", "map: ../maps/region.osm.pbf");
    Card card = read(text, new Faults()).orElseThrow();
    Groomer robin = card.business().groomers().get(0);
    assertTrue(robin.hoursOn(LocalDate.of(2027, 5, 3)).isEmpty());
    assertTrue(robin.hoursOn(LocalDate.of(2027, 7, 16)).isEmpty());
    assertTrue(robin.hoursOn(LocalDate.of(2027, 7, 19)).isPresent());
    assertEquals(
        dir.toAbsolutePath().normalize().resolveSibling("maps").resolve("region.osm.pbf"),
        card.business().map().orElseThrow());
    assertTrue(
        card.inForce().stream()
            .anyMatch(one -> one.toString().matches("stop_minutes: 18  \\(business.yaml:\\d+\\)")));
    assertTrue(card.inForce().stream().noneMatch(one -> one.value().contains("null")));
  }

  @Test
  void defaultsAreListedAsSuch() {
    String text =
        """
        country: GB
        time_zone: Europe/London
        groomers: [{name: Ann, home_pin: "10.5,-30.25", hours: {tue: 9-5}}]
        vans: [{name: Blue}]
        """;
    Card card = read(text, new Faults()).orElseThrow();
    assertTrue(card.business().drivesOnLeft());
    assertEquals("GBP", card.business().currency().getCurrencyCode());
    assertTrue(card.inForce().contains(new InForce("overtime_minutes", "60", "default")));
    assertEquals(new WallSpan(32_400, 61_200), card.usualHours());
  }

  @Test
  void deepNestingIsRefused() {
    Faults faults = new Faults();
    assertTrue(read("a: " + "[".repeat(5_000) + "]".repeat(5_000), faults).isEmpty());
    assertTrue(read("- ".repeat(5_000) + "a", faults).isEmpty());
    assertEquals(2, faults.all().stream().filter(f -> f.code().equals("unreadable-card")).count());
  }

  @Test
  void noDamageMakesItThrow() throws IOException {
    String good = Files.readString(STARTER);
    SplittableRandom random = new SplittableRandom(11);
    String[] bits = {
      "", " ", "\t", ":", "-", "[", "]", "{", "}", "#", "\"", "'", "&a ", "*a ", "!!int ", "|", ">",
      "?", "%", "9", "no", "\n", "---\n", "\u00e9", "<<: "
    };
    for (int run = 0; run < Integer.getInteger("dogleg.runs", 300); run++) {
      StringBuilder text = new StringBuilder(good);
      for (int i = random.nextInt(1, 4); i > 0; i--) {
        int at = random.nextInt(text.length());
        text.replace(
            at, Math.min(text.length(), at + random.nextInt(6)), bits[random.nextInt(bits.length)]);
      }
      Faults faults = new Faults();
      Optional<Card> card = read(text.toString(), faults);
      assertTrue(card.isPresent() != faults.stops(), "a card or a reason; run " + run);
      faults.all().forEach(fault -> assertEquals("business.yaml", fault.where().file()));
    }
  }
}
