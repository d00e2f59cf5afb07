package dev.dogleg.audit;

import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.CustomaryWeeks;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.plan.week.WeekProgress;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;

/**
 * How far the second check of a proven week goes, and what it takes: a row each week.
 *
 * <p>Arguments: bookings, vans, load, {@code real} (traffic and breaks) or {@code plain}, first and
 * last seed, steps of the audit, seconds after which a plan is given up.
 */
final class AuditLedger {
  private AuditLedger() {}

  public static void main(String[] args) {
    CustomaryWeeks.Shape shape =
        new CustomaryWeeks.Shape(
            Integer.parseInt(args[0]),
            Integer.parseInt(args[1]),
            Double.parseDouble(args[2]),
            args[3].equals("real"),
            WeekPlanner.USUAL_EFFORT);
    long steps = Long.parseLong(args[6]);
    long most = 1_000_000_000L * Integer.parseInt(args[7]);
    for (int seed = Integer.parseInt(args[4]); seed <= Integer.parseInt(args[5]); seed++) {
      WeekRequest week = CustomaryWeeks.week(seed, shape);
      long start = cpuNanos();
      WeekPlanner.Solved solved =
          WeekPlanner.certified(week, WeekProgress.NONE, () -> cpuNanos() - start > most);
      long planned = cpuNanos();
      if (solved.plan().proof().kind() != Proof.Kind.PROVEN_BEST) {
        System.out.println("seed " + seed + " | not proven");
        continue;
      }
      ProofAudit audit = CertificateAudit.check(week, solved.plan(), solved.certificate(), steps);
      long checked = cpuNanos();
      List<Bound> bounds =
          solved.certificate().searches().stream()
              .flatMap(search -> search.parts().stream())
              .flatMap(part -> part.bounds().stream())
              .toList();
      int cuts = bounds.stream().mapToInt(bound -> bound.cuts().size()).sum();
      System.out.printf(
          Locale.ROOT,
          "seed %d | planned %.2f s | %d bounds, %d cuts | checked %.2f s | %s %d | %s%n",
          seed,
          (planned - start) / 1e9,
          bounds.size(),
          cuts,
          (checked - planned) / 1e9,
          audit.ground(),
          audit.setSize(),
          audit.findings().isEmpty() ? "no finding" : audit.findings().get(0).toString());
    }
  }

  private static long cpuNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }
}
