package dev.dogleg.plan.late;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.plan.late.RestRequest.Widths;
import dev.dogleg.schedule.DayModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Finds the least lateness of a rest of a day over every order, and every way to spread it over the
 * promises.
 *
 * <p>Maintainers: dynamic programming over (visits served, last visit, break taken or not), level
 * by level. Of one order, place of the break, water stops and windows the earliest timing makes
 * every arrival least (drives are first in, first out), so it breaks least; every timing that
 * breaks as little is late by just as much at the same doors, since no door can be less late. So a
 * label needs its earliest readiness only, and each way to be late (seconds by door) that reaches
 * the least stands for all timings that do: the planner then finds the cheapest of them with the
 * windows so widened. A label is dropped only where another is as early and breaks less, or breaks
 * the same at the same doors. One thread.
 */
final class LateSearch {
  /** Most labels kept of one size of sets; beyond it the search is not complete. */
  static final int WIDEST = 50_000;

  private final DayModel day;
  private final LateTerms late;
  private final LateStep step;
  private final int widest;
  private final long booked;
  private final int gone;
  private final Map<Way, LateLabel> ways = new LinkedHashMap<>();
  private Lateness least;
  private boolean complete = true;
  private Map<State, List<LateLabel>> level = new LinkedHashMap<>();

  /** Visits served, the last of them, and whether the break was taken. */
  private record State(long served, int last, boolean breakTaken) {}

  /** Booked visits served, and by how many seconds each visit and the break are late. */
  private record Way(long booked, List<Integer> late) {}

  /**
   * What came of it.
   *
   * @param lateness the least
   * @param candidates ways to reach it
   * @param complete whether every order was looked at
   */
  record Found(Lateness lateness, List<Candidate> candidates, boolean complete) {}

  /**
   * A way to be so late.
   *
   * @param booked ids of the booked visits served, the anchor not among them
   * @param widths how wide the promises are then
   * @param order ids of an order that does it, anchor and waiting list included
   */
  record Candidate(Set<String> booked, Widths widths, List<String> order) {}

  private LateSearch(
      RestRequest rest, DayRequest open, int gone, Optional<Lateness> known, int widest) {
    day = DayModel.of(open);
    late = new LateTerms(day, rest);
    List<WaterPlace> water = open.terms().water().map(WaterTerms::places).orElse(List.of());
    step = new LateStep(day, late, day.steps().mostStops() > 0 ? water : List.of());
    this.gone = gone;
    this.widest = widest;
    least = known.orElse(null);
    booked =
        IntStream.range(0, day.size())
            .filter(visit -> day.visit(visit).booked())
            .mapToLong(visit -> 1L << visit)
            .sum();
  }

  /**
   * Searches.
   *
   * @param rest the rest of the day
   * @param ids visits asked for besides the anchor
   * @param keepOrder whether the planned order stays
   * @param known a lateness that can be had, if one is known; more is of no interest
   * @param widest most labels of one size of sets
   * @return ways to the least lateness; none where all that was found is above {@code known}
   */
  static Found of(
      RestRequest rest, Set<String> ids, boolean keepOrder, Optional<Lateness> known, int widest) {
    DayRequest open = mustOnly(rest.request(ids, rest.open(), keepOrder));
    Set<String> asked = open.visits().stream().map(Visit::id).collect(Collectors.toSet());
    // Whom the limits leave no second for is not even in the request: left out all the same.
    long gone =
        rest.left().stream()
            .filter(visit -> visit.booked() && ids.contains(visit.id()))
            .filter(visit -> !asked.contains(visit.id()))
            .count();
    return new LateSearch(rest, open, (int) gone, known, widest).run(rest);
  }

  /** Liked hours and prices break no promise. */
  private static DayRequest mustOnly(DayRequest asked) {
    List<DayRule> must = asked.terms().rules().stream().filter(DayRule::must).toList();
    return asked.under(new DayTerms(must, asked.terms().water(), asked.terms().balance()));
  }

  private Found run(RestRequest rest) {
    int n = day.size();
    LateLabel start =
        new LateLabel(
            null, 0, n, false, day.from(), day.latestEnd(), 0, 0, 0, 0, 0, new int[n + 1]);
    String anchor = rest.anchorId().orElse(null);
    if (anchor == null) {
      offer(start);
    }
    for (int next = 0; next < n; next++) {
      if (anchor == null || day.visit(next).id().equals(anchor)) {
        step.extend(start, next, this::keep);
      }
    }
    while (!level.isEmpty()) {
      List<LateLabel> now = narrowed();
      level = new LinkedHashMap<>();
      now.forEach(this::expand);
    }
    return new Found(least, candidates(anchor), complete);
  }

  private void expand(LateLabel label) {
    if (step.mayEnd(label)) {
      offer(label);
    }
    for (int next = 0; next < day.size(); next++) {
      if ((label.served >> next & 1) == 0) {
        step.extend(label, next, this::keep);
      }
    }
  }

  /** Takes a whole rest of a day where none is less late. */
  private void offer(LateLabel label) {
    int leftOut = gone + Long.bitCount(booked & ~label.served);
    Lateness lateness = label.lateness(leftOut);
    int better = least == null ? -1 : lateness.compareTo(least);
    if (better < 0) {
      least = lateness;
      ways.clear();
    }
    if (better <= 0) {
      List<Integer> by = IntStream.of(label.late).boxed().toList();
      ways.putIfAbsent(new Way(label.served & booked, by), label);
    }
  }

  private void keep(LateLabel label) {
    // More is broken than need be, even if nobody is left out.
    if (least != null && least.leftOut() == 0 && label.lateness(0).compareTo(least) > 0) {
      return;
    }
    State state = new State(label.served, label.visit, label.breakTaken);
    List<LateLabel> others = level.computeIfAbsent(state, key -> new ArrayList<>(2));
    for (LateLabel other : others) {
      if (other.makesUseless(label)) {
        return;
      }
    }
    others.removeIf(label::makesUseless);
    others.add(label);
  }

  /** The labels of a level in a fixed order; where there are too many, those that break least. */
  private List<LateLabel> narrowed() {
    List<LateLabel> all = new ArrayList<>();
    level.values().forEach(all::addAll);
    if (all.size() <= widest) {
      return all;
    }
    complete = false;
    all.sort(
        Comparator.comparing((LateLabel one) -> one, LateLabel::compareBroken)
            .thenComparingInt(one -> one.ready));
    return all.subList(0, widest);
  }

  private List<Candidate> candidates(String anchor) {
    List<Candidate> candidates = new ArrayList<>();
    ways.forEach(
        (way, label) -> {
          Set<String> served = new TreeSet<>();
          for (int visit = 0; visit < day.size(); visit++) {
            String id = day.visit(visit).id();
            if ((way.booked >> visit & 1) != 0 && !id.equals(anchor)) {
              served.add(id);
            }
          }
          List<String> order =
              IntStream.of(label.order()).mapToObj(visit -> day.visit(visit).id()).toList();
          candidates.add(new Candidate(served, late.widths(day, label.late), order));
        });
    return candidates;
  }
}
