package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.audit.TriedSets.OneSet;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomWeeks;
import dev.dogleg.plan.week.WeekPlanner;
import dev.dogleg.plan.week.WeekProgress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/**
 * Sets that are passed over because they cost enough contradict nothing: a certificate held against
 * every set, with the oracle's costs, and against those alone that cost less than they must.
 */
class SetNeedsTest {
  @Test
  void whatCostsEnoughContradictsNothing() {
    List<String> wrong = new ArrayList<>();
    int contradicted = 0;
    int borneOut = 0;
    for (int k = 1; k <= 60; k++) {
      WeekRequest week = RandomWeeks.week(k, 5, 4 - k % 3, false);
      WeekPlanner.Solved solved = WeekPlanner.solve(week, WeekProgress.NONE, () -> false);
      Map<String, WeekCertificate> spoiled = new HashMap<>();
      spoiled.put("as it is", solved.certificate());
      BrokenCertificates broken = new BrokenCertificates(solved.certificate());
      spoiled.putAll(broken.names());
      if (k <= 12 || solved.certificate().searches().get(0).parts().size() > 1) {
        spoiled.putAll(broken.amounts());
      }
      List<OneSet> sets = sets(week, solved.certificate());
      for (Map.Entry<String, WeekCertificate> one : spoiled.entrySet()) {
        WeekCertificate certificate = one.getValue();
        if (certificate.searches().isEmpty()
            || !new CertificateForm(week, certificate).wrong().isEmpty()) {
          continue;
        }
        long[] most = new long[certificate.searches().size()];
        Arrays.fill(most, DearestWeek.of(week));
        most[most.length - 1] = solved.plan().costSixtieths() - 1;
        SetNeeds needs = new SetNeeds(certificate, most);
        WorkLeft work = new WorkLeft(Long.MAX_VALUE);
        List<OneSet> cheap = new ArrayList<>();
        for (OneSet set : sets) {
          long cost = set.costSixtieths();
          boolean less = needs.of(set.kind(), set.bookings(), cost, work) > cost;
          if (less != needs.of(set.kind(), set.bookings(), 0, work) > cost) {
            wrong.add("week " + k + ": " + one.getKey() + ": " + set + " known or not");
          }
          if (less) {
            cheap.add(set);
          }
        }
        boolean byAll = contradicted(week, certificate, sets, most);
        boolean byCheap = contradicted(week, certificate, cheap, most);
        if (byAll != byCheap || byAll == cheap.isEmpty()) {
          wrong.add("week " + k + ": " + one.getKey() + ": " + byAll + byCheap + cheap);
        }
        contradicted += byAll ? 1 : 0;
        borneOut += byAll ? 0 : 1;
      }
    }
    String seen = contradicted + " contradicted, " + borneOut + " borne out";
    assertEquals(List.of(), wrong, seen);
    assertTrue(contradicted > 100 && borneOut > 100, seen);
  }

  private static boolean contradicted(
      WeekRequest week, WeekCertificate certificate, List<OneSet> sets, long[] most) {
    WeekFindings found = new WeekFindings();
    PricedSets priced = new PricedSets(week, certificate.vanDays());
    for (int s = 0; s < most.length; s++) {
      new SearchCheck(certificate, s, priced, sets, most[s], found).check();
    }
    return found.inOrder().stream().anyMatch(f -> f.finding().code().equals("certificate-least"));
  }

  private static List<OneSet> sets(WeekRequest week, WeekCertificate certificate) {
    List<OneSet> sets = new ArrayList<>();
    for (int kind = 0; kind < certificate.vanDays().size(); kind++) {
      for (int day : certificate.vanDays().get(kind)) {
        List<Integer> numbers = new ArrayList<>();
        List<Long> extra = new ArrayList<>();
        for (WeekBooking booking : week.bookings()) {
          for (DayChoice choice : booking.choices()) {
            if (choice.day() == day) {
              numbers.add(certificate.bookingIds().indexOf(booking.id()));
              extra.add(choice.extraSixtieths());
            }
          }
        }
        long[] costs = DayOracle.costsBySet(week.asking(day));
        for (int set = 1; set < costs.length; set++) {
          if (costs[set] < DayOracle.NEVER) {
            BitSet bookings = new BitSet();
            long cost = costs[set];
            for (int i = 0; i < numbers.size(); i++) {
              if ((set >> i & 1) != 0) {
                bookings.set(numbers.get(i));
                cost += extra.get(i);
              }
            }
            sets.add(new OneSet(kind, bookings, cost));
          }
        }
      }
    }
    return sets;
  }
}
