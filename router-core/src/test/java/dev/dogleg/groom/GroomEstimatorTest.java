package dev.dogleg.groom;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Where;
import dev.dogleg.model.Behaviour;
import dev.dogleg.model.Coat;
import dev.dogleg.model.CoatState;
import dev.dogleg.model.SizeClass;
import dev.dogleg.model.Species;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Sums of single grooms and stops, in words. */
class GroomEstimatorTest {
  private static final GroomTables TABLES = StarterTables.load();
  private static final GroomEstimator ESTIMATOR = new GroomEstimator(TABLES);

  private static ServiceOrder order(Species species, String text) {
    Faults faults = new Faults();
    ServiceOrder order = TABLES.order(species, text, Where.NOWHERE, faults).orElseThrow();
    assertTrue(faults.isEmpty(), () -> faults.all().toString());
    return order;
  }

  private static GroomQuestion dog(SizeClass size, Coat coat, String service) {
    PetLook look =
        TABLES
            .look(Optional.of(Species.DOG), "")
            .withSize(Likely.sure(size))
            .withCoat(Likely.sure(coat));
    return GroomQuestion.of(look, order(Species.DOG, service));
  }

  private static int minutes(GroomQuestion question) {
    int seconds = ESTIMATOR.estimate(question).time().quantileSeconds(500);
    assertEquals(0, seconds % 60, "table sums are whole minutes");
    return seconds / 60;
  }

  private static final GroomQuestion SMALL_CURLY = dog(SizeClass.SMALL, Coat.CURLY, "full");

  /** Common practice, no source. */
  @Test
  void smallCurlyDogFullGroomBathAndDryIncludedIs75Minutes() {
    assertEquals(75, minutes(SMALL_CURLY));
    GroomQuestion weighed =
        GroomQuestion.of(
            TABLES.look(Optional.of(Species.DOG), "cockapoo").withSize(Sizes.weighed(7_300)),
            order(Species.DOG, "Full groom"));
    assertEquals(75, minutes(weighed));
    GroomEstimate estimate = ESTIMATOR.estimate(SMALL_CURLY);
    assertFalse(estimate.isGuess());
    assertTrue(estimate.basis().get(0).provenance().startsWith("common practice, no source"));
  }

  /** Five stops of 75 + 18, six legs of 15, lunch of 30: common practice, no source. */
  @Test
  void ordinaryDayOfFiveSmallCurlyDogsTakes585Minutes() {
    StopEstimate stop = ESTIMATOR.stop(StopQuestion.of(List.of(SMALL_CURLY)));
    assertEquals(18 * 60, stop.overheadSeconds());
    assertEquals((75 + 18) * 60, stop.plannedSeconds());
    int daySeconds = 5 * stop.plannedSeconds() + 6 * 15 * 60 + 30 * 60;
    assertEquals(585 * 60, daySeconds);
    assertEquals(25, TABLES.minutes(AddOnKind.SET_UP), "set-up stands apart and is not in a stop");
    assertEquals(35, TABLES.minutes(AddOnKind.CLOSE_DOWN));
  }

  @Test
  void modifiersAddUp() {
    assertEquals(75 + 25, minutes(SMALL_CURLY.withState(CoatState.MATTED)));
    assertEquals(
        75 + 10 + 15, minutes(SMALL_CURLY.withBehaviour(Behaviour.DIFFICULT).withSenior(true)));
    assertEquals(75 + 10, minutes(SMALL_CURLY.withHistory(VisitHistory.FIRST)));
    assertEquals(75, minutes(SMALL_CURLY.withWeeksSinceLast(6)), "six weeks are not over six");
    assertEquals(75 + 10, minutes(SMALL_CURLY.withWeeksSinceLast(7)));
    assertEquals(75 + 20, minutes(SMALL_CURLY.withWeeksSinceLast(13)), "20, not 10 and 20");
    assertEquals(75 + 5, minutes(dog(SizeClass.SMALL, Coat.CURLY, "full + teeth")));
    assertEquals(75, minutes(dog(SizeClass.SMALL, Coat.CURLY, "full, nail trim")), "nails are in");
    assertEquals(
        10, minutes(dog(SizeClass.SMALL, Coat.CURLY, "nails").withState(CoatState.MATTED)));
  }

  @Test
  void paceStretchesTableAndModifiers() {
    // (75 + 25) * 1.1 = 110
    assertEquals(110, minutes(SMALL_CURLY.withState(CoatState.MATTED).withPacePermille(1100)));
  }

  @Test
  void usualMinutesReplaceThePetAndOwnMinutesEverything() {
    GroomQuestion hard =
        SMALL_CURLY.withBehaviour(Behaviour.DIFFICULT).withPacePermille(1200).withWeeksSinceLast(4);
    assertEquals(60, minutes(hard.withUsualMinutes(60)));
    assertEquals(60 + 15, minutes(hard.withUsualMinutes(60).withState(CoatState.TANGLED)));
    assertEquals(
        50, minutes(hard.withUsualMinutes(60).withState(CoatState.PELTED).withOwnMinutes(50)));
  }

