package dev.dogleg.cli.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.CertificateAudit;
import dev.dogleg.audit.ProofAudit;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.CertificateCheck;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.plan.week.WeekPlanner.Solved;
import dev.dogleg.plan.week.WeekProgress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestReporter;
import org.junit.jupiter.api.io.TempDir;

/**
 * A planner that errs: whatever it answers goes through the audit, and what the audit does not pass
 * is not written ({@code docs/WEEK.md}, "Proof"; {@code docs/FINDINGS.md}).
 */
class FalseProofTest {
  private static final WeekProgress QUIET = WeekProgress.NONE;
  private static final String DEMO = TestRun.ROOT.resolve("demo-data").toString();
  private static final Path FULL =
      TestRun.ROOT.resolve("router-cli/src/test/golden/week-full/book");

  /** A full week of two days and seven bookings: one is left out, so its proof has two searches. */
  private static WeekRequest fullRequest;

  /** What the planner answers to it. */
  private static Solved full;

  @TempDir Path temp;

  private int runs;

  private Path out() {
    return temp.resolve("out" + runs);
  }

  /** A run on the full week, which is planned once; the same book asks the same each time. */
  private TestRun full(UnaryOperator<Solved> spoiled) {
    return run(
        request -> {
          if (full == null) {
            full = WeekPlanner.certified(request, QUIET, () -> false);
            fullRequest = request;
          }
          return spoiled.apply(full);
        },
        FULL.toString(),
        "--days",
        "2",
        "--map",
        TestRun.MAP.toString());
  }

  /** A run whose planner is another. */
  private TestRun run(Function<WeekRequest, Solved> answer, String... book) {
    runs++;
    List<String> args = new ArrayList<>(List.of("plan"));
    args.addAll(List.of(book));
    args.addAll(List.of("--out", out().toString()));
    return TestRun.planned(
        (request, progress, stop) -> answer.apply(request), args.toArray(String[]::new));
  }

  private void refused(TestRun run, String code) {
    assertEquals(1, run.exit(), run.out() + run.err());
    assertTrue(
        run.err().contains("its audit does not pass the plan. Nothing was written."), run.err());
    assertTrue(run.err().contains("[" + code + "]"), run.err());
    assertEquals("", run.out());
    assertFalse(Files.exists(out()), "nothing is written");
  }

  private void written(TestRun run, int exit) throws IOException {
    assertEquals(exit, run.exit(), run.out() + run.err());
    assertTrue(Files.readString(out().resolve("plan.csv")).contains("plan format 1"));
  }

  @Test
  void anAnswerLeftAsItIsPasses() throws IOException {
    TestRun run = full(solved -> solved);
    written(run, 4);
    assertTrue(run.out().contains("No plan can beat this."), run.out());
    assertTrue(run.out().contains("every way to fill a day was looked at"), run.out());
    assertEquals(2, full.certificate().searches().size());
  }

  @Test
  void boundsAboveThePlanAreRefused() {
    refused(
        full(
            solved ->
                Spoiled.proof(
                    solved,
                    proof ->
                        new Proof(
                            proof.kind(),
                            proof.leftOutBound(),
                            proof.costBound() + 1,
                            proof.steps()))),
        "proof-cost");
    refused(
        full(
            solved ->
                Spoiled.proof(
                    solved,
                    proof ->
                        new Proof(
                            proof.kind(),
                            proof.leftOutBound() + 1,
                            proof.costBound(),
                            proof.steps()))),
        "proof-left-out");
  }

  @Test
  void aChangedPriceIsRefused() {
    refused(
        full(solved -> Spoiled.bound(solved, 1, 1, bound -> Spoiled.cover(bound, 2, 1))),
        "certificate-sum");
    refused(
        full(
            solved ->
                Spoiled.bound(
                    solved,
                    1,
                    1,
                    bound -> {
                      // More than leaving it out pays, whichever prices the LP came to.
                      long more = bound.count() + 1;
                      return Spoiled.sum(Spoiled.cover(bound, 2, more), more);
                    })),
        "certificate-price");
  }

  /** A sixtieth is enough: all else of the certificate is as it should be. */
  @Test
  void aLeastReducedCostThatIsTooHighIsRefused() {
    for (int kind = 0; kind < 2; kind++) {
      int here = kind;
      refused(
          full(
              solved ->
                  Spoiled.bound(
                      solved,
                      1,
                      1,
                      bound -> Spoiled.least(bound, here, WeekCertificate.COST_PARTS, 1))),
          "certificate-least");
    }
  }

