package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.model.BookingTerms;
import dev.dogleg.model.DayEntry;
import dev.dogleg.model.Errand;
import dev.dogleg.model.GeoPoint;
import dev.dogleg.model.Lock;
import dev.dogleg.model.Moves;
import dev.dogleg.model.Remedy;
import dev.dogleg.model.RemedyPrices;
import dev.dogleg.model.RuleMinutes;
import dev.dogleg.model.RuleShape;
import dev.dogleg.model.Strength;
import dev.dogleg.model.Tag;
import dev.dogleg.model.TagRule;
import dev.dogleg.model.WallSpan;
import dev.dogleg.model.WeekWishes;
import dev.dogleg.model.Zone;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a book says for planning several days together. */
class WeekTablesTest {
  private static final Path ROOT = Path.of(System.getProperty("dogleg.root"));
  private static final String BOOKING =
      """
      client,pet,address,breed,size,coat,date
      Okafor,Biscuit,12 Mill Lane,Miniature Poodle,6 kg,curly,2027-03-02
      """;

  @TempDir Path dir;

  private ReadBook with(String name, String text) {
    ReadBook read = Folder.in(dir).with("bookings.csv", BOOKING).with(name, text).read();
    assertEquals(List.of(), Folder.loud(read));
    return read;
  }

  private TagRule rule(String row) {
    String header = "rule,shape,a,b,on,when,number,minutes,at_place,strength,until,line\n";
    return with("rules.csv", header + row + "\n").book().orElseThrow().week().rules().get(0);
  }

  @Test
  void everyStarterRuleIsReadAndNamesItsProvenance() throws IOException {
    String seeds = Files.readString(ROOT.resolve("seeds/rules.csv"));
    ReadBook read = with("rules.csv", seeds);
    List<TagRule> rules = read.book().orElseThrow().week().rules();
    assertEquals(seeds.lines().count() - 1, rules.size());
    for (TagRule rule : rules) {
      assertFalse(
          read.cells(read.sources().rule(rule.name(), Column.RULE)).get("provenance").isBlank(),
          rule.name());
    }
  }

  @Test
  void everyShapeCanBeWritten() {
    Set<RuleShape> seen = EnumSet.noneOf(RuleShape.class);
    for (RuleShape shape : RuleShape.values()) {
      String b = shape.twoSided() ? "dog" : "";
      String when =
          switch (shape) {
            case ARRIVE, VAN -> "9-12; 14-16";
            case DONE_BY -> "before 15:00";
            default -> "";
          };
      String number = shape == RuleShape.AT_MOST ? "2" : "";
      String minutes = shape.mustOnly() ? "+10" : "";
      TagRule rule =
          rule(
              "x,%s,cat,%s,hot,%s,%s,%s,,,2027-05-01,look out"
                  .formatted(shape.words(), b, when, number, minutes));
      assertEquals(shape, rule.shape());
      assertEquals(Optional.of(LocalDate.of(2027, 5, 1)), rule.until());
      assertEquals("look out", rule.line());
      assertTrue(rule.strength().must());
      assertEquals(shape.mustOnly() ? 600 : 0, rule.minutes().plusSeconds());
      seen.add(rule.shape());
    }
    assertEquals(EnumSet.allOf(RuleShape.class), seen);
  }

  @Test
  void whomARuleMeans() {
    TagRule rule = rule("x,at most,giant = 2; large + not cat,,,,3,,,rather 20,,");
    assertEquals(2, rule.a().points(Set.of("giant", "dog")));
    assertEquals(1, rule.a().points(Set.of("large", "dog")));
    assertEquals(0, rule.a().points(Set.of("large", "cat")));
    assertEquals(3, rule.number());
    assertEquals(Strength.rather(20), rule.strength());
    assertEquals(Strength.rather(15), rule("x,first,any,,,,,,,rather,,").strength());
    TagRule many = rule("x,together,lane-*,,,,,,,,,");
    assertTrue(many.a().matches(Set.of("lane-5")));
    assertFalse(many.a().matches(Set.of("alane-5")));
  }

