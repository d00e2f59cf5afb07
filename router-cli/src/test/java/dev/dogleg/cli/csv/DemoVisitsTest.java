package dev.dogleg.cli.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Faults;
import dev.dogleg.groom.GroomEstimator;
import dev.dogleg.groom.GroomQuestion;
import dev.dogleg.groom.StarterTables;
import dev.dogleg.groom.StopQuestions;
import dev.dogleg.model.Book;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Client;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.Groomer;
import dev.dogleg.model.Pet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/**
 * The demo book's visit log is made up by this generator, seed 20270226, out of the demo book: each
 * client's last grooms at the interval of its pets, in the tables' minutes times a pace of 1.10, a
 * factor for each pet (spread 0.18), one for each day (0.05) and noise (0.13); drives are a tenth
 * longer than planned in the morning peak. Written anew with {@code -Ddogleg.golden=rewrite}.
 */
class DemoVisitsTest {
  private static final long SEED = 20_270_226L;
  private static final Path FILE =
      Path.of(System.getProperty("dogleg.root")).resolve("demo-data/visits.csv");
  private static final LocalDate TODAY = LocalDate.of(2027, 2, 28);

  private final ReadBook read =
      BookReader.read(FILE.getParent(), ReadOptions.of(StarterTables.load()));
  private final Book book = read.book().orElseThrow();
  private final Random random = new Random(SEED);
  private final Map<String, Double> factors = new HashMap<>();

  @Test
  void theLogIsWhatTheGeneratorMakes() throws IOException {
    String made = made();
    if ("rewrite".equals(System.getProperty("dogleg.golden"))) {
      Files.writeString(FILE, made);
    }
    assertEquals(made, Files.readString(FILE).replace("\r\n", "\n"), "seed " + SEED);
  }

  @Test
  void theLogHasNoFault() {
    Faults faults = new Faults();
    VisitLog log = VisitLog.read(FILE, "visits.csv", read, TODAY, faults).orElseThrow();
    assertEquals(List.of(), faults.all());
    assertEquals(0, log.setAside());
    assertTrue(log.visits().size() >= 60 && log.visits().size() <= 100, "" + log.visits().size());
  }

  private String made() {
    Map<LocalDate, List<Client>> days = new TreeMap<>();
    for (Client client : book.clients()) {
      Pet first = pets(client).get(0);
      int every = first.everyWeeks().orElseThrow();
      int times = every <= 5 ? 4 : 3;
      for (int back = 0; back < times; back++) {
        LocalDate day = first.lastGroomed().orElseThrow().minusWeeks((long) every * back);
        days.computeIfAbsent(day, ignored -> new ArrayList<>()).add(client);
      }
    }
    StringBuilder text =
        new StringBuilder(
            "date,client,pets,arrived,started,done,left,outcome,"
                + "planned_drive_minutes,drive_minutes,note\n");
    int number = 0;
    for (Map.Entry<LocalDate, List<Client>> day : days.entrySet()) {
      int clock = 8 * 60 + 25 + random.nextInt(20);
      double today = Math.exp(0.05 * random.nextGaussian());
      for (Client client : day.getValue()) {
        int planned = 3 + random.nextInt(14);
        double slow = clock < 9 * 60 + 30 ? 1.1 : 1.0;
        int driven =
            (int) Math.max(1, Math.round(planned * slow * Math.exp(0.15 * random.nextGaussian())));
        int arrived = clock + driven;
        int started = arrived + 7 + random.nextInt(4);
        int minutes = minutes(client, day.getKey(), today);
        String outcome = ++number % 29 == 0 ? "cut short" : number % 31 == 0 ? "no show" : "";
        minutes = outcome.equals("cut short") ? minutes / 2 : minutes;
        boolean nobody = outcome.equals("no show");
        int done = started + minutes;
        int left = nobody ? arrived + 10 : done + 7 + random.nextInt(4);
        text.append(day.getKey()).append(',').append(client.name()).append(',');
        text.append(String.join(";", pets(client).stream().map(Pet::name).toList())).append(',');
        text.append(time(arrived)).append(',').append(nobody ? "" : time(started)).append(',');
        text.append(nobody ? "" : time(done)).append(',').append(time(left)).append(',');
        text.append(outcome).append(',').append(planned).append(',').append(driven).append(',');
        text.append(
            switch (outcome) {
              case "cut short" -> "thunder; went on next time";
              case "no show" -> "nobody at the door";
              default -> "";
            });
        text.append('\n');
        clock = left;
      }
    }
    return text.toString();
  }

  private List<Pet> pets(Client client) {
    return book.pets().stream().filter(pet -> pet.clientId().equals(client.id())).toList();
  }

  private int minutes(Client client, LocalDate date, double today) {
    Groomer groomer = book.business().groomers().get(0);
    StopQuestions questions = new StopQuestions(read.tables(), book.business());
    GroomEstimator estimator = new GroomEstimator(read.tables());
    double minutes = 0;
    for (Pet pet : pets(client)) {
      GroomQuestion question =
          questions.byLook(
              groomer,
              new BookedPet(pet.id(), List.of(), CoatState.GOOD, false),
              pet,
              date,
              Optional.empty());
      double own = factors.computeIfAbsent(pet.id(), id -> Math.exp(0.18 * random.nextGaussian()));
      double noise = Math.exp(0.13 * random.nextGaussian());
      minutes += 1.10 * estimator.table(question).minutes() * own * noise * today;
    }
    return (int) Math.round(minutes) + 7 * (pets(client).size() - 1);
  }

  private static String time(int minutes) {
    return "%02d:%02d".formatted(minutes / 60, minutes % 60);
  }
}
