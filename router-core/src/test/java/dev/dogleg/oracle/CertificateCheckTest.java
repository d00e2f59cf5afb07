package dev.dogleg.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.plan.week.WeekProgress;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class CertificateCheckTest {
  @Test
  void theProofOfASmallWeekStandsByItself() {
    List<String> wrong = new ArrayList<>();
    int proofs = 0;
    int branched = 0;
    for (int k = 1; k <= 160; k++) {
      // Of 60 weeks of 5 bookings and 4 van-days some four are split, of the others fewer.
      boolean many = k > 40;
      int seed = many ? k / 2 : k;
      WeekRequest week =
          many
              ? RandomWeeks.week(seed, 5, 3 + k % 2, false)
              : RandomWeeks.week(seed, 3 + seed % 3, 1 + seed % 3, false);
      WeekPlanner.Solved solved = WeekPlanner.solve(week, WeekProgress.NONE, () -> false);
      WeekCertificate certificate = solved.certificate();
      if (solved.plan().proof().kind() != Proof.Kind.PROVEN_BEST) {
        continue;
      }
      proofs++;
      String name = "week " + k + ": ";
      CertificateCheck.check(week, solved.plan(), certificate)
          .forEach(text -> wrong.add(name + text));
      branched += certificate.searches().stream().anyMatch(s -> s.parts().size() > 1) ? 1 : 0;
    }
    String seen = proofs + " proofs, " + branched + " of split weeks";
    assertEquals(List.of(), wrong, seen);
    assertTrue(proofs >= 150 && branched >= 4, seen);
  }

  /** A check that cannot fail would be none: a plan said to be cheaper is not proven. */
  @Test
  void aDearerWeekIsNotProvenByTheCertificateOfTheBest() {
    int refused = 0;
    for (int seed = 1; seed <= 12; seed++) {
      WeekRequest week = RandomWeeks.week(seed, 4, 2, false);
      WeekPlanner.Solved solved = WeekPlanner.solve(week, WeekProgress.NONE, () -> false);
      WeekPlan best = solved.plan();
      WeekPlan dearer =
          new WeekPlan(
              best.days(),
              best.noRoom(),
              best.leftOutCounted(),
              best.costSixtieths() + 5,
              best.proof());
      refused += CertificateCheck.check(week, dearer, solved.certificate()).isEmpty() ? 0 : 1;
      WeekPlan fewer = new WeekPlan(best.days(), List.of(), 99, best.costSixtieths(), best.proof());
      assertTrue(
          !CertificateCheck.check(week, fewer, solved.certificate()).isEmpty(), "seed " + seed);
    }
    assertEquals(12, refused);
  }
}
