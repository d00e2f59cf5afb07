package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.Changeover;
import dev.dogleg.itinerary.DayRule.PlaceMinutes;
import dev.dogleg.itinerary.Visit;
import java.util.ArrayList;
import java.util.List;

/**
 * How long a visit is served under a day's rules, by its place in the day and the visit before it.
 *
 * <p>Maintainers: held at {@link #MOST_SECONDS} after every step, so that neither a long list of
 * rules nor a day of 200 such visits overflows; a service longer than two days is too long anyway.
 */
final class ServedSeconds {
  /** Two days are 172,800 s. */
  private static final int MOST_SECONDS = 5_000_000;

  private final List<PlaceMinutes> byPlace = new ArrayList<>();
  private final List<Changeover> changeovers = new ArrayList<>();

  ServedSeconds(List<DayRule> rules) {
    for (DayRule rule : rules) {
      if (rule instanceof PlaceMinutes minutes) {
        byPlace.add(minutes);
      } else if (rule instanceof Changeover changeover) {
        changeovers.add(changeover);
      }
    }
  }

  /**
   * Service seconds.
   *
   * @param visit who is served
   * @param place its place in the day, from 1
   * @param before id of the visit directly before; null for the first
   */
  int of(Visit visit, int place, String before) {
    return held(ofPlace(visit, place) + changeover(visit.id(), before));
  }

  /** Service seconds for a place, without changeovers. */
  long ofPlace(Visit visit, int place) {
    long seconds = visit.serviceSeconds();
    for (PlaceMinutes rule : byPlace) {
      if (speaksOf(rule, visit, place)) {
        long times = Math.floorDiv(seconds * rule.timesThousandths() + 500, 1000);
        seconds = held(times + rule.plusSeconds());
      }
    }
    return seconds;
  }

  /** Seconds of cleaning between two visits. */
  long changeover(String id, String before) {
    long seconds = 0;
    for (Changeover rule : changeovers) {
      seconds += speaksOf(rule, id, before) ? rule.seconds() : 0;
    }
    return held(seconds);
  }

  /** Names of the rules that speak of a visit at its place, for sentences. */
  String names(Visit visit, int place, String before) {
    List<String> names = new ArrayList<>();
    byPlace.stream().filter(r -> speaksOf(r, visit, place)).forEach(r -> names.add(r.name()));
    changeovers.stream()
        .filter(r -> speaksOf(r, visit.id(), before))
        .forEach(r -> names.add(r.name()));
    return String.join(", ", names);
  }

  private static boolean speaksOf(PlaceMinutes rule, Visit visit, int place) {
    return rule.visits().contains(visit.id())
        && rule.fromPlace() <= place
        && place <= rule.toPlace();
  }

  private static boolean speaksOf(Changeover rule, String id, String before) {
    return before != null && rule.to().contains(id) && rule.from().contains(before);
  }

  private static int held(long seconds) {
    return (int) Math.max(0, Math.min(MOST_SECONDS, seconds));
  }
}
