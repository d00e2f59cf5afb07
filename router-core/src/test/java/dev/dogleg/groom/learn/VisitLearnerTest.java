package dev.dogleg.groom.learn;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.groom.BasisLine;
import dev.dogleg.groom.GroomEstimate;
import dev.dogleg.groom.GroomEstimator;
import dev.dogleg.groom.GroomQuestion;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.groom.Learned;
import dev.dogleg.groom.LearnedKind;
import dev.dogleg.groom.LearnedRow;
import dev.dogleg.model.Pet;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is learned from logs whose truth is known. */
class VisitLearnerTest {
  private static final int CLIENTS = 110;

  private static VisitLearner learner(SyntheticLog log) {
    return new VisitLearner(log.tables(), log.book(), LearnSettings.USUAL);
  }

  private static Lesson learn(SyntheticLog log, List<LoggedVisit> visits) {
    return learner(log).learn(visits, SyntheticLog.UNTIL);
  }

  /** Scores of some logs, each asked in one way, put together. */
  private static HeldBackScore together(
      Truth truth,
      int seeds,
      BiFunction<VisitLearner, List<LoggedVisit>, Optional<HeldBackScore>> ask) {
    int visits = 0;
    double before = 0;
    double after = 0;
    int insideBefore = 0;
    int insideAfter = 0;
    for (long seed = 1; seed <= seeds; seed++) {
      SyntheticLog log = SyntheticLog.of(seed, truth, CLIENTS, 4);
      HeldBackScore one = ask.apply(learner(log), log.visits()).orElseThrow();
      visits += one.visits();
      before += one.errorBeforeMinutes() * one.visits();
      after += one.errorAfterMinutes() * one.visits();
      insideBefore += one.insideBefore();
      insideAfter += one.insideAfter();
    }
    return new HeldBackScore(visits, before / visits, after / visits, insideBefore, insideAfter);
  }

  private static HeldBackScore known(Truth truth, int seeds) {
    return together(
        truth, seeds, (learner, visits) -> HeldBack.knownPets(learner, visits, SyntheticLog.UNTIL));
  }

  private static double share(HeldBackScore score) {
    return score.insideAfter() / (double) score.visits();
  }

  @Test
  void afterThreeVisitsAPetTheErrorIsAtMostSixTenthsAndEightOfTenLieInside() {
    HeldBackScore score = known(Truth.PLAIN, 6);
    String said = "seeds 1..6: " + score;
    assertTrue(score.visits() >= 600, said);
    assertTrue(score.errorAfterMinutes() <= 0.60 * score.errorBeforeMinutes(), said);
    assertEquals(0.80, share(score), 0.03, said);
  }

  @Test
  void aSteadyGroomerAndAWildOneAreCoveredAsWell() {
    HeldBackScore steady = known(Truth.STEADY, 3);
    assertTrue(steady.errorAfterMinutes() <= 0.60 * steady.errorBeforeMinutes(), "" + steady);
    assertEquals(0.80, share(steady), 0.04, "seeds 1..3: " + steady);
    HeldBackScore wild = known(Truth.WILD, 3);
    assertTrue(wild.errorAfterMinutes() < wild.errorBeforeMinutes(), "" + wild);
    assertEquals(0.80, share(wild), 0.04, "seeds 1..3: " + wild);
  }

  @Test
  void newPetsAreCoveredToo() {
    HeldBackScore score =
        together(
            Truth.PLAIN,
            2,
            (learner, visits) -> HeldBack.newPets(learner, visits, SyntheticLog.UNTIL));
    assertTrue(score.errorAfterMinutes() < score.errorBeforeMinutes(), "" + score);
    assertEquals(0.80, share(score), 0.06, "seeds 1..2: " + score);
  }