  @Test
  void knownPetHasTheNarrowerSpread() {
    // Table: 0.25 new, 0.14 known; 75 * exp(1.2816 * 0.14) = 89.7 and * exp(1.2816 * 0.25) = 103.3
    assertEquals(0.25, ESTIMATOR.estimate(SMALL_CURLY).time().logSpread(), 1e-12);
    ServiceTime known = ESTIMATOR.estimate(SMALL_CURLY.withWeeksSinceLast(5)).time();
    assertEquals(0.14, known.logSpread(), 1e-12);
    assertEquals(89.7 * 60, known.quantileSeconds(900), 6);
    assertEquals(103.3 * 60, ESTIMATOR.estimate(SMALL_CURLY).time().quantileSeconds(900), 6);
  }

  @Test
  void unknownPetIsAnsweredWidelyAndMarked() {
    GroomQuestion nothing =
        GroomQuestion.of(TABLES.look(Optional.empty(), ""), order(Species.DOG, "full"));
    GroomEstimate estimate = ESTIMATOR.estimate(nothing);
    assertTrue(estimate.isGuess());
    assertEquals(2, estimate.guesses().size(), "size and coat");
    assertTrue(estimate.time().logSpread() > 0.35, () -> "spread " + estimate.time().logSpread());
    assertEquals(90 * 60, estimate.time().quantileSeconds(500), "medium, long coat");
  }

  @Test
  void guessedVarietyWidensBySquareDistanceOnTheLogScale() {
    GroomQuestion poodle =
        GroomQuestion.of(TABLES.look(Optional.empty(), "Poodle"), order(Species.DOG, "full"));
    // full, curly: small 75 taken; may be 65, 100, 135. spread^2 = 0.25^2 + mean of ln(m / 75)^2
    double square = 0;
    for (double m : new double[] {75, 65, 100, 135}) {
      square += Math.pow(Math.log(m / 75), 2) / 4;
    }
    ServiceTime time = ESTIMATOR.estimate(poodle).time();
    assertEquals(75 * 60, time.quantileSeconds(500));
    assertEquals(Math.sqrt(0.0625 + square), time.logSpread(), 1e-12);
  }

  @Test
  void twoPetsAtOneDoorAreOneArrivalAndTwoGrooms() {
    StopEstimate one = ESTIMATOR.stop(StopQuestion.of(List.of(SMALL_CURLY)));
    StopEstimate two = ESTIMATOR.stop(StopQuestion.of(List.of(SMALL_CURLY, SMALL_CURLY)));
    assertEquals((18 + 7) * 60, two.overheadSeconds());
    assertEquals(2 * one.time().meanSeconds() - 18 * 60 + 7 * 60, two.time().meanSeconds(), 1e-6);
    // The median of a sum of lognormals lies above the sum of the medians, by the means' excess.
    assertTrue(two.plannedSeconds() > (75 + 75 + 25) * 60);
    assertTrue(two.plannedSeconds() < (75 + 75 + 25 + 5) * 60);
  }

  @Test
  void minutesGivenForTwoPetsTogetherAreKeptWhole() {
    GroomGroup together = new GroomGroup(List.of(SMALL_CURLY, SMALL_CURLY), OptionalInt.of(120));
    StopEstimate stop =
        ESTIMATOR.stop(
            new StopQuestion(
                List.of(together), OptionalInt.of(20 * 60), OptionalInt.of(5 * 60), 60));
    assertEquals((120 + 20 + 5 + 1) * 60, stop.plannedSeconds());
    assertEquals(2, stop.grooms().size());
  }

  @Test
  void everyNumberOfAStopSaysWhereItComesFrom() {
    StopEstimate stop =
        ESTIMATOR.stop(
            StopQuestion.of(
                List.of(
                    SMALL_CURLY
                        .withState(CoatState.PELTED)
                        .withBehaviour(Behaviour.DIFFICULT)
                        .withHistory(VisitHistory.FIRST)
                        .withSenior(true)
                        .withPacePermille(900))));
    double minutes = 0;
    double factor = 1;
    for (BasisLine line : stop.basis()) {
      assertFalse(line.provenance().isBlank(), line.what());
      if (line.unit() == BasisUnit.FACTOR_PERMILLE) {
        factor = line.amount() / 1000.0;
      } else if (line.unit() == BasisUnit.SECONDS && !line.what().startsWith("stop")) {
        minutes += line.amount() / 60.0;
      }
    }
    assertEquals((75 + 35 + 10 + 15 + 10) * 0.9, minutes * factor, 1e-9);
    assertEquals(Math.round(minutes * factor * 60) + 18 * 60, stop.plannedSeconds());
    assertTrue(stop.cautions().get(0).contains("shaved"));
    assertTrue(stop.cautions().get(0).contains("never pulled"));
  }

  @Test
  void dogsOnlyServiceIsRefusedForACat() {
    PetLook cat = TABLES.look(Optional.of(Species.CAT), "Persian");
    ServiceOrder strip = order(Species.DOG, "strip");
    assertThrows(IllegalArgumentException.class, () -> GroomQuestion.of(cat, strip));
    Faults faults = new Faults();
    assertTrue(TABLES.order(Species.CAT, "strip", Where.NOWHERE, faults).isEmpty());
    assertEquals("service-not-for-species", faults.all().get(0).code());
  }
}
