package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What each set of up to so many visits of a van-day costs at least, the set served and nobody
 * else: every order, every water stop, every second. Not for several threads.
 */
final class SetCosts {
  /** Visits of a van-day above which no set is tried: a set is a word of bits. */
  private static final int MOST_VISITS = 62;

  private final DayRequest request;
  private final List<DayRule> rules;
  private final RoomTerms terms;
  private final WaterTerms water;
  private final DaySeconds day;
  private final List<List<SecondWays>> ways = new ArrayList<>();
  private final List<DaySeconds.Ready> spare = new ArrayList<>();
  private final List<Visit> order = new ArrayList<>();
  private Map<Long, Long> found = new HashMap<>();
  private int most;
  private long limit;
  private boolean deeper;

  SetCosts(DayRequest request) {
    this.request = request;
    rules = request.terms().rules();
    terms = RoomTerms.of(request);
    water = request.terms().water().filter(w -> w.most() > 0).orElse(null);
    day = new DaySeconds(request);
    request.visits().forEach(visit -> ways.add(SecondWays.of(visit, rules)));
  }

  /**
   * The costs of the sets of a van-day.
   *
   * @param bySet least cost by set, bit i for the i-th visit; sets that no day serves are missing
   * @param size up to how many visits sets were tried
   * @param all whether no larger set can be served
   */
  record Tried(Map<Long, Long> bySet, int size, boolean all) {}

  /**
   * Tries larger and larger sets.
   *
   * @param work cells that may be looked at; the size at which it is spent counts as not tried
   * @return what was found
   */
  Tried upTo(long work) {
    limit = day.work() + work;
    Map<Long, Long> before = Map.of();
    int n = request.visits().size();
    for (int size = 1; n <= MOST_VISITS; size++) {
      found = new HashMap<>();
      most = size;
      deeper = false;
      goOn(day.home(), request.shift().startPlace(), 0, WaterUse.NONE, 0);
      if (day.work() > limit) {
        return new Tried(before, size - 1, false);
      }
      if (!deeper || size >= n) {
        return new Tried(found, Math.min(size, n), true);
      }
      before = found;
    }
    return new Tried(before, 0, false);
  }

  long work() {
    return day.work();
  }

  private DaySeconds.Ready borrow() {
    return spare.isEmpty() ? day.home() : spare.remove(spare.size() - 1);
  }

  private void goOn(DaySeconds.Ready ready, int place, long set, WaterUse used, int waterStops) {
    if (order.size() == most || day.work() > limit) {
      deeper |= order.size() == most;
      return;
    }
    visits(ready, place, set, used, waterStops);
    if (water == null || order.isEmpty() || waterStops == water.most()) {
      return;
    }
    for (WaterPlace stop : water.places()) {
      DaySeconds.Ready full = borrow();
      List<SecondWays> free = List.of(SecondWays.FREE);
      if (day.stay(ready, place, stop.place(), stop.seconds(), free, false, false, full)) {
        visits(full, stop.place(), set, WaterUse.NONE, waterStops + 1);
      }
      spare.add(full);
    }
  }

  private void visits(DaySeconds.Ready ready, int place, long set, WaterUse used, int waterStops) {
    for (int i = 0; i < request.visits().size() && day.work() <= limit; i++) {
      Visit visit = request.visits().get(i);
      boolean tooLateFirst = visit.first() && !order.isEmpty();
      WaterUse full = terms.after(used, visit).orElse(null);
      if ((set >> i & 1) != 0 || tooLateFirst || full == null) {
        continue;
      }
      String before = order.isEmpty() ? null : order.get(order.size() - 1).id();
      order.add(visit);
      int service = terms.served(visit, order.size(), before);
      DaySeconds.Ready next = borrow();
      boolean later = order.size() > 1;
      if (day.stay(ready, place, visit.place(), service, ways.get(i), true, later, next)) {
        end(next, visit.place(), set | 1L << i);
        goOn(next, visit.place(), set | 1L << i, full, waterStops);
      }
      spare.add(next);
      order.remove(order.size() - 1);
    }
  }

  private void end(DaySeconds.Ready ready, int place, long set) {
    List<String> ids = order.stream().map(Visit::id).toList();
    if (!terms.broken(ids).isEmpty()) {
      return;
    }
    long served = 0;
    for (int k = 0; k < ids.size(); k++) {
      served += terms.served(order.get(k), k + 1, k == 0 ? null : ids.get(k - 1));
    }
    long cost = day.end(ready, place, ids.size(), served);
    if (cost < DaySeconds.NEVER) {
      found.merge(set, cost + rulePrices(ids), Math::min);
    }
  }

  private long rulePrices(List<String> ids) {
    long sum = 0;
    for (DayRule rule : rules) {
      if (!rule.must() && !(rule instanceof DayRule.Clock)) {
        long count = OrderRules.breaches(rule, ids).stream().mapToLong(RuleBreach::count).sum();
        sum += count * rule.ratherSixtieths().orElse(0);
      }
    }
    return sum;
  }
}
