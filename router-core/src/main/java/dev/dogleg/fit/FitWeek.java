package dev.dogleg.fit;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.RoomChanges;
import dev.dogleg.plan.week.WarmWeek;
import dev.dogleg.schedule.LegMemory;
import dev.dogleg.threads.FromBothEnds;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;

/**
 * A planned week, ready to be asked about newcomers.
 *
 * <p>Made once, then read only: any number of threads may ask. The map is not read again.
 */
public final class FitWeek {
  private final AskedDays calls;

  /** Without those who may be asked about. */
  private final WeekRequest week;

  private final Map<String, Integer> placed;
  private final Set<String> fixed;
  private final List<PlannedVanDay> days;

  /** What is known of the legs of each of the week's van-days, from question to question. */
  private final List<LegMemory> memories;

  /** What is kept for tier B; empty: it begins from scratch. */
  private final Optional<WarmWeek> warm;

  private FitWeek(FitWeek other, Optional<WarmWeek> warm) {
    calls = other.calls;
    week = other.week;
    placed = other.placed;
    fixed = other.fixed;
    days = other.days;
    memories = other.memories;
    this.warm = warm;
  }

  private FitWeek(AskedDays calls, Map<String, Integer> placed, Set<String> fixed) {
    this.calls = calls;
    week = calls.without();
    warm = Optional.empty();
    memories = new ArrayList<>();
    week.days().forEach(day -> memories.add(remembered(day)));
    this.placed = Map.copyOf(placed);
    this.fixed = Set.copyOf(fixed);
    days =
        FromBothEnds.of(
            week.days().size(), number -> PlannedVanDay.of(week, number, visits(number)));
  }

  private FitWeek(FitWeek before, String id, Map<String, Integer> placed, int changed) {
    calls = before.calls.and(id);
    week = calls.without();
    warm = Optional.empty();
    memories = before.memories;
    this.placed = Map.copyOf(placed);
    fixed = before.fixed;
    days =
        before.days.stream()
            .map(
                day ->
                    day.number() == changed || !sameRules(before.week.days(), day.number())
                        ? PlannedVanDay.of(week, day.number(), visits(day.number()))
                        : day)
            .toList();
  }

  /** Whether a van-day has the rules that it has while nobody calls. */
  private boolean sameRules(List<WeekDay> others, int number) {
    return week.days().get(number).terms().rules().equals(others.get(number).terms().rules());
  }

  /**
   * Prepares a week: each van-day is planned with the visits that it has.
   *
   * @param week the week's request; bookings that the plan does not have are passed over, but its
   *     rules speak of them
   * @param placed number of the van-day that serves a booking, by id; each one of its choices
   * @param fixed ids of bookings that keep their van-day in tier B: told and locked ones
   * @return the prepared week
   * @throws IllegalArgumentException where a booking is unknown or has no such choice, or where a
   *     van-day cannot serve what it has
   */
  public static FitWeek of(WeekRequest week, Map<String, Integer> placed, Set<String> fixed) {
    return of(week, placed, fixed, Set.of());
  }

  /**
   * Prepares a week in which newcomers stand whom rules know already. Each is asked about as if the
   * others had not called: until then a group that must be served together is whole without them.
   *
   * @param week the week's request
   * @param placed number of the van-day that serves a booking, by id; each one of its choices
   * @param fixed ids of bookings that keep their van-day in tier B: told and locked ones
   * @param asked ids of bookings that may be asked about; none is placed
   * @return the prepared week
   * @throws IllegalArgumentException where a booking is unknown or has no such choice, or where a
   *     van-day cannot serve what it has
   */
  public static FitWeek of(
      WeekRequest week, Map<String, Integer> placed, Set<String> fixed, Set<String> asked) {
    for (String id : asked) {
      if (placed.containsKey(id)) {
        throw new IllegalArgumentException("already in the plan: " + id);
      }
    }
    Map<String, Integer> open = new HashMap<>(placed);
    for (WeekBooking booking : week.bookings()) {
      Integer day = open.remove(booking.id());
      if (day != null && on(booking, day).isEmpty()) {
        throw new IllegalArgumentException("booking " + booking.id() + " may not be on " + day);
      }
    }
    if (!open.isEmpty()) {
      throw new IllegalArgumentException("bookings that the week has not: " + open.keySet());
    }
    return new FitWeek(new AskedDays(week, asked), placed, fixed);
  }

  /**
   * Prepares a week as it was planned.
   *
   * @param week the week's request
   * @param plan its plan, of which the days of the bookings are kept
   * @param fixed ids of bookings that keep their van-day in tier B
   * @return the prepared week
   */
  public static FitWeek of(WeekRequest week, WeekPlan plan, Set<String> fixed) {
    Map<String, Integer> placed = new TreeMap<>();
    for (int day = 0; day < plan.days().size(); day++) {
      int number = day;
      plan.days().get(day).stops().stream()
          .filter(stop -> stop.kind() == PlannedStop.Kind.VISIT)
          .forEach(stop -> placed.put(stop.visitId(), number));
    }
    return of(week, placed, fixed);
  }

  /**
   * The same week, ready for many questions of tier B: it is bounded here once, so that each of
   * them costs a part of what planning the week from scratch does. Answers are the same, but for
   * weeks of equal cost.
   *
   * <p>Questions with van-days of their own still plan from scratch, and so do those for which what
   * is kept does not reach.
   *
   * @param effort limit of this in solver steps, 1 or more
   * @return the week; as it was where the effort did not suffice
   */
  public FitWeek readyForOtherDays(long effort) {
    return new FitWeek(this, OtherDaysFit.warm(week, placed, fixed, effort));
  }

