package dev.dogleg.fit;

import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.plan.BenchmarkPage;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Times questions about newcomers and writes the table into docs/BENCHMARKS.md: some minutes. */
public final class FitLedger {
  private static final int WEEKS = Integer.getInteger("dogleg.fit.weeks", 20);
  private static final int QUESTIONS = Integer.getInteger("dogleg.fit.questions", 50);
  private static final int OTHER_DAYS = Integer.getInteger("dogleg.fit.otherDays", 1);
  private static final int THREADS = 2;

  private final List<Double> fits = new ArrayList<>();
  private final List<Double> noes = new ArrayList<>();
  private final List<Double> otherDays = new ArrayList<>();
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
    FitLedger ledger = new FitLedger();
    for (int seed = 1; seed <= WEEKS; seed++) {
      ledger.week(seed);
    }
    String text = ledger.text();
    BenchmarkPage.write("Does one more fit", text);
    System.out.println(text);
  }

  private void week(int seed) throws Exception {
    QuestionWeeks questions = QuestionWeeks.of(seed, QUESTIONS);
    FitWeek week = null;
    for (int round = 0; round < 2; round++) {
      // No newcomer of the second round was asked of this week before.
      week = questions.prepared();
      for (WeekBooking newcomer : questions.newcomers()) {
        FitQuestion question = FitQuestion.of(newcomer).withOtherDays(OtherDays.NEVER);
        long start = processorNanos();
        FitAnswer answer = week.ask(question);
        double millis = (processorNanos() - start) / 1e6;
        if (round == 1) {
          (answer.offers().isEmpty() ? noes : fits).add(millis);
        }
      }
    }
    for (WeekBooking newcomer : questions.newcomers().subList(0, OTHER_DAYS)) {
      long start = System.nanoTime();
      FitAnswer answer = week.ask(FitQuestion.of(newcomer).withOtherDays(OtherDays.ALWAYS));
      otherDays.add((System.nanoTime() - start) / 1e6);
      otherDaysProven += answer.otherDays().orElseThrow().proven() ? 1 : 0;
    }
    together(week, questions.newcomers());
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

  private String text() {
    List<Double> all = new ArrayList<>(fits);
    all.addAll(noes);
    return "Command: `java -cp router-core/target/classes:router-core/target/test-classes:LIBS"
        + " -Ddogleg.root=. -Ddogleg.fit.weeks="
        + WEEKS
        + " dev.dogleg.fit.FitLedger`\n`FitWeek.ask` as a library call on a"
        + " prepared week, travel times given, best three offers in full. Weeks of"
        + " `QuestionWeeks` (30 bookings, one van, traffic, a third told an hour), seeds 1.."
        + WEEKS
        + ", "
        + QUESTIONS
        + " questions each, second round. Tier B is planned from scratch, wall time. "
        + BenchmarkPage.machine()
        + "\n\n| what | questions | median ms | 99 of 100 within ms | target ms |\n"
        + "|---|---|---|---|---|\n"
        + row("tier A, all", all, "5 / 50")
        + row("of these: some day fits", fits, "")
        + row("of these: no day fits, reasons and changes worked out", noes, "")
        + row("tier B, " + otherDaysProven + " proven", otherDays, "300 / 5000")
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

  private static long processorNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
