package dev.dogleg.audit;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Checks a planned week against its request, sentence by sentence of {@code docs/WEEK.md}.
 *
 * <p>Stateless: every method may be called by any number of threads, and never throws for a bad
 * plan.
 */
public final class WeekAudit {
  private final WeekRequest request;
  private final WeekPlan plan;
  private final WeekRows rows;
  private final WeekFindings found = new WeekFindings();

  private WeekAudit(WeekRequest request, WeekPlan plan) {
    this.request = request;
    this.plan = plan;
    this.rows = new WeekRows(request, plan);
  }

  /**
   * Everything: each day as {@link DayAudit} does, who is served where, what is left out and why,
   * counts, cost, proof.
   *
   * @param request what was asked
   * @param plan the answer
   * @return every breach, day by day, those on the whole week last; empty where the plan is sound
   */
  public static List<WeekFinding> check(WeekRequest request, WeekPlan plan) {
    WeekAudit audit = new WeekAudit(request, plan);
    if (plan.days().size() != request.days().size()) {
      String text = "The plan has %d days and %d were asked for.";
      int has = plan.days().size();
      int asked = request.days().size();
      audit.found.week("days-count", "", has, asked, text.formatted(has, asked));
      return audit.found.inOrder();
    }
    for (int day = 0; day < request.days().size(); day++) {
      audit.day(day);
    }
    audit.servedOnce();
    new WeekLeftOutCheck(request, plan, audit.rows, audit.found).check();
    audit.cost();
    FindingList proof = new FindingList(null);
    ProofCheck.check(plan.proof(), plan.leftOutCounted(), plan.costSixtieths(), proof);
    audit.found.addAll(-1, proof.inOrder());
    return audit.found.inOrder();
  }

  private void day(int day) {
    for (String id : rows.served(day)) {
      WeekBooking booking = rows.booking(id);
      if (booking != null && WeekRows.choice(booking, day).isEmpty()) {
        String text = "Booking " + id + " may not be served on this van-day.";
        found.day(day, "not-a-choice", id, 1, 0, text);
      }
    }
    List<Visit> visits = rows.visits(day);
    if (visits.size() > DayRequest.MOST_VISITS) {
      String text = "A day of %d visits; at most %d can be asked for.";
      text = text.formatted(visits.size(), DayRequest.MOST_VISITS);
      found.day(day, "too-many-visits", "", visits.size(), DayRequest.MOST_VISITS, text);
      return;
    }
    found.addAll(day, DayAudit.check(rows.asked(day, visits), plan.days().get(day)));
  }

  private void servedOnce() {
    for (Map.Entry<String, List<Integer>> one : rows.daysOf().entrySet()) {
      int days = one.getValue().size();
      if (days > 1) {
        String text = "Booking %s is served on %d van-days.".formatted(one.getKey(), days);
        found.week("booking-twice", one.getKey(), days, 1, text);
      }
    }
  }

  /**
   * The sum of the days' costs as given (each is checked apart), of choices and of what is left.
   */
  private void cost() {
    long days = plan.days().stream().mapToLong(DayPlan::costSixtieths).sum();
    long extra = 0;
    long leftOut = 0;
    for (WeekBooking booking : request.bookings()) {
      List<Integer> servedOn = rows.daysOf().getOrDefault(booking.id(), List.of());
      leftOut += servedOn.isEmpty() ? booking.leftOutSixtieths() : 0;
      for (int day : servedOn) {
        Optional<DayChoice> choice = WeekRows.choice(booking, day);
        extra += choice.map(DayChoice::extraSixtieths).orElse(0L);
      }
    }
    // The audit does not reckon odds: their price is taken as given.
    long odds = plan.oddsSixtieths().orElse(0);
    long right = days + extra + leftOut + odds;
    if (plan.costSixtieths() != right) {
      String text =
          "The week gives a cost of %d sixtieths; it is %d:"
              + " days %d + choices %d + left out %d + odds %d.";
      text = text.formatted(plan.costSixtieths(), right, days, extra, leftOut, odds);
      found.week("cost", "", plan.costSixtieths(), right, text);
    }
  }
}
