package dev.dogleg.plan.late;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * The rest of a day as a day of its own: it starts now where the van is, with the last visit done
 * (the <i>anchor</i>) as its first, so that breaks and rules on neighbours see it.
 *
 * <p>Overtime is open: who is late still serves the booked dogs. Promises and the break's span are
 * as wide as asked for.
 */
final class RestRequest {
  /** Name of the rules that keep the planned order. */
  static final String ORDER_KEPT = "the planned order";

  private static final int OPEN_OVERTIME = 43_200;

  private final RestOfDay rest;
  private final Optional<Visit> anchor;
  private final List<Visit> left;
  private final Map<String, Promise> promises = new HashMap<>();
  private final DayShift shift;
  private final RestRules rules;
  private final Optional<WaterTerms> water;
  private final Optional<BalanceTerms> balance;

  RestRequest(RestOfDay rest) {
    this.rest = rest;
    Set<String> open = rest.left().stream().map(Visit::id).collect(Collectors.toSet());
    rest.promises().stream()
        .filter(promise -> open.contains(promise.visitId()))
        .forEach(promise -> promises.put(promise.visitId(), promise));
    anchor = anchor();
    // Whoever must be the first of the day can be so only where nobody was.
    left =
        rest.left().stream().map(visit -> anchor.isPresent() ? visit.first(false) : visit).toList();
    shift = shift();
    rules = new RestRules(rest.day().terms().rules(), rest.done(), rest.cancelled());
    water = rest.day().terms().water().map(this::water);
    balance = rest.day().terms().balance().map(this::balance);
  }

  private Optional<Visit> anchor() {
    if (rest.done().isEmpty()) {
      return Optional.empty();
    }
    int now = rest.nowSeconds();
    int service = Math.max(0, rest.readySeconds().orElse(now) - now);
    return Optional.of(
        Visit.booked(rest.done().get(rest.done().size() - 1), rest.place(), service)
            .arriving(List.of(new TimeWindow(now, now)))
            .first(true));
  }

  private DayShift shift() {
    DayShift whole = rest.day().shift();
    int now = rest.nowSeconds();
    int from = anchor.isPresent() ? now : Math.max(now, whole.hours().fromSeconds());
    return new DayShift(
        whole.groomerId(),
        whole.vanId(),
        whole.day(),
        rest.place(),
        whole.endPlace(),
        new TimeWindow(from, Math.max(from, whole.hours().toSeconds())),
        OPEN_OVERTIME,
        rest.breakTaken() ? Optional.empty() : whole.breakRule());
  }

  private WaterTerms water(WaterTerms whole) {
    Map<String, WaterUse> uses = new TreeMap<>(whole.uses());
    uses.keySet().removeAll(rest.done());
    anchor.ifPresent(
        visit ->
            uses.put(
                visit.id(),
                new WaterUse(
                    Math.min(rest.waterUsed().freshMillilitres(), whole.tank().freshMillilitres()),
                    Math.min(rest.waterUsed().greyMillilitres(), whole.tank().greyMillilitres()))));
    return new WaterTerms(
        whole.tank(), uses, whole.places(), Math.max(0, whole.most() - rest.waterStops()));
  }

  private BalanceTerms balance(BalanceTerms whole) {
    int served =
        rest.day().visits().stream()
            .filter(visit -> rest.done().contains(visit.id()))
            .mapToInt(Visit::serviceSeconds)
            .sum();
    int groom = whole.groomSeconds() - served + anchor.map(Visit::serviceSeconds).orElse(0);
    return new BalanceTerms(
        Math.max(0, groom), whole.groomSixtieths(), whole.endSeconds(), whole.endSixtieths());
  }

  /**
   * How wide the promises are.
   *
   * @param seconds by visit: until when its last window is open; none where it is as promised
   * @param breakUntil until when the break may start; where it is earlier than its span's end
   *     nothing changes
   */
  record Widths(Map<String, Integer> seconds, int breakUntil) {
    /** Everything as promised. */
    static final Widths AS_PROMISED = new Widths(Map.of(), 0);

    /** Copies the map. */
    Widths {
      seconds = Map.copyOf(seconds);
    }
  }

  /** {@return widths that break whatever may be broken} */
  Widths open() {
    Map<String, Integer> all = new HashMap<>();
    promises.keySet().forEach(id -> all.put(id, TimeWindow.DAY_END));
    return new Widths(all, TimeWindow.DAY_END);
  }

