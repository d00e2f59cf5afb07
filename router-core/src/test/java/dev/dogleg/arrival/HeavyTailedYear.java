package dev.dogleg.arrival;

import dev.dogleg.groom.GroomEstimator;
import dev.dogleg.groom.GroomQuestion;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.Learned;
import dev.dogleg.groom.ServiceTime;
import dev.dogleg.groom.StopQuestions;
import dev.dogleg.groom.learn.LearnSettings;
import dev.dogleg.groom.learn.LoggedDrive;
import dev.dogleg.groom.learn.LoggedVisit;
import dev.dogleg.groom.learn.SyntheticLog;
import dev.dogleg.groom.learn.Truth;
import dev.dogleg.groom.learn.VisitLearner;
import dev.dogleg.model.BookedPet;
import dev.dogleg.model.Pet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.AhrensDieterMarsagliaTsangGammaSampler;
import org.apache.commons.rng.sampling.distribution.ContinuousSampler;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;
import org.apache.commons.rng.simple.RandomSource;

/**
 * A made-up groomer whose days are not those of the model: pets differ evenly, visits have the
 * tails of a t distribution with five degrees of freedom and now and then a surprise of half an
 * hour, one day in seven is a bad one, drives are skewed like a gamma distribution. A year of it is
 * logged and learned from; a fifth of the pets is in no log.
 */
final class HeavyTailedYear {
  private static final double PACE = 1.08;
  private static final double VISIT_SPREAD = 0.13;
  private static final LocalDate UNTIL = SyntheticLog.UNTIL;

  /** A day on which most pets are due. */
  private static final LocalDate NEXT = UNTIL.plusWeeks(3);

  private final UniformRandomProvider random;
  private final ContinuousSampler normal;
  private final ContinuousSampler gamma;
  private final SyntheticLog people;
  private final StopQuestions questions;
  private final GroomEstimator truthTable;
  private final Map<String, Double> effects = new HashMap<>();
  private final Map<String, BookedPet> booked = new TreeMap<>();
  private final Map<String, LocalDate> last = new HashMap<>();
  private GroomTables learnedTables;

  private HeavyTailedYear(long seed) {
    random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
    normal = ZigguratSampler.NormalizedGaussian.of(random);
    gamma = AhrensDieterMarsagliaTsangGammaSampler.of(random, 4, 0.05);
    people = SyntheticLog.of(seed, Truth.PLAIN, 120, 5);
    questions = new StopQuestions(people.tables(), people.book().business());
    truthTable = new GroomEstimator(people.tables());
  }

  static HeavyTailedYear of(long seed) {
    HeavyTailedYear year = new HeavyTailedYear(seed);
    year.learn();
    return year;
  }

  /** What a day has in common. */
  record DayMood(double pace, double traffic) {}

  DayMood mood() {
    double pace = random.nextInt(7) == 0 ? 0.10 + 0.05 * normal.sample() : 0.04 * normal.sample();
    return new DayMood(Math.exp(pace), Math.exp(0.08 * normal.sample()));
  }

  /** Seconds that a drive really takes. */
  double driven(double plannedSeconds, DayMood mood) {
    return plannedSeconds * mood.traffic() * (0.80 + gamma.sample());
  }

  /** Seconds that a groom really takes on a day after the log. */
  double groomed(String petId, DayMood mood) {
    return groomed(petId, NEXT, mood);
  }

  private double groomed(String petId, LocalDate date, DayMood mood) {
    double chi = 0;
    for (int k = 0; k < 5; k++) {
      chi += Math.pow(normal.sample(), 2);
    }
    // A t variable of five degrees has variance 5/3.
    double tail = normal.sample() / Math.sqrt(chi / 5) / Math.sqrt(5.0 / 3);
    double plain = truthTable.estimate(question(petId, date)).time().medianSeconds();
    double own = effects.computeIfAbsent(petId, id -> 0.6 * random.nextDouble() - 0.3);
    double surprise = random.nextInt(100) == 0 ? 60 * (25 + 20 * random.nextDouble()) : 0;
    return plain * PACE * Math.exp(own + VISIT_SPREAD * tail) * mood.pace() + surprise;
  }

  /** Groom and stop minutes of a pet as learned. */
  ServiceTime estimate(String petId) {
    return new GroomEstimator(learnedTables).estimate(question(petId, NEXT)).time();
  }

  Learned learned() {
    return learnedTables.learned();
  }

  /** Ids of pets groomed alone; those whose number divides by five are in no log. */
  List<String> pets() {
    return new ArrayList<>(booked.keySet());
  }

  int nextInt(int bound) {
    return random.nextInt(bound);
  }

  private GroomQuestion question(String petId, LocalDate date) {
    Pet pet = people.book().petsById().get(petId);
    Optional<LocalDate> before = Optional.ofNullable(last.get(petId));
    return questions.byLook(
        people.book().business().groomers().get(0), booked.get(petId), pet, date, before);
  }

  private void learn() {
    List<LoggedVisit> log = new ArrayList<>();
    Map<LocalDate, DayMood> moods = new HashMap<>();
    for (LoggedVisit visit : people.visits()) {
      BookedPet pet = visit.pets().get(0);
      if (visit.pets().size() > 1) {
        continue;
      }
      booked.put(pet.petId(), pet);
      if (isNew(pet.petId())) {
        continue;
      }
      DayMood mood = moods.computeIfAbsent(visit.date(), date -> mood());
      int seconds =
          (int) (60 * Math.max(3, Math.round(groomed(pet.petId(), visit.date(), mood) / 60)));
      last.put(pet.petId(), visit.date());
      LoggedDrive planned = visit.drive().orElseThrow();
      int driven = (int) Math.max(60, 60 * Math.round(driven(planned.plannedSeconds(), mood) / 60));
      log.add(
          new LoggedVisit(
              visit.where(),
              visit.date(),
              visit.groomerId(),
              visit.pets(),
              seconds,
              visit.outcome(),
              Optional.of(
                  new LoggedDrive(planned.plannedSeconds(), driven, planned.band(), Map.of()))));
    }
    learnedTables =
        people
            .tables()
            .with(
                new VisitLearner(people.tables(), people.book(), LearnSettings.USUAL)
                    .learn(log, UNTIL)
                    .learned());
  }

  static boolean isNew(String petId) {
    return Integer.parseInt(petId.replaceAll("\\D+(\\d+)\\D+.*", "$1")) % 5 == 0;
  }
}