  @Test
  void aCountOfWhatIsLeftOutThatIsTooHighIsRefused() {
    refused(
        full(
            solved ->
                Spoiled.bound(
                    solved,
                    0,
                    0,
                    bound -> Spoiled.least(bound, 0, WeekCertificate.COUNT_PARTS, 1))),
        "certificate-least");
    refused(
        full(solved -> Spoiled.searches(solved, List.of(solved.certificate().searches().get(1)))),
        "certificate-open");
    refused(
        full(solved -> Spoiled.searches(solved, List.of(solved.certificate().searches().get(0)))),
        "certificate-open");
  }

  @Test
  void aMissingBranchIsRefused() throws IOException {
    UnaryOperator<Solved> split =
        solved -> {
          List<Search> searches = new ArrayList<>(solved.certificate().searches());
          searches.set(1, Spoiled.split(searches.get(1), solved.certificate().bookingIds().get(0)));
          return Spoiled.searches(solved, searches);
        };
    written(full(split), 4);
    for (int gone = 1; gone <= 2; gone++) {
      int here = gone;
      refused(
          full(
              solved -> {
                List<Search> searches =
                    new ArrayList<>(split.apply(solved).certificate().searches());
                Search whole = searches.get(1);
                List<WeekCertificate.Part> fewer = new ArrayList<>(whole.parts());
                fewer.remove(here);
                searches.set(1, new Search(whole.limit(), fewer));
                return Spoiled.searches(solved, searches);
              }),
          "certificate-open");
    }
  }

  @Test
  void aProofWithoutACertificateIsRefused() {
    refused(full(s -> new Solved(s.plan(), WeekCertificate.NONE)), "certificate-missing");
  }

  @Test
  void aPlanWhoseTimeIsBrokenIsRefused() {
    refused(
        full(
            solved ->
                Spoiled.firstVisit(
                    solved,
                    stop ->
                        new PlannedStop(
                            stop.kind(),
                            stop.place(),
                            stop.visitId(),
                            stop.arriveSeconds() - 60,
                            stop.startSeconds() - 60,
                            stop.leaveSeconds() - 60,
                            stop.driveSeconds(),
                            stop.driveMetres(),
                            stop.waitSeconds(),
                            stop.spareSeconds()))),
        "arrival");
    refused(
        full(
            solved ->
                Spoiled.firstVisit(
                    solved,
                    stop ->
                        new PlannedStop(
                            stop.kind(),
                            stop.place(),
                            "nobody",
                            stop.arriveSeconds(),
                            stop.startSeconds(),
                            stop.leaveSeconds(),
                            stop.driveSeconds(),
                            stop.driveMetres(),
                            stop.waitSeconds(),
                            stop.spareSeconds()))),
        "unknown-visit");
  }

  /** A sound plan that is not said to be the best is written, and not said to be. */
  @Test
  void whatIsNotProvenIsWrittenWithoutTheWord() throws IOException {
    TestRun run =
        full(
            solved ->
                new Solved(
                    Spoiled.proof(
                            solved, proof -> new Proof(Proof.Kind.WORK_LIMIT, 0, 0, proof.steps()))
                        .plan(),
                    WeekCertificate.NONE));
    written(run, 4);
    assertFalse(run.out().contains("No plan can beat this."), run.out());
    assertFalse(run.out().contains("second time"), run.out());
  }

  /** Yesterday's files stay as they were. */
  @Test
  void aRefusedPlanLeavesTheFolderAsItWas() throws IOException {
    Path folder = Files.createDirectories(temp.resolve("out" + (runs + 1)));
    Files.writeString(folder.resolve("no-room.csv"), "yesterday");
    TestRun run = full(s -> new Solved(s.plan(), WeekCertificate.NONE));
    assertEquals(1, run.exit());
    assertEquals("yesterday", Files.readString(folder.resolve("no-room.csv")));
    try (var files = Files.list(folder)) {
      assertEquals(1, files.count());
    }
  }

  /**
   * A sound plan that is not the best, with a certificate that is true but for fuller days: the
   * best plan of the demo week where one client must come on one day.
   */
  @Test
  void aDearerPlanOfAWholeWeekIsRefused() {
    List<String> dearer = new ArrayList<>();
    for (int keep = 0; keep < 2; keep++) {
      int kept = keep;
      boolean[] worse = new boolean[1];
      ProofAudit[] little = new ProofAudit[1];
      TestRun run =
          run(
              request -> {
                WeekRequest other =
                    narrowed(request, "ada-fenwick.biscuit@2027-03-01..2027-03-05", kept);
                Solved best = WeekPlanner.certified(request, QUIET, () -> false);
                Solved narrow = WeekPlanner.certified(other, QUIET, () -> false);
                worse[0] = narrow.plan().costSixtieths() > best.plan().costSixtieths();
                little[0] =
                    CertificateAudit.check(request, narrow.plan(), narrow.certificate(), 20_000);
                return narrow;
              },
              DEMO,
              "--days",
              "5");
      if (worse[0]) {
        refused(run, "certificate-least");
        assertEquals(List.of(), little[0].findings(), "days of few visits do not show it");
        assertTrue(little[0].setSize() >= 1, little[0].toString());
        dearer.add(run.err());
      }
    }
    assertEquals(1, dearer.size(), "on one of its two days that client makes a dearer week");
  }

