package dev.dogleg.groom.learn;

import dev.dogleg.groom.GroomEstimate;
import dev.dogleg.groom.GroomEstimator;
import dev.dogleg.groom.ServiceTime;
import dev.dogleg.model.BookedPet;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Says how well a log teaches, by asking for visits that were held back from learning. */
public final class HeldBack {
  private static final int FOLDS = 5;
  private static final int TENTH = 100;
  private static final int NINETIETH = 900;

  private final VisitLearner learner;
  private final List<LoggedVisit> visits;
  private final LocalDate until;

  private HeldBack(VisitLearner learner, List<LoggedVisit> visits, LocalDate until) {
    this.learner = learner;
    this.visits = visits;
    this.until = until;
  }

  /**
   * Known pets: the last visit of each pet that has an earlier one is held back.
   *
   * @param learner who learns
   * @param visits the log without visits that are known to be odd
   * @param until last day that counts
   * @return the score, or empty where no pet was groomed twice
   */
  public static Optional<HeldBackScore> knownPets(
      VisitLearner learner, List<LoggedVisit> visits, LocalDate until) {
    HeldBack held = new HeldBack(learner, past(visits, until), until);
    Map<String, LoggedVisit> last = new HashMap<>();
    Map<String, Integer> times = new HashMap<>();
    for (LoggedVisit visit : held.visits) {
      for (BookedPet pet : visit.pets()) {
        last.put(pet.petId(), visit);
        times.merge(pet.petId(), 1, Integer::sum);
      }
    }
    Set<LoggedVisit> asked = new LinkedHashSet<>();
    for (LoggedVisit visit : held.visits) {
      boolean hold =
          visit.pets().stream().anyMatch(pet -> last.get(pet.petId()).equals(visit))
              && visit.pets().stream().allMatch(pet -> times.get(pet.petId()) > 1);
      if (hold) {
        asked.add(visit);
      }
    }
    Sums sums = new Sums();
    held.ask(asked, asked, sums);
    return sums.score();
  }

  /**
   * New pets: every fifth pet with all its visits is held back, five times over, and its first
   * visit is asked for.
   *
   * @param learner who learns
   * @param visits the log without visits that are known to be odd
   * @param until last day that counts
   * @return the score, or empty where the log has fewer than five pets
   */
  public static Optional<HeldBackScore> newPets(
      VisitLearner learner, List<LoggedVisit> visits, LocalDate until) {
    HeldBack held = new HeldBack(learner, past(visits, until), until);
    Set<String> pets = new TreeSet<>();
    held.visits.forEach(visit -> visit.pets().forEach(pet -> pets.add(pet.petId())));
    List<String> inOrder = new ArrayList<>(pets);
    Sums sums = new Sums();
    for (int fold = 0; fold < FOLDS && inOrder.size() >= FOLDS; fold++) {
      Set<String> out = new HashSet<>();
      for (int p = fold; p < inOrder.size(); p += FOLDS) {
        out.add(inOrder.get(p));
      }
      Set<LoggedVisit> without = new LinkedHashSet<>();
      Set<LoggedVisit> first = new LinkedHashSet<>();
      Set<String> met = new HashSet<>();
      for (LoggedVisit visit : held.visits) {
        if (out.stream().anyMatch(visit::has)) {
          without.add(visit);
          boolean allNew =
              visit.pets().stream()
                  .allMatch(pet -> out.contains(pet.petId()) && !met.contains(pet.petId()));
          if (allNew) {
            first.add(visit);
          }
          visit.pets().forEach(pet -> met.add(pet.petId()));
        }
      }
      held.ask(first, without, sums);
    }
    return sums.score();
  }

  private static List<LoggedVisit> past(List<LoggedVisit> visits, LocalDate until) {
    return AskedVisit.inOrder(
        visits.stream()
            .filter(visit -> visit.outcome() == VisitOutcome.DONE)
            .filter(visit -> !visit.date().isAfter(until))
            .toList());
  }

  /** Learns from all but {@code without} and asks for {@code asked}. */
  private void ask(Set<LoggedVisit> asked, Set<LoggedVisit> without, Sums sums) {
    if (asked.isEmpty()) {
      return;
    }
    Lesson lesson =
        learner.learn(visits.stream().filter(v -> !without.contains(v)).toList(), until);
    GroomEstimator before = new GroomEstimator(learner.tables());
    GroomEstimator after = new GroomEstimator(learner.tables().with(lesson.learned()));
    for (AskedVisit visit : AskedVisit.all(visits, learner.tables(), learner.book())) {
      if (asked.contains(visit.visit())) {
        sums.add(visit.visit().groomSeconds(), time(before, visit), time(after, visit));
      }
    }
  }

  private static ServiceTime time(GroomEstimator estimator, AskedVisit visit) {
    return ServiceTime.sum(
            visit.grooms().stream().map(estimator::estimate).map(GroomEstimate::time).toList())
        .plusFixed(visit.furtherSeconds());
  }

  /** Errors and hits, added up. */
  private static final class Sums {
    private int visits;
    private double errorBefore;
    private double errorAfter;
    private int insideBefore;
    private int insideAfter;

    void add(int seconds, ServiceTime before, ServiceTime after) {
      visits++;
      errorBefore += Math.abs(seconds - before.quantileSeconds(500)) / 60.0;
      errorAfter += Math.abs(seconds - after.quantileSeconds(500)) / 60.0;
      insideBefore += inside(seconds, before);
      insideAfter += inside(seconds, after);
    }

    private static int inside(int seconds, ServiceTime time) {
      return seconds >= time.quantileSeconds(TENTH) && seconds <= time.quantileSeconds(NINETIETH)
          ? 1
          : 0;
    }

    Optional<HeldBackScore> score() {
      return visits == 0
          ? Optional.empty()
          : Optional.of(
              new HeldBackScore(
                  visits, errorBefore / visits, errorAfter / visits, insideBefore, insideAfter));
    }
  }
}
