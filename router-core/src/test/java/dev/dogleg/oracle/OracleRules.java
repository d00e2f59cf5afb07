package dev.dogleg.oracle;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.Visit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Set;

/** What the rules make of an order of visits: services, breaches, prices; plain and slow. */
final class OracleRules {
  /** What a broken must rule costs: nothing does. */
  static final long BROKEN = -1;

  private OracleRules() {}

  /** Service seconds of the last visit of an order that may go on. */
  static int service(DayRequest request, List<Visit> order) {
    int place = order.size();
    Visit visit = order.get(place - 1);
    BigDecimal seconds = BigDecimal.valueOf(visit.serviceSeconds());
    for (DayRule rule : request.terms().rules()) {
      if (rule instanceof DayRule.PlaceMinutes minutes
          && minutes.visits().contains(visit.id())
          && minutes.fromPlace() <= place
          && place <= minutes.toPlace()) {
        seconds =
            seconds
                .multiply(BigDecimal.valueOf(minutes.timesThousandths()))
                .movePointLeft(3)
                .setScale(0, RoundingMode.HALF_UP)
                .add(BigDecimal.valueOf(minutes.plusSeconds()))
                .max(BigDecimal.ZERO);
      }
    }
    for (DayRule rule : request.terms().rules()) {
      if (place > 1
          && rule instanceof DayRule.Changeover change
          && change.to().contains(visit.id())
          && change.from().contains(order.get(place - 2).id())) {
        seconds = seconds.add(BigDecimal.valueOf(change.seconds()));
      }
    }
    return seconds.intValueExact();
  }

  /** Price of all breaches of a whole day that do not hang on the clock; or {@link #BROKEN}. */
  static long price(DayRequest request, List<Visit> order) {
    List<String> ids = order.stream().map(Visit::id).toList();
    long sum = 0;
    for (DayRule rule : request.terms().rules()) {
      long breaches = breaches(rule, ids);
      if (breaches > 0 && rule.must()) {
        return BROKEN;
      }
      sum += breaches * rule.ratherSixtieths().orElse(0);
    }
    return sum;
  }

  /** Number of breaches of one rule in a day of visits in this order; clock rules have none. */
  static long breaches(DayRule rule, List<String> ids) {
    if (rule instanceof DayRule.PlaceInDay place) {
      return ids.stream()
          .filter(id -> place.visits().contains(id) && !stands(place, ids.indexOf(id) + 1, ids))
          .count();
    }
    if (rule instanceof DayRule.AllBefore before) {
      return ids.stream()
          .filter(id -> before.earlier().contains(id))
          .filter(id -> ids.subList(0, ids.indexOf(id)).stream().anyMatch(before.later()::contains))
          .count();
    }
    if (rule instanceof DayRule.NotRightAfter after) {
      long pairs = 0;
      for (int k = 1; k < ids.size(); k++) {
        boolean pair =
            after.visits().contains(ids.get(k)) && after.after().contains(ids.get(k - 1));
        pairs += pair ? 1 : 0;
      }
      return pairs;
    }
    if (rule instanceof DayRule.AtMost most) {
      long points = ids.stream().mapToLong(id -> most.points().getOrDefault(id, 0)).sum();
      return Math.max(0, points - most.most());
    }
    if (rule instanceof DayRule.Together together) {
      long served = served(together.visits(), ids);
      return served > 0 && served < together.visits().size() ? 1 : 0;
    }
    if (rule instanceof DayRule.NotTogether apart) {
      return Math.max(0, served(apart.visits(), ids) - 1);
    }
    return 0;
  }

  private static boolean stands(DayRule.PlaceInDay rule, int place, List<String> ids) {
    return switch (rule.where()) {
      case FIRST -> place == 1;
      case LAST -> place == ids.size();
      case NOT_FIRST -> place > 1;
      case NOT_LAST -> place < ids.size();
      case EXACTLY -> place == rule.place();
    };
  }

  private static long served(Set<String> named, List<String> ids) {
    return ids.stream().filter(named::contains).count();
  }
}