  /** A day alone has no certificate: the audit looks for a better one itself. */
  @Test
  void aDearerPlanOfOneDayIsRefused() throws IOException {
    TestRun sound = run(request -> WeekPlanner.certified(request, QUIET, () -> false), DEMO);
    written(sound, 0);
    assertTrue(sound.out().contains("every way to fill a day was looked at"), sound.out());
    TestRun run =
        run(
            request -> {
              Solved best = WeekPlanner.certified(request, QUIET, () -> false);
              String last = "";
              for (PlannedStop stop : best.plan().days().get(0).stops()) {
                last = stop.kind() == PlannedStop.Kind.VISIT ? stop.visitId() : last;
              }
              return WeekPlanner.certified(leading(request, last), QUIET, () -> false);
            },
            DEMO);
    refused(run, "not-best");
  }

  /** The same request, a booking having to come first on its day. */
  private static WeekRequest leading(WeekRequest request, String id) {
    List<WeekBooking> bookings = new ArrayList<>();
    for (WeekBooking booking : request.bookings()) {
      List<DayChoice> choices = new ArrayList<>();
      for (DayChoice choice : booking.choices()) {
        choices.add(
            new DayChoice(
                choice.day(),
                choice.visit().first(booking.id().equals(id)),
                choice.extraSixtieths()));
      }
      bookings.add(
          new WeekBooking(booking.id(), booking.counted(), booking.leftOutSixtieths(), choices));
    }
    return new WeekRequest(
        unweighed(request.days()), bookings, request.prices(), request.seed(), request.effort());
  }

  /** Promises have no price: no proof of a plan that weighs odds is rechecked. */
  private static List<WeekDay> unweighed(List<WeekDay> days) {
    return days.stream()
        .map(
            day ->
                new WeekDay(
                    day.shift(),
                    day.travel(),
                    new DayTerms(day.terms().rules(), day.terms().water(), day.terms().balance())))
        .toList();
  }

  /** The same request, a booking having one of its choices alone. */
  private static WeekRequest narrowed(WeekRequest request, String id, int choice) {
    List<WeekBooking> bookings = new ArrayList<>();
    for (WeekBooking booking : request.bookings()) {
      List<DayChoice> choices = booking.choices();
      bookings.add(
          booking.id().equals(id)
              ? new WeekBooking(
                  id, booking.counted(), booking.leftOutSixtieths(), List.of(choices.get(choice)))
              : booking);
    }
    return new WeekRequest(
        unweighed(request.days()), bookings, request.prices(), request.seed(), request.effort());
  }

  /**
   * Fifty certificates, each changed in one thing at random. One that the audit passes is harmless:
   * an oracle that knows the cost of every set says that it still proves the plan.
   */
  @Test
  void drawnChangesAreRefusedOrHarmless(TestReporter reporter) throws IOException {
    List<String> wrong = new ArrayList<>();
    List<String> harmless = new ArrayList<>();
    for (int seed = 1; seed <= 50; seed++) {
      StringBuilder what = new StringBuilder("seed " + seed + ": ");
      SplittableRandom random = new SplittableRandom(seed);
      Solved[] answered = new Solved[1];
      TestRun run =
          full(
              solved -> {
                answered[0] = Spoiled.drawn(solved, random, what);
                return answered[0];
              });
      boolean files = Files.exists(out());
      if (run.exit() == 1) {
        if (files || !run.out().isEmpty() || !run.err().contains("[certificate-")) {
          wrong.add(what + " was refused, and something was written or not said: " + run);
        }
      } else {
        List<String> open =
            CertificateCheck.check(fullRequest, answered[0].plan(), answered[0].certificate());
        if (!files || run.exit() != 4 || !open.isEmpty()) {
          wrong.add(what + " was passed, and " + open + ": " + run);
        }
        harmless.add(what.toString());
      }
    }
    reporter.publishEntry("harmless", String.join("; ", harmless));
    assertEquals(List.of(), wrong);
    int refused = 50 - harmless.size();
    assertTrue(refused >= 30 && harmless.size() >= 2, refused + " refused; harmless: " + harmless);
  }
}
