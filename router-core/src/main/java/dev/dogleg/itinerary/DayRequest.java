package dev.dogleg.itinerary;

import dev.dogleg.travel.TravelTimes;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;

/**
 * Everything needed to plan one day. The rules that bind an answer stand in {@code docs/TIMING.md}
 * and, for the terms, in {@code docs/WEEK.md}.
 *
 * @param shift who works when
 * @param visits visits to place, at most 200, ids unique
 * @param travel travel times of all places named by shift and visits
 * @param prices what things are worth
 * @param terms rules, water, balance
 * @param seed seed of every random choice
 * @param effort limit in solver steps, 1 or more
 */
public record DayRequest(
    DayShift shift,
    List<Visit> visits,
    TravelTimes travel,
    Prices prices,
    DayTerms terms,
    long seed,
    long effort) {

  /** Most visits one request may hold. */
  public static final int MOST_VISITS = 200;

  /** Effort where nobody names one. */
  public static final long USUAL_EFFORT = 20_000_000L;

  /** Checks that ids are unique and places known. */
  public DayRequest {
    Objects.requireNonNull(shift, "shift");
    Objects.requireNonNull(travel, "travel");
    Objects.requireNonNull(prices, "prices");
    Objects.requireNonNull(terms, "terms");
    visits = List.copyOf(visits);
    if (visits.size() > MOST_VISITS) {
      throw new IllegalArgumentException(
          "at most " + MOST_VISITS + " visits, was " + visits.size());
    }
    if (effort < 1) {
      throw new IllegalArgumentException("effort must be 1 or more, was " + effort);
    }
    if (Math.max(shift.startPlace(), shift.endPlace()) >= travel.size()) {
      throw new IllegalArgumentException("the shift names a place without travel times");
    }
    for (WaterPlace stop : terms.water().map(WaterTerms::places).orElse(List.of())) {
      if (stop.place() >= travel.size()) {
        throw new IllegalArgumentException("water at an unknown place: " + stop.place());
      }
    }
    Set<String> ids = new HashSet<>();
    for (Visit visit : visits) {
      if (!ids.add(visit.id())) {
        throw new IllegalArgumentException("visit id twice: " + visit.id());
      }
      if (visit.place() >= travel.size()) {
        throw new IllegalArgumentException("visit " + visit.id() + " names an unknown place");
      }
    }
  }

  /**
   * A day without further terms.
   *
   * @param shift who works when
   * @param visits visits to place
   * @param travel travel times
   * @param prices what things are worth
   * @param seed seed of every random choice
   * @param effort limit in solver steps
   */
  public DayRequest(
      DayShift shift,
      List<Visit> visits,
      TravelTimes travel,
      Prices prices,
      long seed,
      long effort) {
    this(shift, visits, travel, prices, DayTerms.NONE, seed, effort);
  }

  /**
   * The same day asked for other visits.
   *
   * @param others visits to place
   * @return the request
   */
  public DayRequest asking(List<Visit> others) {
    return new DayRequest(shift, others, travel, prices, terms, seed, effort);
  }

  /**
   * The same visits on another shift.
   *
   * @param other who works when
   * @return the request
   */
  public DayRequest on(DayShift other) {
    return new DayRequest(other, visits, travel, prices, terms, seed, effort);
  }

  /**
   * The same day on other terms.
   *
   * @param other rules, water, balance, odds
   * @return the request
   */
  public DayRequest under(DayTerms other) {
    return new DayRequest(shift, visits, travel, prices, other, seed, effort);
  }
}