  /**
   * A request.
   *
   * @param ids visits asked for besides the anchor; those whose limits leave nothing are passed
   *     over
   * @param widths how wide the promises are
   * @param keepOrder whether the planned order stays
   * @return the rest as a day
   */
  DayRequest request(Set<String> ids, Widths widths, boolean keepOrder) {
    List<Visit> visits = new ArrayList<>();
    anchor.ifPresent(visits::add);
    for (Visit visit : left) {
      if (ids.contains(visit.id())) {
        List<TimeWindow> windows = windows(visit, widths);
        if (!windows.isEmpty()) {
          visits.add(visit.arriving(windows));
        }
      }
    }
    List<DayRule> all = new ArrayList<>(rules.rules());
    if (keepOrder) {
      all.addAll(orderKept());
    }
    return new DayRequest(
        breakUntil(widths.breakUntil()),
        visits,
        rest.day().travel(),
        rest.day().prices(),
        new DayTerms(all, water, balance, rest.day().terms().odds()),
        rest.day().seed(),
        rest.day().effort());
  }

  private DayShift breakUntil(int until) {
    return new DayShift(
        shift.groomerId(),
        shift.vanId(),
        shift.day(),
        shift.startPlace(),
        shift.endPlace(),
        shift.hours(),
        shift.overtimeSeconds(),
        shift
            .breakRule()
            .map(
                rule ->
                    new BreakRule(
                        rule.lengthSeconds(),
                        new TimeWindow(
                            rule.startWithin().fromSeconds(),
                            Math.max(rule.startWithin().toSeconds(), until)))));
  }

  /** What is promised and what may not slide, at the same time. */
  private List<TimeWindow> windows(Visit visit, Widths widths) {
    Promise promise = promises.get(visit.id());
    if (promise == null) {
      return visit.arriveWithin();
    }
    List<TimeWindow> both = new ArrayList<>();
    for (TimeWindow told : promise.until(widths.seconds().getOrDefault(visit.id(), 0))) {
      for (TimeWindow hard : visit.arriveWithin()) {
        int from = Math.max(told.fromSeconds(), hard.fromSeconds());
        int to = Math.min(told.toSeconds(), hard.toSeconds());
        if (from <= to) {
          both.add(new TimeWindow(from, to));
        }
      }
    }
    return both;
  }

  private List<DayRule> orderKept() {
    List<String> ids = new ArrayList<>(rest.order());
    Set<String> known = new TreeSet<>();
    left.forEach(visit -> known.add(visit.id()));
    ids.retainAll(known);
    List<DayRule> kept = new ArrayList<>();
    for (int k = 0; k + 1 < ids.size(); k++) {
      Set<String> later = new TreeSet<>(ids.subList(k + 1, ids.size()));
      kept.add(new DayRule.AllBefore(ORDER_KEPT, OptionalLong.empty(), Set.of(ids.get(k)), later));
    }
    return kept;
  }

  /** {@return the rest of the day as told} */
  RestOfDay rest() {
    return rest;
  }

  /** {@return visits that are left, the anchor not among them} */
  List<Visit> left() {
    return left;
  }

  /** {@return id of the anchor, or empty where nothing is done} */
  Optional<String> anchorId() {
    return anchor.map(Visit::id);
  }

  /** The promise of a visit that is left, if it has one. */
  Optional<Promise> promise(String visitId) {
    return Optional.ofNullable(promises.get(visitId));
  }

  /**
   * What a planned arrival does with the promise of its visit.
   *
   * @param asked the visit as the plan's request has it
   * @param arriveSeconds arrival at its door
   * @return kept or late; empty where nothing was promised
   */
  Optional<PromiseKept> kept(Visit asked, int arriveSeconds) {
    int opens =
        asked.arriveWithin().stream()
            .filter(window -> arriveSeconds <= window.toSeconds())
            .mapToInt(TimeWindow::fromSeconds)
            .findFirst()
            .orElse(arriveSeconds);
    return promise(asked.id())
        .map(
            promise ->
                new PromiseKept(
                    promise,
                    arriveSeconds,
                    Math.max(0, Math.max(arriveSeconds, opens) - promise.endSeconds())));
  }

  /** {@return names of must rules that cannot hold any more} */
  List<String> gone() {
    List<String> names = new ArrayList<>(rules.gone());
    if (anchor.isPresent()) {
      rest.left().stream().filter(Visit::first).forEach(visit -> names.add("first: " + visit.id()));
    }
    return names;
  }
}
