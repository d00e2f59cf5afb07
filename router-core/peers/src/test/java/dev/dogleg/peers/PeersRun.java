package dev.dogleg.peers;

import com.google.ortools.Loader;
import dev.dogleg.audit.WeekAudit;
import dev.dogleg.audit.WeekFinding;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.WeekPlanner;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.logging.Level;
import java.util.logging.Logger;

/** Overloaded weeks by the week planner and by the peers, in the same time; run by hand. */
public final class PeersRun {
  private static final int SEEDS = 3;
  private static final Logger JSPRIT = Logger.getLogger("com.graphhopper.jsprit");

  private final WeekPeer peer;
  private int runs;
  private int moreLeftOut;
  private int equalLeftOut;
  private int better;
  private int same;
  private double sumMargin;
  private double mostMargin;

  private PeersRun(WeekPeer peer) {
    this.peer = peer;
  }

  /**
   * Runs, one line a run and a table.
   *
   * @param args bookings, first seed, last seed, processor seconds for each run; then, for weeks on
   *     real roads, the name of an extract
   */
  public static void main(String[] args) {
    Loader.loadNativeLibraries();
    JSPRIT.setLevel(Level.WARNING);
    warmUp();
    int bookings = Integer.parseInt(args[0]);
    double seconds = Double.parseDouble(args[3]);
    PeersWeeks weeks =
        new PeersWeeks(bookings, args.length > 4 ? Optional.of(args[4]) : Optional.empty());
    List<PeersRun> all = List.of(new PeersRun(new RoutingPeer()), new PeersRun(new RuinPeer()));
    for (long seed = Long.parseLong(args[1]); seed <= Long.parseLong(args[2]); seed++) {
      WeekRequest week = weeks.week(seed);
      ThreadClock used = new ThreadClock();
      WeekPlan plan =
          WeekPlanner.plan(
              week, (left, cost, leftBound, costBound, steps) -> {}, () -> used.over(seconds));
      List<WeekFinding> findings = WeekAudit.check(week, plan);
      if (!findings.isEmpty()) {
        throw new IllegalStateException("seed " + seed + ": " + findings);
      }
      System.out.printf(
          Locale.ROOT,
          "seed %d Dogleg: left out %d, cost %d, %s, %.1f s%n",
          seed,
          plan.leftOutCounted(),
          plan.costSixtieths(),
          plan.proof().kind(),
          used.seconds());
      for (PeersRun one : all) {
        one.compare(week, plan, seed, seconds);
      }
    }
    System.out.println(
        "| peer | runs | more left out | equal left out | equal cost too | dearer by, mean"
            + " | at most | better than Dogleg |\n|---|---|---|---|---|---|---|---|");
    all.forEach(PeersRun::row);
  }

  /** Classes are loaded and compiled before anybody's time counts. */
  private static void warmUp() {
    WeekRequest small = new PeersWeeks(20, Optional.empty()).week(1_000);
    WeekPlanner.plan(small);
    new RoutingPeer().search(small, 2, 1);
    new RuinPeer().search(small, 2, 1);
  }

  private void compare(WeekRequest week, WeekPlan plan, long weekSeed, double seconds) {
    for (long seed = 1; seed <= SEEDS; seed++) {
      ThreadClock used = new ThreadClock();
      JudgedWeek judged = JudgedWeek.of(week, peer.search(week, seconds, seed));
      if (!judged.breaches().isEmpty()) {
        throw new IllegalStateException(peer.title() + ": " + judged.breaches());
      }
      double margin =
          100.0 * (judged.costSixtieths() - plan.costSixtieths()) / plan.costSixtieths();
      int more = judged.leftOut() - plan.leftOutCounted();
      runs++;
      moreLeftOut += more > 0 ? 1 : 0;
      better += more < 0 || (more == 0 && margin < 0) ? 1 : 0;
      if (more == 0) {
        equalLeftOut++;
        same += judged.costSixtieths() == plan.costSixtieths() ? 1 : 0;
        sumMargin += margin;
        mostMargin = Math.max(mostMargin, margin);
      }
      System.out.printf(
          Locale.ROOT,
          "seed %d %s, seed %d: left out %d, cost %d%s, %.1f s%n",
          weekSeed,
          peer.title(),
          seed,
          judged.leftOut(),
          judged.costSixtieths(),
          more == 0 ? String.format(Locale.ROOT, " (%+.3f %%)", margin) : "",
          used.seconds());
    }
  }

  private void row() {
    System.out.printf(
        Locale.ROOT,
        "| %s | %d | %d | %d | %d | %.2f %% | %.2f %% | %d |%n",
        peer.title(),
        runs,
        moreLeftOut,
        equalLeftOut,
        same,
        equalLeftOut == 0 ? 0 : sumMargin / equalLeftOut,
        mostMargin,
        better);
  }
}