  @Test
  void minutesOfARule() {
    assertEquals(
        new RuleMinutes(1_200, -300, 2, 3), rule("x,minutes,any,,,,,x1.2 -5,2-3,,,").minutes());
    assertEquals(
        new RuleMinutes(1_000, 600, 5, RuleMinutes.NO_END),
        rule("x,minutes,any,,,,,+10,5-,,,").minutes());
  }

  @Test
  void aTagHoldsUpToItsLastDay() {
    ReadBook read =
        Folder.in(dir)
            .with(
                "bookings.csv",
                "client,pet,address,breed,size,coat,tags\n"
                    + "Okafor,Biscuit,12 Mill Lane,Miniature Poodle,6 kg,curly,Timed Pill; Contagious"
                    + " until 20 Mar 2027\n")
            .read();
    List<Tag> tags = read.book().orElseThrow().pets().get(0).tags();
    assertEquals("[timed-pill, contagious until 2027-03-20]", tags.toString());
    assertTrue(tags.get(1).holdsOn(LocalDate.of(2027, 3, 20)));
    assertFalse(tags.get(1).holdsOn(LocalDate.of(2027, 3, 21)));
    assertEquals(List.of(), read.book().orElseThrow().clients().get(0).tags(), "of the pet alone");
  }

  @Test
  void clientsBearTheirOwnTagsAndThoseOfThePlace() {
    ReadBook read =
        Folder.in(dir)
            .with("bookings.csv", "client,pets,date\nOkafor,Biscuit,2027-03-02\n")
            .with("clients.csv", "client,address,tags\nOkafor,12 Mill Lane,quiet-hours\n")
            .with(
                "pets.csv",
                """
                pet,client,breed,size,coat,litres
                Biscuit,Okafor,Miniature Poodle,6 kg,curly,22
                """)
            .with("places.csv", "address,lat,lon,tags\n\"12, mill lane\",,,steep-lane\n")
            .read();
    assertEquals(List.of(), Folder.loud(read));
    assertEquals(
        List.of(Tag.of("quiet-hours"), Tag.of("steep-lane")),
        read.book().orElseThrow().clients().get(0).tags());
    assertEquals(OptionalInt.of(22), read.book().orElseThrow().pets().get(0).litres());
  }

  @Test
  void daysAreReadOneByOne() {
    List<DayEntry> days =
        with(
                "days.csv",
                """
                date,groomer,hours,start,end,helper,off,tags
                2027-03-01..2027-03-02,,,,,,,hot
                2027-03-03,robin,9-15,3 Depot Road,"10.5,-30.25",Sam,,ice
                2027-03-04,,,,,,yes,
                """)
            .book()
            .orElseThrow()
            .week()
            .days();
    assertEquals(4, days.size());
    assertEquals(LocalDate.of(2027, 3, 2), days.get(1).date());
    DayEntry third = days.get(2);
    assertEquals(Optional.of("robin"), third.groomerId());
    assertEquals(Optional.of(new WallSpan(32_400, 54_000)), third.hours());
    assertEquals("3 Depot Road", third.start().orElseThrow().address());
    assertEquals(Optional.of(new GeoPoint(10.5, -30.25)), third.end().orElseThrow().pin());
    assertEquals(Optional.of("Sam"), third.helper());
    assertTrue(days.get(3).off());
  }

  @Test
  void errandsHaveIdsOfTheirNames() {
    Errand errand =
        with(
                "errands.csv",
                """
                errand,date,when,minutes,address,note
                Blades to sharpen,2027-03-02,9-17,20,3 Depot Road,ask for the small ones
                """)
            .book()
            .orElseThrow()
            .week()
            .errands()
            .get(0);
    assertEquals("errand.blades-to-sharpen@2027-03-02", errand.id());
    assertEquals(1_200, errand.seconds());
  }

