package dev.dogleg.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.audit.WeekAudit;
import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.DayPlanner;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.plan.week.WeekProgress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/**
 * Seeded questions about planned weeks, each answered once more from scratch.
 *
 * <p>{@code -Ddogleg.fit.weeks=20 -Ddogleg.fit.questions=50 -Ddogleg.fit.otherDays=5} asks a
 * thousand, tier B of every fifth too. In the build tier B is held against an oracle by {@link
 * SmallFitTest}.
 */
class FitQuestionsTest {
  private static final int WEEKS = Integer.getInteger("dogleg.fit.weeks", 1);
  private static final int THREADS = 4;
  private static final int QUESTIONS = Integer.getInteger("dogleg.fit.questions", 12);

  /** Every so many questions tier B is planned from scratch too; 0 for never: seconds each. */
  private static final int OTHER_DAYS_EVERY = Integer.getInteger("dogleg.fit.otherDays", 0);

  @Test
  void answersAreThoseFromScratch() {
    int fits = 0;
    int none = 0;
    for (int seed = 1; seed <= WEEKS; seed++) {
      QuestionWeeks questions = QuestionWeeks.of(seed, QUESTIONS);
      FitWeek prepared = questions.prepared().readyForOtherDays(FitQuestion.USUAL_EFFORT);
      for (int q = 0; q < QUESTIONS; q++) {
        String name = "seed " + seed + " question " + q;
        WeekBooking newcomer = questions.newcomers().get(q);
        OtherDays otherDays =
            OTHER_DAYS_EVERY > 0 && q % OTHER_DAYS_EVERY == 0 ? OtherDays.ALWAYS : OtherDays.NEVER;
        FitAnswer answer =
            prepared.ask(
                new FitQuestion(newcomer, List.of(), 5, otherDays, FitQuestion.USUAL_EFFORT));
        newcomer.choices().forEach(choice -> sameDay(name, questions, choice, answer));
        answer.otherDays().ifPresent(week -> otherDays(name, questions, newcomer, week));
        fits += answer.offers().isEmpty() ? 0 : 1;
        none += answer.offers().isEmpty() ? 1 : 0;
      }
    }
    System.out.println(fits + " questions fit on a day, " + none + " do not");
    assertTrue(fits > 0 && none > 0, fits + " fit, " + none + " do not");
  }

  @Test
  void manyThreadsGetTheAnswersOfOne() throws Exception {
    QuestionWeeks questions = QuestionWeeks.of(WEEKS + 1, QUESTIONS);
    FitWeek alone = questions.prepared().readyForOtherDays(FitQuestion.USUAL_EFFORT);
    List<FitAnswer> expected = new ArrayList<>();
    for (int q = 0; q < QUESTIONS; q++) {
      expected.add(alone.ask(question(questions, q)));
    }
    FitWeek shared = questions.prepared().readyForOtherDays(FitQuestion.USUAL_EFFORT);
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      List<Callable<List<FitAnswer>>> askers = new ArrayList<>();
      for (int thread = 0; thread < THREADS; thread++) {
        // Each asks all, beginning with another: so they meet in what the week remembers.
        int first = thread * QUESTIONS / THREADS;
        askers.add(
            () ->
                IntStream.range(0, QUESTIONS)
                    .map(q -> (first + q) % QUESTIONS)
                    .mapToObj(q -> shared.ask(question(questions, q)))
                    .toList());
      }
      List<Future<List<FitAnswer>>> answers = threads.invokeAll(askers);
      for (int thread = 0; thread < THREADS; thread++) {
        List<FitAnswer> told = answers.get(thread).get();
        for (int q = 0; q < QUESTIONS; q++) {
          int asked = (thread * QUESTIONS / THREADS + q) % QUESTIONS;
          assertEquals(expected.get(asked), told.get(q), "thread " + thread + " question " + asked);
        }
      }
    } finally {
      threads.shutdownNow();
    }
  }

  /** Every sixth asks for other days too. */
  private static FitQuestion question(QuestionWeeks questions, int q) {
    return FitQuestion.of(questions.newcomers().get(q))
        .withOtherDays(q % 6 == 0 ? OtherDays.ALWAYS : OtherDays.NEVER);
  }

  private static void sameDay(
      String name, QuestionWeeks questions, DayChoice choice, FitAnswer answer) {
    DayRequest forced =
        ForcedDays.day(questions.week(), questions.placed(), choice.day(), List.of(choice.visit()));
    Optional<DayPlan> best = best(forced);
    Optional<Offer> offer =
        answer.offers().stream().filter(one -> one.day() == choice.day()).findFirst();
    assertEquals(best.isPresent(), offer.isPresent(), name + " day " + choice.day());
    if (offer.isEmpty()) {
      assertTrue(
          answer.noDays().stream().anyMatch(no -> no.day() == choice.day() && no.proven()), name);
      return;
    }
    long before =
        best(ForcedDays.day(questions.week(), questions.placed(), choice.day(), List.of()))
            .orElseThrow()
            .costSixtieths();
    Offer one = offer.get();
    assertEquals(best.get().costSixtieths() - before, one.extraCostSixtieths(), name);
    assertTrue(one.proven(), name);
    // Told times are windows of the request: none is broken where the audit finds nothing.
    assertEquals(List.of(), DayAudit.check(forced, one.after()), name);
    int arrive = one.newcomer().arriveSeconds();
    assertTrue(one.toTell().arriveWithin().fromSeconds() <= arrive, name);
    assertTrue(arrive <= one.toTell().arriveWithin().toSeconds(), name);
  }

  /** The day planner from scratch, with everybody booked; empty where somebody is left out. */
  private static Optional<DayPlan> best(DayRequest request) {
    DayPlan plan = DayPlanner.plan(request);
    assertEquals(Proof.Kind.PROVEN_BEST, plan.proof().kind());
    return Optional.of(plan).filter(one -> one.leftOutBooked() == 0);
  }

  private static void otherDays(
      String name, QuestionWeeks questions, WeekBooking newcomer, WeekOffer offer) {
    WeekRequest forced =
        ForcedDays.week(
            questions.week(),
            questions.placed(),
            questions.told(),
            newcomer,
            WeekPlanner.USUAL_EFFORT);
    WeekPlan plan = WeekPlanner.solve(forced, WeekProgress.NONE, () -> false).plan();
    if (offer.proven()) {
      boolean fits = plan.leftOutCounted() == 0;
      assertEquals(fits, offer.verdict() == FitAnswer.Verdict.FITS, name);
      assertEquals(fits ? plan.costSixtieths() : 0, fits ? offer.plan().costSixtieths() : 0, name);
    }
    assertEquals(List.of(), WeekAudit.check(forced, offer.plan()), name);
  }
}