  @ParameterizedTest
  @ValueSource(longs = {11, 12})
  void theTruthIsFoundAgain(long seed) {
    SyntheticLog log = SyntheticLog.of(seed, Truth.STEADY, CLIENTS, 8);
    Lesson lesson = learn(log, log.visits());
    Learned learned = lesson.learned();
    String said = "seed " + seed;
    assertEquals(100, learned.spreadPermille(LearnedKind.DAY).orElseThrow(), 25, said);
    assertEquals(100, learned.spreadPermille(LearnedKind.DRIVE_LEG).orElseThrow(), 25, said);
    LearnedRow visit = learned.find(LearnedKind.SPREAD_KNOWN, "").orElseThrow();
    assertEquals(700, visit.factorPermille(), 90, said);
    assertEquals(1.05, learned.driveFactor("midday", "main"), 0.03, said);
    assertEquals(1.00, learned.driveFactor("morning peak", "main"), 0.03, said);
    // A pet's whole factor is found to some six parts of a hundred on the mean: noise of about 0.7
    // x 0.16 and a day of 0.10, with eight visits of which the oldest count half, leave a spread of
    // 0.15 / sqrt(5.5) = 0.064.
    GroomEstimator plain = new GroomEstimator(log.tables());
    GroomEstimator after = new GroomEstimator(log.tables().with(learned));
    double sum = 0;
    int count = 0;
    for (AskedVisit asked : AskedVisit.all(log.visits(), log.tables(), log.book())) {
      for (GroomQuestion groom : asked.grooms()) {
        double factor =
            after.estimate(groom).time().medianSeconds()
                / plain.estimate(groom).time().medianSeconds();
        sum += Math.abs(Math.log(factor / log.factor(groom)));
        count++;
      }
    }
    assertTrue(sum / count < 0.075, said + ": " + sum / count);
  }

