package dev.dogleg.plan.week;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.CertificateAudit;
import dev.dogleg.audit.ProofAudit;
import dev.dogleg.audit.ProofAudit.Ground;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Weeks of which prices alone, with or without cuts, say too small a number left out. */
class FewestLeftOutTest {
  private static final long PLENTY = 4_000_000_000L;

  /** Waiting has a price here that nobody pays, so that the van-days are no plain ones. */
  private static final Prices WAITING = new Prices(0, 20, 0, 0);

  private static WeekRequest week(long seed, int rings, int days, boolean plain) {
    return RingWeeks.week(seed, rings, days, plain ? Prices.DRIVE_ONLY : WAITING);
  }

  /** The bound that the LP of the number left out comes to, with cuts as long as there are any. */
  private static long bound(WeekRequest week, int enough, boolean plain) {
    WeekModel model = new WeekModel(week);
    WorkCount work = new WorkCount(week.effort(), () -> false);
    ColumnPool pool = new ColumnPool(model.size());
    for (VanKind kind : model.kinds()) {
      for (int j = 0; j < kind.size(); j++) {
        int[] one = {kind.booking(j)};
        pool.add(kind.number(), one, 0, ColumnPool.Known.BOUND);
      }
    }
    MasterProblem seen = new MasterProblem(model, pool, new SetCosts(model, work), work);
    List<DayPricer> pricers = new ArrayList<>();
    model.kinds().forEach(kind -> pricers.add(new DayPricer(kind, 1_000_000, () -> false)));
    assertEquals(plain, pricers.stream().allMatch(DayPricer::plain));
    ColumnGeneration count = new FewestLeftOut(seen, pricers).lp(List.of(), pool.singles(), enough);
    count.solve();
    count.cut(30);
    return count.bound().value();
  }

  private static WeekPlanner.Solved withoutAListOfAllSets(WeekRequest week) {
    return new WeekSolver(week, WeekProgress.NONE, () -> false, 0).solve();
  }

  /**
   * Three rings and seven days: halves of days leave out 1 of 15, whole days 2; one ring and two
   * days more or less is not asked for. A solver that shares nothing with the planner agrees.
   */
  @ParameterizedTest(name = "seed {0}, {1} rings, {2} days, plain: {3}")
  @CsvSource({"1, 2, 5, true", "2, 2, 5, false", "3, 3, 7, true", "4, 3, 7, false"})
  void aNumberThatNoPricesShowIsProven(long seed, int rings, int days, boolean plain) {
    WeekRequest week = week(seed, rings, days, plain);
    SubsetSolver.Best truth = SubsetSolver.best(week);
    long bound = bound(week, truth.leftOut(), plain);
    assertTrue(bound < truth.leftOut(), "bound " + bound + ", truth " + truth);
    WeekPlanner.Solved solved = withoutAListOfAllSets(week);
    assertEquals(Proof.Kind.PROVEN_BEST, solved.plan().proof().kind());
    assertEquals(truth.leftOut(), solved.plan().leftOutCounted());
    assertEquals(truth.leftOut(), solved.plan().proof().leftOutBound());
    assertEquals(truth.cost(), solved.plan().costSixtieths());
    List<Search> searches = solved.certificate().searches();
    Search last = searches.get(searches.size() - 2);
    assertEquals(truth.leftOut() - 1, last.limit());
    assertTrue(last.parts().size() > 1, "a single bound shows it: " + last);
    ProofAudit audit = CertificateAudit.check(week, solved.plan(), solved.certificate(), PLENTY);
    assertEquals(List.of(), audit.findings());
    assertEquals(Ground.EVERY_SET, audit.ground());
  }

  /** Each part that shows it is needed: with the bounds of one away the proof is open. */
  @ParameterizedTest(name = "seed {0}")
  @CsvSource({"1", "2"})
  void noPartOfTheProofCanBeMissing(long seed) {
    WeekRequest week = week(seed, 2, 5, seed % 2 == 1);
    WeekPlanner.Solved solved = withoutAListOfAllSets(week);
    WeekCertificate whole = solved.certificate();
    Search first = whole.searches().get(0);
    assertEquals(0, first.limit());
    for (int p = 0; p < first.parts().size(); p++) {
      if (first.parts().get(p).split().isEmpty()) {
        WeekCertificate less = withoutBounds(whole, p);
        ProofAudit audit = CertificateAudit.check(week, solved.plan(), less, PLENTY);
        assertFalse(audit.findings().isEmpty(), "part " + p);
      }
    }
  }

  private static WeekCertificate withoutBounds(WeekCertificate whole, int part) {
    Search first = whole.searches().get(0);
    List<WeekCertificate.Part> parts =
        IntStream.range(0, first.parts().size())
            .mapToObj(
                p -> {
                  WeekCertificate.Part old = first.parts().get(p);
                  return p == part
                      ? new WeekCertificate.Part(old.within(), old.holds(), List.of(), old.split())
                      : old;
                })
            .toList();
    List<Search> searches = new ArrayList<>(whole.searches());
    searches.set(0, new Search(first.limit(), parts));
    return new WeekCertificate(whole.bookingIds(), whole.vanDays(), searches);
  }
}
