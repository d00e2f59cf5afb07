package dev.dogleg.fit;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekRequest;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * A week in which many bookings are asked about, each as if the others were not there.
 *
 * <p>Of all rules only {@link DayRule.Together} speaks of visits that a day does not serve.
 */
final class AskedDays {
  private final WeekRequest week;
  private final Set<String> asked;

  AskedDays(WeekRequest week, Set<String> asked) {
    this.week = week;
    this.asked = Set.copyOf(asked);
  }

  /** {@return the week without any of them} */
  WeekRequest without() {
    List<WeekBooking> bookings =
        week.bookings().stream().filter(booking -> !asked.contains(booking.id())).toList();
    return new WeekRequest(days(""), bookings, week.prices(), week.seed(), week.effort());
  }

  /** {@return the van-days with one of them; the very same where no rule tells it from another} */
  List<WeekDay> days(String id) {
    return IntStream.range(0, week.days().size()).mapToObj(number -> with(number, id)).toList();
  }

  /** A van-day with one of them; the very same where no rule tells it from another. */
  WeekDay with(int number, String id) {
    WeekDay day = week.days().get(number);
    DayTerms terms = day.terms();
    List<DayRule> rules = terms.rules().stream().map(rule -> with(rule, id)).toList();
    if (rules.equals(terms.rules())) {
      return day;
    }
    return new WeekDay(
        day.shift(),
        day.travel(),
        new DayTerms(rules, terms.water(), terms.balance(), terms.odds()));
  }

  private DayRule with(DayRule rule, String id) {
    if (rule instanceof DayRule.Together together) {
      Set<String> visits = new HashSet<>(together.visits());
      visits.removeIf(one -> asked.contains(one) && !one.equals(id));
      return new DayRule.Together(together.name(), together.ratherSixtieths(), visits);
    }
    return rule;
  }

  /** The same week with one more of its bookings among them. */
  AskedDays and(String id) {
    Set<String> more = new HashSet<>(asked);
    more.add(id);
    return new AskedDays(week, more);
  }

  /** {@return the week as it was given} */
  WeekRequest week() {
    return week;
  }
}
