package dev.dogleg.audit;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.List;

/**
 * The cost of a plan, term by term, in sixtieths of a second of driving.
 *
 * <p>Maintainers: sums are longs. The largest term is the price of 200 visits left out, 200 * 2^38
 * = 5.5e13; times are bounded by {@link Row#MOST_SECONDS} and priced at most 36,000 a second,
 * 3.6e12; a leg of 2^31 metres times 3,600 * 60 is 4.7e14; balance is 200 * 5e6 * 36,000, 3.6e13 a
 * term; the price of rules is held at 2^60, 1.2e18. So nothing comes near 9.2e18.
 */
final class CostCheck {
  private long drive;
  private long length;
  private long waiting;
  private long overtime;
  private long dayEnd;
  private long leftOut;
  private long rules;
  private long balance;

  /** Compares the plan's cost with its own sum; needs sound structure, roads and times. */
  static void check(DayRows rows, DayPlan plan, List<Visit> unserved, FindingList found) {
    CostCheck cost = new CostCheck();
    if (!rows.all().isEmpty()) {
      cost.driven(rows);
    }
    unserved.stream()
        .filter(visit -> !visit.booked())
        .forEach(visit -> cost.leftOut += visit.leftOutSixtieths());
    long right = cost.sum();
    if (plan.costSixtieths() != right) {
      found.day(
          "cost",
          "",
          plan.costSixtieths(),
          right,
          "The plan gives a cost of %d sixtieths; it is %d: %s."
              .formatted(plan.costSixtieths(), right, cost.terms()));
    }
  }

  private void driven(DayRows rows) {
    DayRequest request = rows.request();
    Prices prices = request.prices();
    long driveSeconds = 0;
    long busySeconds = 0;
    for (Row row : rows.all()) {
      busySeconds += row.lengthSeconds();
      if (rows.driven(row)) {
        driveSeconds += rows.driveSeconds(row);
        length +=
            Math.floorDiv(rows.driveMetres(row) * 60L * prices.kilometreSeconds() + 500, 1000);
      }
    }
    long leave = rows.get(0).stop().leaveSeconds();
    long end = rows.last().stop().arriveSeconds();
    TimeWindow hours = request.shift().hours();
    drive = Prices.SIXTIETHS_PER_DRIVE_SECOND * driveSeconds;
    waiting = prices.waitingMinuteSeconds() * (end - leave - driveSeconds - busySeconds);
    overtime = prices.overtimeMinuteSeconds() * Math.max(0, end - hours.toSeconds());
    dayEnd = prices.endMinuteSeconds() * (end - hours.fromSeconds());
    rules = RuleCheck.price(rows);
    balance = request.terms().balance().map(terms -> balance(rows, terms, end)).orElse(0L);
  }

  private static long balance(DayRows rows, BalanceTerms terms, long end) {
    long served = rows.of(Kind.VISIT).stream().mapToLong(Row::lengthSeconds).sum();
    return terms.groomSixtieths() * Math.max(0, served - terms.groomSeconds())
        + terms.endSixtieths() * Math.max(0, end - terms.endSeconds());
  }

  private long sum() {
    return drive + length + waiting + overtime + dayEnd + leftOut + rules + balance;
  }

  private String terms() {
    String terms = "drive %d + length %d + waiting %d + overtime %d + day end %d + left out %d";
    terms = terms.formatted(drive, length, waiting, overtime, dayEnd, leftOut);
    return terms + " + rules %d + balance %d".formatted(rules, balance);
  }
}