  /**
   * This week without one of its bookings, which may then be asked about like a newcomer.
   *
   * @param bookingId a booking that the plan has
   * @return the week; only the van-day that had the booking, and days whose rules it changes, are
   *     planned anew
   * @throws IllegalArgumentException where the plan has no such booking
   */
  public FitWeek without(String bookingId) {
    Map<String, Integer> others = new HashMap<>(placed);
    Integer day = others.remove(bookingId);
    if (day == null) {
      throw new IllegalArgumentException("not in the plan: " + bookingId);
    }
    return new FitWeek(this, bookingId, others, day);
  }

  /** {@return the week's van-days as they stand without any newcomer} */
  public List<PlannedVanDay> days() {
    return days;
  }

  /**
   * Asks.
   *
   * @param question the question
   * @return the answer
   * @throws IllegalArgumentException where the question's van-days are not the week's, or the
   *     newcomer is in the plan already
   */
  public FitAnswer ask(FitQuestion question) {
    List<WeekDay> asked = days(question);
    check(question, asked);
    List<DayFit> fits = new ArrayList<>();
    List<DayFit> noes = new ArrayList<>();
    for (DayChoice choice : question.newcomer().choices()) {
      DayFit fit = fit(question, asked, choice);
      (fit.fits() ? fits : noes).add(fit);
    }
    fits.sort(Comparator.comparingLong(DayFit::extraCostSixtieths).thenComparingInt(DayFit::day));
    boolean everyDayFull = fits.isEmpty();
    List<NoDay> noDays = noes.stream().map(no -> no.noDay(everyDayFull)).toList();
    boolean tierB =
        switch (question.otherDays()) {
          case NEVER -> false;
          case WHERE_NO_DAY_FITS -> everyDayFull;
          case ALWAYS -> true;
        };
    return new FitAnswer(
        question.newcomer().id(),
        fits.stream().limit(question.top()).map(DayFit::offer).toList(),
        fits.stream().skip(question.top()).map(DayFit::day).toList(),
        noDays,
        tierB ? Optional.of(otherDays(question, asked, fits)) : Optional.empty());
  }

  /**
   * Why a van-day has no room, which {@link #ask} works out only where none has.
   *
   * @param question a question
   * @param day number of a van-day that its answer names among those without room
   * @return the same with reason and smallest change
   * @throws IllegalArgumentException where the newcomer may not be on that van-day, or fits there
   */
  public NoDay why(FitQuestion question, int day) {
    List<WeekDay> asked = days(question);
    check(question, asked);
    Optional<DayFit> fit = on(question.newcomer(), day).map(choice -> fit(question, asked, choice));
    return fit.filter(one -> !one.fits())
        .map(one -> one.noDay(true))
        .orElseThrow(() -> new IllegalArgumentException("has room, or is not asked of: " + day));
  }

  private List<WeekDay> days(FitQuestion question) {
    return question.days().isEmpty() ? calls.days(question.newcomer().id()) : question.days();
  }

  private DayFit fit(FitQuestion question, List<WeekDay> asked, DayChoice choice) {
    WeekDay day = asked.get(choice.day());
    LegMemory legs = question.days().isEmpty() ? memories.get(choice.day()) : RoomChanges.legs(day);
    return DayFit.of(week, day, legs, days.get(choice.day()), choice);
  }

  private WeekOffer otherDays(FitQuestion question, List<WeekDay> asked, List<DayFit> fits) {
    OptionalInt best = fits.stream().mapToInt(DayFit::day).findFirst();
    boolean asPlanned =
        IntStream.range(0, asked.size()).allMatch(number -> sameRules(asked, number));
    Optional<WarmWeek> kept = question.days().isEmpty() && asPlanned ? warm : Optional.empty();
    return new OtherDaysFit(week, asked, placed, fixed, days, kept).solve(question, best);
  }

  /** Van-days of the same travel times and span of the day remember together. */
  private LegMemory remembered(WeekDay day) {
    return IntStream.range(0, memories.size())
        .filter(
            other -> {
              WeekDay before = week.days().get(other);
              return before.travel() == day.travel()
                  && before.shift().hours().equals(day.shift().hours())
                  && before.shift().overtimeSeconds() == day.shift().overtimeSeconds();
            })
        .mapToObj(memories::get)
        .findFirst()
        .orElseGet(() -> RoomChanges.legs(day));
  }

  private void check(FitQuestion question, List<WeekDay> asked) {
    if (placed.containsKey(question.newcomer().id())) {
      throw new IllegalArgumentException("already in the plan: " + question.newcomer().id());
    }
    boolean own = question.days().isEmpty();
    boolean same = own || asked.size() == week.days().size();
    for (int day = 0; !own && same && day < asked.size(); day++) {
      same =
          asked.get(day).shift().equals(week.days().get(day).shift())
              && asked.get(day).travel().size() >= week.days().get(day).travel().size();
    }
    if (!same) {
      throw new IllegalArgumentException("the question's van-days are not those of the week");
    }
  }

  private List<Visit> visits(int number) {
    return week.bookings().stream()
        .filter(booking -> placed.getOrDefault(booking.id(), -1) == number)
        .map(booking -> on(booking, number).orElseThrow().visit())
        .map(Visit::mustServe)
        .toList();
  }

  /** The choice of a booking on a van-day. */
  static Optional<DayChoice> on(WeekBooking booking, int day) {
    return booking.choices().stream().filter(choice -> choice.day() == day).findFirst();
  }
}