  @Test
  void withoutALogEveryEstimateIsTheTables() {
    SyntheticLog log = SyntheticLog.of(21, Truth.PLAIN, 30, 2);
    Lesson lesson = learn(log, List.of());
    assertTrue(lesson.learned().isEmpty());
    assertEquals(Optional.empty(), lesson.drives());
    GroomEstimator plain = new GroomEstimator(log.tables());
    GroomEstimator after = new GroomEstimator(log.tables().with(lesson.learned()));
    for (AskedVisit asked : AskedVisit.all(log.visits(), log.tables(), log.book())) {
      asked.grooms().forEach(groom -> assertEquals(plain.estimate(groom), after.estimate(groom)));
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {31, 32, 33, 34})
  void oneAbsurdRowChangesNothingVisible(long seed) {
    SyntheticLog log = SyntheticLog.of(seed, Truth.PLAIN, 60, 4);
    Lesson before = learn(log, log.visits());
    LoggedVisit model = log.visits().get((int) (100 + seed));
    // Seven hours on a day of its own, for a pet of the log.
    LoggedVisit absurd =
        new LoggedVisit(
            dev.dogleg.fault.Where.row("visits.csv", 9_999),
            model.date().plusDays(1),
            model.groomerId(),
            model.pets().subList(0, 1),
            25_200,
            VisitOutcome.DONE,
            Optional.empty());
    List<LoggedVisit> visits = new ArrayList<>(log.visits());
    visits.add(absurd);
    Lesson after = learn(log, visits);
    assertTrue(after.odd().stream().anyMatch(odd -> odd.visit().equals(absurd)), "seed " + seed);
    assertEquals(before.visits(), after.visits());
    GroomEstimator one = new GroomEstimator(log.tables().with(before.learned()));
    GroomEstimator other = new GroomEstimator(log.tables().with(after.learned()));
    for (AskedVisit asked : AskedVisit.all(log.visits(), log.tables(), log.book())) {
      for (GroomQuestion groom : asked.grooms()) {
        assertEquals(
            Math.round(one.estimate(groom).time().quantileSeconds(500) / 60.0),
            Math.round(other.estimate(groom).time().quantileSeconds(500) / 60.0),
            "seed " + seed + " " + groom.pet());
      }
    }
  }

  @Test
  void aThinLogChangesLittle() {
    SyntheticLog log = SyntheticLog.of(41, Truth.PLAIN, 60, 1);
    LoggedVisit only =
        log.visits().stream().filter(visit -> visit.pets().size() == 1).findFirst().orElseThrow();
    Lesson lesson = learn(log, List.of(only));
    for (LearnedRow row : lesson.learned().rows()) {
      if (row.kind() == LearnedKind.SPREAD_KNOWN || row.kind() == LearnedKind.SPREAD_NEW) {
        assertEquals(1_000, row.factorPermille(), 150, row.toString());
      }
    }
    GroomTables with = log.tables().with(lesson.learned());
    int same = 0;
    for (AskedVisit asked : AskedVisit.all(log.visits(), log.tables(), log.book())) {
      for (GroomQuestion groom : asked.grooms()) {
        double ratio =
            new GroomEstimator(with).estimate(groom).time().medianSeconds()
                / new GroomEstimator(log.tables()).estimate(groom).time().medianSeconds();
        boolean itself = groom.keys().petId().equals(only.pets().get(0).petId());
        assertEquals(1, ratio, itself ? 0.35 : 0.10, groom.pet());
        same += Math.abs(ratio - 1) < 0.06 ? 1 : 0;
      }
    }
    assertTrue(same > 40, "" + same);
  }

  @Test
  void recentVisitsWeighMore() {
    SyntheticLog log = SyntheticLog.of(51, Truth.PLAIN, 40, 6);
    Pet pet = log.book().pets().get(0);
    List<LoggedVisit> slower = new ArrayList<>();
    List<LoggedVisit> faster = new ArrayList<>();
    int at = 0;
    for (LoggedVisit visit : log.visits()) {
      boolean its = visit.has(pet.id());
      int seconds = its && ++at > 3 ? visit.groomSeconds() * 5 / 4 : visit.groomSeconds();
      slower.add(SyntheticLog.lasting(visit, seconds));
      boolean old = its && at <= 3;
      faster.add(
          SyntheticLog.lasting(visit, old ? visit.groomSeconds() * 5 / 4 : visit.groomSeconds()));
    }
    int recent = pet(learn(log, slower), pet).factorPermille();
    int past = pet(learn(log, faster), pet).factorPermille();
    assertTrue(recent > past, recent + " and " + past);
  }

  private static LearnedRow pet(Lesson lesson, Pet pet) {
    return lesson.learned().find(LearnedKind.PET, pet.id()).orElseThrow();
  }

  @Test
  void theOrderOfRowsDoesNotMatterAndTheSameLogGivesTheSameValues() {
    SyntheticLog log = SyntheticLog.of(61, Truth.PLAIN, 40, 3);
    List<LoggedVisit> turned = new ArrayList<>(log.visits());
    Collections.reverse(turned);
    assertEquals(learn(log, log.visits()).learned().rows(), learn(log, turned).learned().rows());
  }

  @Test
  void aCutShortVisitIsNotLearnedFromAndNeitherIsOneAfterTheLastDay() {
    SyntheticLog log = SyntheticLog.of(71, Truth.PLAIN, 30, 3);
    List<LoggedVisit> cut = new ArrayList<>();
    List<LoggedVisit> without = new ArrayList<>();
    for (int i = 0; i < log.visits().size(); i++) {
      LoggedVisit visit = log.visits().get(i);
      boolean last = i >= log.visits().size() - 5;
      if (!last) {
        cut.add(visit);
        without.add(visit);
      } else {
        cut.add(
            new LoggedVisit(
                visit.where(),
                visit.date(),
                visit.groomerId(),
                visit.pets(),
                300,
                VisitOutcome.CUT_SHORT,
                Optional.empty()));
      }
    }
    assertEquals(learn(log, without).learned().rows(), learn(log, cut).learned().rows());
    assertTrue(
        learner(log).learn(without, SyntheticLog.UNTIL.minusDays(2_000)).learned().isEmpty());
  }

  @Test
  void theBasisNamesTheVisits() {
    SyntheticLog log = SyntheticLog.of(81, Truth.PLAIN, 30, 5);
    GroomTables with = log.tables().with(learn(log, log.visits()).learned());
    AskedVisit asked = AskedVisit.all(log.visits(), log.tables(), log.book()).get(149);
    GroomEstimate estimate = new GroomEstimator(with).estimate(asked.grooms().get(0));
    List<String> lines = estimate.basis().stream().map(BasisLine::toString).toList();
    assertTrue(
        lines.stream()
            .anyMatch(
                line -> line.contains("itself: x ") && line.contains("(learned from 5 visits)")),
        "" + lines);
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("the groomer's pace: x ")));
  }

  @Test
  void drivesOfRoadClassesAreToldApart() {
    SyntheticLog log = SyntheticLog.of(91, Truth.STEADY, 60, 5);
    List<LoggedVisit> visits = new ArrayList<>();
    for (int i = 0; i < log.visits().size(); i++) {
      LoggedVisit visit = log.visits().get(i);
      int main = 200 + 37 * (i % 20);
      int street = 200 + 53 * ((i * 7) % 16);
      int driven = (int) Math.round(main * 1.30 + street * 1.00 + 10 * (i % 3 - 1));
      visits.add(
          new LoggedVisit(
              visit.where(),
              visit.date(),
              visit.groomerId(),
              visit.pets(),
              visit.groomSeconds(),
              visit.outcome(),
              Optional.of(
                  new LoggedDrive(
                      main + street, driven, "midday", Map.of("main", main, "street", street)))));
    }
    Learned learned = learn(log, visits).learned();
    assertEquals(1.30, learned.driveFactor("midday", "main"), 0.05);
    assertEquals(1.00, learned.driveFactor("midday", "street"), 0.05);
  }
}
