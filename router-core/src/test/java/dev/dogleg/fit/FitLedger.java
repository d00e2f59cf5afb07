package dev.dogleg.fit;

import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.plan.BenchmarkPage;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Times questions about newcomers and writes the table into docs/BENCHMARKS.md: some minutes. */
public final class FitLedger {
  private static final int WEEKS = Integer.getInteger("dogleg.fit.weeks", 20);
  private static final int QUESTIONS = Integer.getInteger("dogleg.fit.questions", 50);
  private static final int OTHER_DAYS = Integer.getInteger("dogleg.fit.otherDays", 10);
  private static final int THREADS = 2;

  private final List<Double> fits = new ArrayList<>();
  private final List<Double> noes = new ArrayList<>();
  private final List<Double> otherDays = new ArrayList<>();
  private final List<Double> otherDaysOnly = new ArrayList<>();
  private final List<Double> otherDaysWall = new ArrayList<>();
  private final List<Double> ready = new ArrayList<>();
  private final List<Double> scratch = new ArrayList<>();
  private int otherDaysProven;
  private int asked;
  private double wallSeconds;

  private FitLedger() {}

  /**
   * Runs.
   *
   * @param args none
   * @throws Exception where the page cannot be written
   */
  public static void main(String[] args) throws Exception {
    // The first week warms the machine up.
    new FitLedger().week(WEEKS + 1);
    FitLedger ledger = new FitLedger();
    for (int seed = 1; seed <= WEEKS; seed++) {
      ledger.week(seed);
    }
    NewAddressQuestions doors =
        new NewAddressQuestions(
            Path.of(System.getProperty("dogleg.root", ".")), FitLedger::ofAllThreads);
    for (int seed = 0; seed <= WEEKS; seed++) {
      doors.ask(seed, OTHER_DAYS, seed > 0);
    }
    String text = ledger.text(doors.millis());
    BenchmarkPage.write("Does one more fit", text);
    System.out.println(text);
  }

  private void week(int seed) throws Exception {
    QuestionWeeks questions = QuestionWeeks.of(seed, QUESTIONS);
    for (WeekBooking newcomer : questions.newcomers()) {
      questions.prepared().ask(FitQuestion.of(newcomer).withOtherDays(OtherDays.NEVER));
    }
    // Nobody of the second round was asked of this week before.
    FitWeek week = questions.prepared();
    for (WeekBooking newcomer : questions.newcomers()) {
      FitQuestion question = FitQuestion.of(newcomer).withOtherDays(OtherDays.NEVER);
      long start = ofThisThread();
      FitAnswer answer = week.ask(question);
      double millis = (ofThisThread() - start) / 1e6;
      (answer.offers().isEmpty() ? noes : fits).add(millis);
    }
    otherDays(questions);
    together(questions.prepared(), questions.newcomers());
  }

  private void otherDays(QuestionWeeks questions) {
    FitWeek prepared = questions.prepared();
    long start = ofAllThreads();
    FitWeek week = prepared.readyForOtherDays(FitQuestion.USUAL_EFFORT);
    ready.add((ofAllThreads() - start) / 1e6);
    for (int q = 0; q < OTHER_DAYS; q++) {
      FitQuestion question =
          FitQuestion.of(questions.newcomers().get(q)).withOtherDays(OtherDays.ALWAYS);
      long wall = System.nanoTime();
      start = ofAllThreads();
      FitAnswer answer = week.ask(question);
      double millis = (ofAllThreads() - start) / 1e6;
      otherDaysWall.add((System.nanoTime() - wall) / 1e6);
      otherDays.add(millis);
      if (answer.offers().isEmpty()) {
        otherDaysOnly.add(millis);
      }
      otherDaysProven += answer.otherDays().orElseThrow().proven() ? 1 : 0;
    }
    start = ofAllThreads();
    prepared.ask(FitQuestion.of(questions.newcomers().get(0)).withOtherDays(OtherDays.ALWAYS));
    scratch.add((ofAllThreads() - start) / 1e6);
  }

  private void together(FitWeek week, List<WeekBooking> newcomers) throws Exception {
    ExecutorService threads = Executors.newFixedThreadPool(THREADS);
    try {
      long start = System.nanoTime();
      List<Future<FitAnswer>> answers = new ArrayList<>();
      for (WeekBooking newcomer : newcomers) {
        FitQuestion question = FitQuestion.of(newcomer).withOtherDays(OtherDays.NEVER);
        answers.add(threads.submit(() -> week.ask(question)));
      }
      for (Future<FitAnswer> answer : answers) {
        answer.get();
      }
      wallSeconds += (System.nanoTime() - start) / 1e9;
      asked += newcomers.size();
    } finally {
      threads.shutdown();
    }
  }

  private String text(List<Double> newAddresses) {
    List<Double> all = new ArrayList<>(fits);
    all.addAll(noes);
    return "Command: `java -cp router-core/target/classes:router-core/target/test-classes:LIBS"
        + " -Ddogleg.root=. -Ddogleg.fit.weeks="
        + WEEKS
        + " dev.dogleg.fit.FitLedger`\n`FitWeek.ask` as a library call on a"
        + " prepared week, travel times given, best three offers in full; nobody was asked of that"
        + " week before. Weeks of `QuestionWeeks` (30 bookings, one van, traffic, a third told an"
        + " hour), seeds 1.."
        + WEEKS
        + ", "
        + QUESTIONS
        + " questions each, "
        + OTHER_DAYS
        + " of them in tier B too. Tier B is asked of a week made ready for it"
        + " (`readyForOtherDays`), tier A is part of its time; processor time of all threads, and"
        + " by the clock. A new address: drives among 33 places of the sample map and the new door"
        + " worked out anew, then tier A, on weeks of `RoadWeeks`, processor time of all threads. "
        + BenchmarkPage.machine()
        + "\n\n| what | questions | median ms | 99 of 100 within ms | target ms |\n"
        + "|---|---|---|---|---|\n"
        + row("tier A, all", all, "5 / 50")
        + row("of these: some day fits", fits, "")
        + row("of these: no day fits, reasons and changes worked out", noes, "")
        + row("tier A, a new address with its road times", newAddresses, "")
        + row("tier B, " + otherDaysProven + " proven", otherDays, "300 / 5000")
        + row("of these: no day of tier A fits", otherDaysOnly, "")
        + row("tier B by the clock, at that load", otherDaysWall, "")
        + row("making a week ready for tier B, once", ready, "")
        + row("tier B from scratch, one question a week", scratch, "")
        + "\nTier A on %d threads: %.0f questions a second (wall time).\n"
            .formatted(THREADS, asked / wallSeconds);
  }

  private static String row(String what, List<Double> millis, String target) {
    List<Double> sorted = millis.stream().sorted().toList();
    return sorted.isEmpty()
        ? ""
        : "| %s | %d | %.1f | %.1f | %s |\n"
            .formatted(
                what,
                sorted.size(),
                sorted.get(sorted.size() / 2),
                sorted.get((sorted.size() * 99 - 1) / 100),
                target);
  }

  private static long ofThisThread() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  private static long ofAllThreads() {
    return ((com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean())
        .getProcessCpuTime();
  }
}
