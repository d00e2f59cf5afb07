package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.ProofAudit.Ground;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekCertificate.Part;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.CertificateCheck;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.plan.week.WeekProgress;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class CertificateAuditTest {
  private static final long PLENTY = 4_000_000_000L;

  private static WeekPlanner.Solved solved(WeekRequest week) {
    return WeekPlanner.solve(week, WeekProgress.NONE, () -> false);
  }

  private static ProofAudit check(WeekRequest week, WeekPlanner.Solved solved, long work) {
    return CertificateAudit.check(week, solved.plan(), solved.certificate(), work);
  }

  private static List<String> codes(ProofAudit audit) {
    return audit.findings().stream().map(f -> f.finding().code()).distinct().toList();
  }

  private static boolean split(WeekCertificate certificate) {
    return certificate.searches().stream().anyMatch(search -> search.parts().size() > 1);
  }

  /** Small weeks with every term, some of them split: nothing is taken from the planner. */
  @Test
  void trueProofsHoldWhateverSetsAreTried() {
    int splits = 0;
    int moreThanOneSearch = 0;
    for (int k = 1; k <= 150; k++) {
      WeekRequest week = RandomWeeks.week(k, 4 + k % 2, 2 + k % 3, k % 3 == 0);
      WeekPlanner.Solved solved = solved(week);
      assertEquals(Proof.Kind.PROVEN_BEST, solved.plan().proof().kind(), "week " + k);
      ProofAudit audit = check(week, solved, PLENTY);
      assertEquals(List.of(), audit.findings(), "week " + k);
      assertEquals(Ground.EVERY_SET, audit.ground(), "week " + k);
      ProofAudit little = check(week, solved, 0);
      assertEquals(new ProofAudit(List.of(), Ground.SMALL_SETS, 0), little, "week " + k);
      splits += split(solved.certificate()) ? 1 : 0;
      moreThanOneSearch += solved.certificate().searches().size() > 1 ? 1 : 0;
    }
    String seen = splits + " split, " + moreThanOneSearch + " with some left out";
    assertTrue(splits >= 3 && moreThanOneSearch >= 30, seen);
  }

  /** Every amount by one up and down: a finding even where no set is tried. */
  @Test
  void noAmountOfACertificateCanBeChanged() {
    List<String> unseen = new ArrayList<>();
    Set<String> codes = new TreeSet<>();
    int changed = 0;
    int splits = 0;
    for (int k = 1; k <= 60; k++) {
      WeekRequest week = RandomWeeks.week(k, 5, 4 - k % 2, false);
      WeekPlanner.Solved solved = solved(week);
      boolean split = split(solved.certificate());
      splits += split ? 1 : 0;
      if (!split && k > 12) {
        continue;
      }
      BrokenCertificates broken = new BrokenCertificates(solved.certificate());
      for (Map.Entry<String, WeekCertificate> one : broken.amounts().entrySet()) {
        changed++;
        List<String> found = codes(CertificateAudit.check(week, solved.plan(), one.getValue(), 0));
        codes.addAll(found);
        if (found.isEmpty()) {
          unseen.add("week " + k + ": " + one.getKey());
        }
      }
    }
    assertEquals(List.of(), unseen, changed + " changed");
    List<String> each =
        List.of("certificate-form", "certificate-missing", "certificate-open", "certificate-sum");
    assertTrue(codes.containsAll(each), codes.toString());
    assertTrue(changed > 500 && splits >= 2, changed + " changed, " + splits + " split");
  }

  /**
   * Another booking in a question or cut makes another statement, which may be as good a proof: a
   * finding, or an oracle that tries everything says so too.
   */
  @Test
  void anotherNameIsAFindingOrAnotherTrueProof() {
    List<String> wrong = new ArrayList<>();
    int found = 0;
    for (int k = 1; k <= 60; k++) {
      WeekRequest week = RandomWeeks.week(k, 5, 4 - k % 2, false);
      WeekPlanner.Solved solved = solved(week);
      BrokenCertificates broken = new BrokenCertificates(solved.certificate());
      for (Map.Entry<String, WeekCertificate> one : broken.names().entrySet()) {
        ProofAudit audit = CertificateAudit.check(week, solved.plan(), one.getValue(), PLENTY);
        found += audit.findings().isEmpty() ? 0 : 1;
        if (audit.findings().isEmpty()
            && !CertificateCheck.check(week, solved.plan(), one.getValue()).isEmpty()) {
          wrong.add("week " + k + ": " + one.getKey());
        }
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(found >= 10, found + " found");
  }

  /** Serving a booking may be worth what leaving it out costs, and no sixtieth more. */
  @Test
  void noBookingIsPricedAboveWhatLeavingItOutCosts() {
    int seen = 0;
    for (int k = 1; k <= 20; k++) {
      WeekRequest week = RandomWeeks.week(k, 4, 2, false);
      WeekPlanner.Solved solved = solved(week);
      WeekCertificate certificate = solved.certificate();
      int last = certificate.searches().size() - 1;
      Search search = certificate.searches().get(last);
      Part part = search.parts().isEmpty() ? null : search.parts().get(0);
      if (part == null || part.split().isPresent() || part.bounds().isEmpty()) {
        continue;
      }
      PricedSets priced = new PricedSets(week, certificate.vanDays());
      Bound bound = part.bounds().get(0);
      for (int i = 0; i < certificate.bookingIds().size(); i++) {
        if (!priced.mayBeLeft(bound, search.limit(), i)) {
          continue;
        }
        List<Long> cover = new ArrayList<>(bound.cover());
        long more = priced.left(bound, i) + 1 - cover.get(i);
        cover.set(i, cover.get(i) + more);
        Bound dear =
            BrokenCertificates.sum(BrokenCertificates.cover(bound, cover), bound.sum() + more);
        List<Bound> bounds = new ArrayList<>(part.bounds());
        bounds.set(0, dear);
        List<Search> searches = new ArrayList<>(certificate.searches());
        searches.set(
            last, new Search(search.limit(), List.of(new Part(-1, true, bounds, part.split()))));
        WeekCertificate other =
            new WeekCertificate(certificate.bookingIds(), certificate.vanDays(), searches);
        ProofAudit audit = CertificateAudit.check(week, solved.plan(), other, 0);
        assertTrue(codes(audit).contains("certificate-price"), "week " + k + audit);
        seen++;
      }
    }
    assertTrue(seen >= 20, seen + " seen");
  }

  /** A bound whose sum is right and whose least reduced costs are not: only sets tried show it. */
  @Test
  void leastReducedCostsThatAreTooHighAreSeenWhereSetsAreTried() {
    int seen = 0;
    for (int k = 1; k <= 20; k++) {
      WeekRequest week = RandomWeeks.week(k, 4, 2, k % 2 == 0);
      WeekPlanner.Solved solved = solved(week);
      WeekCertificate lifted = lifted(solved.certificate());
      ProofAudit little = CertificateAudit.check(week, solved.plan(), lifted, 0);
      assertEquals(new ProofAudit(List.of(), Ground.SMALL_SETS, 0), little, "week " + k);
      ProofAudit audit = CertificateAudit.check(week, solved.plan(), lifted, PLENTY);
      boolean low = codes(audit).equals(List.of("certificate-least"));
      assertTrue(low || audit.findings().isEmpty(), "week " + k + audit);
      seen += low ? 1 : 0;
    }
    assertTrue(seen >= 12, seen + " seen");
  }

  /** Half of every least reduced cost, and the sums to match. */
  private static WeekCertificate lifted(WeekCertificate certificate) {
    List<Search> searches = new ArrayList<>();
    for (Search search : certificate.searches()) {
      List<Part> parts = new ArrayList<>();
      for (Part part : search.parts()) {
        List<Bound> bounds = new ArrayList<>();
        for (Bound bound : part.bounds()) {
          long sum = bound.sum();
          List<Long> least = new ArrayList<>();
          for (int kind = 0; kind < bound.least().size(); kind++) {
            long half = bound.least().get(kind) / 2;
            sum += (half - bound.least().get(kind)) * certificate.vanDays().get(kind).size();
            least.add(half);
          }
          bounds.add(BrokenCertificates.sum(BrokenCertificates.least(bound, least), sum));
        }
        parts.add(new Part(part.within(), part.holds(), bounds, part.split()));
      }
      searches.add(new Search(search.limit(), parts));
    }
    return new WeekCertificate(certificate.bookingIds(), certificate.vanDays(), searches);
  }

  private static WeekPlan costing(WeekPlan plan, int leftOut, long cost) {
    Proof proof = new Proof(plan.proof().kind(), leftOut, cost, plan.proof().steps());
    return new WeekPlan(plan.days(), plan.noRoom(), leftOut, cost, proof);
  }

  @Test
  void aDearerPlanIsNotProvenByTheCertificateOfTheBest() {
    for (int k = 1; k <= 20; k++) {
      WeekRequest week = RandomWeeks.week(k, 4, 2, false);
      WeekPlanner.Solved solved = solved(week);
      WeekPlan plan = solved.plan();
      WeekPlan dearer = costing(plan, plan.leftOutCounted(), plan.costSixtieths() + 5);
      ProofAudit audit = CertificateAudit.check(week, dearer, solved.certificate(), 0);
      assertEquals(List.of("certificate-open"), codes(audit), "week " + k);
      WeekPlan more = costing(plan, plan.leftOutCounted() + 1, plan.costSixtieths());
      audit = CertificateAudit.check(week, more, solved.certificate(), 0);
      assertTrue(codes(audit).contains("certificate-open"), "week " + k);
    }
  }

  @Test
  void aProvenWeekNeedsACertificateAndAnUnprovenOneNeedsNone() {
    WeekRequest week = RandomWeeks.week(3, 4, 2, false);
    WeekPlan plan = solved(week).plan();
    ProofAudit audit = CertificateAudit.check(week, plan, WeekCertificate.NONE, PLENTY);
    assertEquals(List.of("certificate-missing"), codes(audit));
    Proof stopped = new Proof(Proof.Kind.WORK_LIMIT, 0, 0, 1);
    WeekPlan unproven =
        new WeekPlan(
            plan.days(), plan.noRoom(), plan.leftOutCounted(), plan.costSixtieths(), stopped);
    audit = CertificateAudit.check(week, unproven, WeekCertificate.NONE, PLENTY);
    assertEquals(new ProofAudit(List.of(), Ground.NOT_CLAIMED, 0), audit);
  }

  /** A day alone has no certificate: where every set can be tried, the audit does. */
  @Test
  void aDayAloneIsTriedWhole() {
    int refuted = 0;
    for (int k = 1; k <= 40; k++) {
      WeekRequest week = RandomWeeks.week(k, 4, 1, k % 2 == 0);
      WeekPlan plan = WeekPlanner.plan(week);
      ProofAudit audit = CertificateAudit.check(week, plan, WeekCertificate.NONE, PLENTY);
      assertEquals(new ProofAudit(List.of(), Ground.EVERY_SET, 0), audit, "week " + k);
      WeekPlan dearer = costing(plan, plan.leftOutCounted(), plan.costSixtieths() + 1);
      audit = CertificateAudit.check(week, dearer, WeekCertificate.NONE, PLENTY);
      assertEquals(List.of("not-best"), codes(audit), "week " + k);
      WeekPlan more = costing(plan, plan.leftOutCounted() + 1, plan.costSixtieths());
      audit = CertificateAudit.check(week, more, WeekCertificate.NONE, PLENTY);
      assertEquals(List.of("not-best"), codes(audit), "week " + k);
      audit = CertificateAudit.check(week, more, WeekCertificate.NONE, 0);
      assertFalse(audit.ground() == Ground.EVERY_SET && !week.bookings().isEmpty(), "week " + k);
      refuted++;
    }
    assertEquals(40, refuted);
  }

  /** Numbers that no long holds are no reason to fall over. */
  @Test
  void numbersTooLargeToReckonWithAreAFinding() {
    WeekRequest week = RandomWeeks.week(3, 4, 2, false);
    WeekPlanner.Solved solved = solved(week);
    WeekCertificate certificate = solved.certificate();
    Search search = certificate.searches().get(0);
    Part part = search.parts().get(0);
    List<Bound> bounds = new ArrayList<>(part.bounds());
    List<Long> cover = new ArrayList<>(bounds.get(0).cover());
    cover.replaceAll(price -> Long.MAX_VALUE);
    bounds.set(0, BrokenCertificates.cover(bounds.get(0), cover));
    List<Part> parts = new ArrayList<>(search.parts());
    parts.set(0, new Part(-1, true, bounds, part.split()));
    List<Search> searches = new ArrayList<>(certificate.searches());
    searches.set(0, new Search(search.limit(), parts));
    WeekCertificate huge =
        new WeekCertificate(certificate.bookingIds(), certificate.vanDays(), searches);
    ProofAudit audit = CertificateAudit.check(week, solved.plan(), huge, 0);
    assertTrue(codes(audit).contains("certificate-form"), audit.toString());
  }
}
