package dev.dogleg.cli.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.cli.csv.BookReader;
import dev.dogleg.cli.csv.ReadBook;
import dev.dogleg.cli.csv.ReadOptions;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Tags and van-days of a book as read. */
class BookTermsTest {
  private static final LocalDate TUESDAY = LocalDate.of(2027, 3, 2);
  private static final String CARD =
      """
      country: US
      time_zone: America/New_York
      groomers:
        - name: Robin
          tags: [trusted until 2027-03-02]
          hours: {mon: 8:00-18:00, tue: 8:00-18:00}
          home: 2 Orchard Row
        - name: Ona
          hours: {tue: 9:00-15:00}
          home: 3 Orchard Row
      vans:
        - name: Van 1
          lift: yes
      helpers: [{name: Sam Hill, tags: strong}]
      """;

  @TempDir Path dir;

  private Book book(String name, String text) throws IOException {
    Files.writeString(dir.resolve("business.yaml"), CARD);
    Files.writeString(
        dir.resolve("bookings.csv"),
        """
        client,pet,address,breed,size,coat,behaviour,tags,service,date
        Okafor,Biscuit,12 Mill Lane,Pug,9 kg,smooth,nervous,pill; contagious until 2027-03-01,nails,2027-03-02
        Ottery,Fern,3 Mill Lane,Golden Retriever,30 kg,double,easy,,bath + teeth,2027-03-02
        """);
    if (!name.isEmpty()) {
      Files.writeString(dir.resolve(name), text);
    }
    ReadBook read = BookReader.read(dir, ReadOptions.of(StarterTables.load()));
    return read.book().orElseThrow(() -> new AssertionError(read.faults().all().toString()));
  }

  @Test
  void tagsFollowFromWhatIsKnown() throws IOException {
    Book book = book("", "");
    StopTagger tagger = new StopTagger(StarterTables.load(), book);
    Booking pug = book.bookings().get(0);
    assertEquals(
        List.of(Set.of("dog", "small", "smooth", "nervous", "good", "nails", "flat-faced", "pill")),
        tagger.petTags(book.clients().get(0), List.of(pug), TUESDAY),
        "contagious until the day before");
    Booking fern = book.bookings().get(1);
    assertEquals(
        List.of(Set.of("dog", "large", "double", "easy", "good", "bath", "teeth")),
        tagger.petTags(book.clients().get(1), List.of(fern), TUESDAY));
    assertEquals(new WaterUse(1_000, 1_000), tagger.water(List.of(pug)), "nails only");
    assertEquals(
        new WaterUse(52_000, 52_000), tagger.water(List.of(fern)), "large, double coat, bath");
  }

  @Test
  void vanDaysUnderSpecialDays() throws IOException {
    Book book =
        book(
            "days.csv",
            """
            date,groomer,hours,helper,off,tags
            2027-03-01,,,,yes,
            2027-03-02,Ona,,,yes,
            2027-03-02,,,Sam Hill,,hot
            2027-03-03,Robin,10-14,,,
            """);
    List<VanDay> days =
        VanDays.of(
            book.business(),
            book.week().days(),
            List.of(TUESDAY.minusDays(1), TUESDAY, TUESDAY.plusDays(1)));
    assertEquals(
        List.of("2027-03-02, Robin", "2027-03-03, Robin"),
        days.stream().map(VanDay::title).toList());
    VanDay tuesday = days.get(0);
    assertTrue(tuesday.dayTags().containsAll(Set.of("hot", "tue", "tuesday", "weekdays")));
    assertEquals(
        Set.of("robin", "van-1", "trusted", "lift", "helper", "sam-hill", "strong"),
        tuesday.crewTags());
    assertEquals(36_000, days.get(1).hours().fromSeconds(), "a day that the card has off");
    assertEquals(Set.of("robin", "van-1", "lift"), days.get(1).crewTags(), "no longer trusted");
  }

  @Test
  void aTagThatNobodyBearsIsSaid() throws IOException {
    Book book =
        book(
            "rules.csv",
            """
            rule,shape,a,b,on,when
            typo,first,flat-facd,,,
            starter,first,contagious,,,
            later,first,not-first,,,
            day,arrive,any,,hott,9-12
            crew,only with,dog,lifts,,
            known,only with,dog,sam-hill; trusted,tuesdays,
            """);
    Faults faults = new Faults();
    new TagVocabulary(book, StarterTables.load())
        .check(
            book.week().rules(),
            book.week().zones(),
            rule -> Where.file("rules.csv").at(rule),
            Where::file,
            faults);
    assertEquals(
        List.of(
            "LOOK flat-facd nearest: flat-faced",
            "NOTE not-first ",
            "LOOK hott ",
            "LOOK lifts nearest: lift"),
        faults.all().stream()
            .map(fault -> fault.severity() + " " + fault.seen() + " " + fault.hint())
            .toList());
  }
}