  @Test
  void zonesByAreaPostcodeAndMinutes() {
    Folder.in(dir)
        .with(
            "zones.geojson",
            """
            {"type": "FeatureCollection", "features": [
              {"type": "Feature", "properties": {"name": "North"},
               "geometry": {"type": "Polygon", "coordinates": [[[0,0],[2,0],[2,1],[0,1],[0,0]]]}},
              {"type": "Feature", "properties": {"name": "South", "days": "fri", "strength": "must"},
               "geometry": {"type": "Polygon", "coordinates": [[[0,-2],[2,-2],[2,-1],[0,-2]]]}}]}
            """);
    List<Zone> zones =
        with(
                "zones.csv",
                """
                zone,days,postcodes,districts,from,minutes,strength
                North,mon; thu,,,,,must
                Mill,tue,021*; AB1 2CD,,,,
                Depot,wed,,,3 Depot Road,12,rather 30
                Old,fri,,Old Ferry; Saint-Orfrais;,,,
                """)
            .book()
            .orElseThrow()
            .week()
            .zones();
    assertEquals(
        List.of("North", "Mill", "Depot", "Old", "South"), zones.stream().map(Zone::name).toList());
    Zone north = zones.get(0);
    assertTrue(north.holds(new GeoPoint(0.5, 1.5)), "longitude comes first in a GeoJSON");
    assertFalse(north.holds(new GeoPoint(1.5, 0.5)));
    assertTrue(north.holds(new GeoPoint(1, 1)), "its edge belongs to it");
    assertTrue(north.strength().must());
    assertTrue(zones.get(1).holdsPostcode("4 Lane, Town 02134"));
    assertTrue(zones.get(1).holdsPostcode("4 Lane, Town, ab1 2cd"));
    assertFalse(zones.get(1).holdsPostcode("4 Lane, Town 03134"));
    assertEquals(OptionalInt.of(720), zones.get(2).withinSeconds());
    assertEquals(List.of("Old Ferry", "Saint-Orfrais"), zones.get(3).districts());
    assertTrue(zones.get(4).strength().must());
  }

  @Test
  void aBookingSaysWhatItNeedsAndLikes() {
    ReadBook read =
        Folder.in(dir)
            .with(
                "bookings.csv",
                "client,pet,address,breed,size,coat,status,moves,value,likes,groomer,van,lock\n"
                    + "Okafor,Biscuit,12 Mill Lane,Miniature Poodle,6 kg,curly,waiting,Any time,85,Tue"
                    + " 9-12,ROBIN,van-1,place\n")
            .read();
    assertEquals(List.of(), Folder.loud(read));
    BookingTerms terms = read.book().orElseThrow().bookings().get(0).terms();
    assertEquals(Moves.ANY_TIME, terms.moves());
    assertEquals(OptionalLong.of(8_500), terms.valueMinor());
    assertTrue(terms.likes().isPresent());
    assertEquals(Optional.of("robin"), terms.groomerId());
    assertEquals(Optional.of("van-1"), terms.vanId());
    assertEquals(Optional.of(Lock.PLACE), terms.lock());
  }

  @Test
  void theCardOrdersTheRemedies() {
    ReadBook read =
        Folder.in(dir)
            .with(
                "business.yaml",
                Folder.CARD
                    + """
                        tags: [slim]
                    when_full: [next week, longer day]
                    water: {places: [home, 3 Depot Road], minutes: 10, most: 2}
                    balance: {end: "16:30"}
                    helpers: [{name: Sam, tags: strong}]
                    prices: {like_seconds: 60}
                    """)
            .with("bookings.csv", BOOKING)
            .read();
    assertEquals(List.of(), Folder.loud(read));
    WeekWishes week = read.book().orElseThrow().business().week();
    assertEquals(List.of(Remedy.NEXT_WEEK, Remedy.LONGER_DAY), week.whenFull());
    assertEquals(new RemedyPrices(4, 3_600, 3_600, 60), week.prices());
    assertTrue(week.water().atHome());
    assertEquals(600, week.water().seconds());
    assertEquals("3 Depot Road", week.water().places().get(0).address());
    assertEquals(OptionalInt.of(59_400), week.balance().orElseThrow().endWallSeconds());
    assertEquals("[strong]", week.helpers().get(0).tags().toString());
    assertEquals("[slim]", read.book().orElseThrow().business().vans().get(0).tags().toString());
  }
}
