package dev.dogleg.groom.learn;

import dev.dogleg.fault.Where;
import dev.dogleg.groom.Breed;
import dev.dogleg.groom.GroomQuestion;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.Learned;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.TableTime;
import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Book;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Business;
import dev.dogleg.model.Client;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.HowToTell;
import dev.dogleg.model.Pet;
import dev.dogleg.model.Place;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import dev.dogleg.model.Van;
import dev.dogleg.model.Worth;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Currency;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;
import java.util.function.Function;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.ListSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * A year of visits of one groomer, made up out of a {@link Truth}; the same seed makes the same
 * log.
 *
 * <p>Every pet has the same number of visits, spread over twelve months up to {@link #UNTIL} in
 * rounds; five visits a day. Each has the tables' minutes for its pet on its day, times the truth's
 * factors and noise, in whole minutes as a person types them. One client in eight has two pets,
 * groomed in one visit. Each visit has a drive.
 */
public final class SyntheticLog {
  /** Last day of the log. */
  public static final LocalDate UNTIL = LocalDate.of(2027, 2, 26);

  private static final int DAYS = 360;
  private static final int A_DAY = 5;
  private static final Groomer GROOMER =
      new Groomer(
          "kim",
          "Kim",
          1000,
          Map.of(),
          List.of(),
          new Place("1 Mill Lane", Optional.empty()),
          "van");
  private static final List<String> BANDS = List.of("morning peak", "midday", "afternoon peak");

  private final GroomTables tables = StarterTables.load();
  private final Truth truth;
  private final UniformRandomProvider random;
  private final ZigguratSampler.NormalizedGaussian normal;
  private final List<Client> clients = new ArrayList<>();
  private final List<Pet> pets = new ArrayList<>();
  private final Map<String, List<Pet>> ofClient = new HashMap<>();
  private final Map<String, String> services = new HashMap<>();
  private final Map<String, Double> effects = new HashMap<>();
  private Book book;
  private List<LoggedVisit> visits;

  private SyntheticLog(Truth truth, long seed) {
    this.truth = truth;
    random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    normal = ZigguratSampler.NormalizedGaussian.of(random);
  }

  /**
   * Makes a log.
   *
   * @param seed seed of every random choice
   * @param truth what is true in it
   * @param clientCount clients, 1..2,000
   * @param visitsEach visits of each, 1..50
   * @return the log
   */
  public static SyntheticLog of(long seed, Truth truth, int clientCount, int visitsEach) {
    SyntheticLog log = new SyntheticLog(truth, seed);
    log.people(clientCount);
    log.book = new Book(business(), log.clients, log.pets, List.of());
    log.visits = log.happened(log.planned(visitsEach));
    return log;
  }

  /** {@return the book: card, clients, pets; nobody's own minutes, no last grooms} */
  public Book book() {
    return book;
  }

  /** {@return the starter tables} */
  public GroomTables tables() {
    return tables;
  }

  /** {@return the visits, by date} */
  public List<LoggedVisit> visits() {
    return visits;
  }

  /**
   * The true factor of a groom without its day and its noise.
   *
   * @param question the groom of a pet of this book
   * @return pace, service, breed and pet together
   */
  public double factor(GroomQuestion question) {
    return truth.pace()
        * StrictMath.exp(
            effect("service " + Learned.serviceKey(question), truth.serviceSpread())
                + effect("breed " + Learned.breedKey(question).orElse(""), truth.breedSpread())
                + effect("pet " + question.keys().petId(), truth.petSpread()));
  }

  private double effect(String name, double spread) {
    return effects.computeIfAbsent(name, ignored -> spread * normal.sample());
  }

  private void people(int count) {
    List<Breed> breeds =
        tables.breeds().stream().filter(breed -> breed.species() == Species.DOG).toList();
    for (int c = 0; c < count; c++) {
      String id = "client" + c;
      clients.add(
          new Client(
              id,
              "Client " + c,
              Optional.empty(),
              HowToTell.NOBODY,
              new Place(c + " Mill Lane", Optional.empty()),
              "",
              "",
              0,
              ""));
      int number = c % 8 == 7 ? 2 : 1;
      for (int p = 0; p < number; p++) {
        Breed breed = breeds.get(random.nextInt(breeds.size()));
        Pet pet = pet(id + ".pet" + p, id, breed);
        pets.add(pet);
        ofClient.computeIfAbsent(id, ignored -> new ArrayList<>()).add(pet);
        services.put(pet.id(), service(breed));
      }
    }
  }

  private String service(Breed breed) {
    Coat coat = breed.coat().taken();
    int draw = random.nextInt(10);
    if (draw == 0) {
      return "nails";
    }
    if (coat == Coat.SMOOTH || coat == Coat.DOUBLE) {
      return coat == Coat.DOUBLE && draw < 4 ? "deshed" : "bath";
    }
    return draw < 3 ? "tidy" : "full";
  }

  private static Pet pet(String id, String clientId, Breed breed) {
    int grams =
        switch (breed.size().taken()) {
          case TINY -> 3_000;
          case SMALL -> 7_000;
          case MEDIUM -> 14_000;
          case LARGE -> 28_000;
          case GIANT -> 50_000;
        };
    return new Pet(
        id,
        clientId,
        id,
        Species.DOG,
        Optional.of(breed.name()),
        OptionalInt.of(grams),
        Optional.of(SizeClass.ofGrams(grams)),
        Optional.of(breed.coat().taken()),
        Behaviour.EASY,
        List.of(),
        Optional.empty(),
        OptionalInt.empty(),
        OptionalLong.empty(),
        OptionalInt.empty(),
        Optional.empty(),
        Optional.empty(),
        false,
        Optional.empty(),
        Set.of());
  }

  /** Visits on their days, each a minute long for now: the tables are asked next. */
  private List<LoggedVisit> planned(int visitsEach) {
    List<LoggedVisit> planned = new ArrayList<>();
    int row = 2;
    int days = (clients.size() + A_DAY - 1) / A_DAY;
    for (int round = 0; round < visitsEach; round++) {
      List<Client> order = new ArrayList<>(clients);
      ListSampler.shuffle(random, order);
      for (int c = 0; c < order.size(); c++) {
        int within = c / A_DAY * (DAYS / visitsEach) / days;
        LocalDate date = UNTIL.minusDays(DAYS - 1L).plusDays(round * (DAYS / visitsEach) + within);
        List<BookedPet> booked =
            ofClient.get(order.get(c).id()).stream()
                .map(
                    pet ->
                        new BookedPet(
                            pet.id(), List.of(services.get(pet.id())), CoatState.GOOD, false))
                .toList();
        planned.add(
            new LoggedVisit(
                Where.row("visits.csv", row++),
                date,
                GROOMER.id(),
                booked,
                60,
                VisitOutcome.DONE,
                Optional.of(drive())));
      }
    }
    return planned;
  }

  private LoggedDrive drive() {
    String band = BANDS.get(random.nextInt(BANDS.size()));
    int planned = 60 * (3 + random.nextInt(22));
    double factor =
        truth.bandFactor().getOrDefault(band, 1.0)
            * StrictMath.exp(truth.driveSpread() * normal.sample());
    int driven = (int) Math.max(60, 60 * Math.round(planned * factor / 60));
    return new LoggedDrive(planned, driven, band, Map.of());
  }

  private List<LoggedVisit> happened(List<LoggedVisit> planned) {
    List<LoggedVisit> happened = new ArrayList<>();
    Function<LocalDate, Double> day = date -> effect("day " + date, truth.daySpread());
    for (AskedVisit asked : AskedVisit.all(planned, tables, book)) {
      double minutes = asked.furtherSeconds() / 60.0;
      for (int g = 0; g < asked.grooms().size(); g++) {
        TableTime table = asked.tables().get(g);
        double noise =
            truth.visitScale() * table.spreadKnown() * normal.sample()
                + day.apply(asked.visit().date());
        minutes += table.minutes() * factor(asked.grooms().get(g)) * StrictMath.exp(noise);
      }
      int seconds = (int) Math.min(43_200, Math.max(180, 60 * Math.round(minutes)));
      happened.add(lasting(asked.visit(), seconds));
    }
    return happened;
  }

  /**
   * A visit that took another time.
   *
   * @param visit a visit
   * @param groomSeconds 60..43,200
   * @return the same visit, so long
   */
  public static LoggedVisit lasting(LoggedVisit visit, int groomSeconds) {
    return new LoggedVisit(
        visit.where(),
        visit.date(),
        visit.groomerId(),
        visit.pets(),
        groomSeconds,
        visit.outcome(),
        visit.drive());
  }

  private static Business business() {
    Van van =
        new Van(
            "van",
            "Van",
            280,
            210,
            600,
            3500,
            110,
            false,
            OptionalInt.empty(),
            OptionalInt.empty(),
            false);
    return new Business(
        "Kim and a van",
        "US",
        Currency.getInstance("USD"),
        ZoneId.of("UTC"),
        false,
        Optional.empty(),
        List.of(GROOMER),
        List.of(van),
        Optional.empty(),
        0,
        1_080,
        420,
        50,
        new Worth(20, 20, 120, 0, 0, 3000, 3600));
  }
}
