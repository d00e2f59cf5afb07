package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a set of visits of a van-day costs at least, the set served and nobody else: every order,
 * every water stop, every second.
 *
 * <p>Maintainers: orders that serve the same visits, the same one last, with tanks alike go on
 * alike, and their costs by second are kept together. What a rule counts up to a visit depends on
 * who came before, not on their order, and on the visit right before; so it is counted where the
 * visit is made. Shapes that know only at the end ({@link #atEnd}) are counted there. A partial day
 * is dropped where {@link LeastDay} says that the rest costs too much, and seconds are where it
 * says that the rest takes too long. Not for several threads.
 */
final class SetSearch {
  /** Visits above which a set is not tried. */
  private static final int MOST_VISITS = 16;

  /** Seconds of partial days of one size that may be kept at once. */
  private static final long MOST_CELLS = 4_000_000;

  private final DayRequest request;
  private final RoomTerms terms;
  private final WaterTerms water;
  private final DaySeconds day;
  private final LeastDay leastDay;
  private final WorkLeft work;
  private final boolean sumServed;
  private final List<List<SecondWays>> ways = new ArrayList<>();
  private final List<DayRule> onTheWay = new ArrayList<>();
  private final List<DayRule> atEnd = new ArrayList<>();

  private int[] visits = {};
  private SetRests rests;
  private long need;

  SetSearch(DayRequest request, RoomTerms terms, DaySeconds day, LeastDay leastDay, WorkLeft work) {
    this.request = request;
    this.terms = terms;
    this.day = day;
    this.leastDay = leastDay;
    this.work = work;
    water = request.terms().water().filter(w -> w.most() > 0).orElse(null);
    sumServed = request.terms().balance().filter(b -> b.groomSixtieths() > 0).isPresent();
    for (DayRule rule : request.terms().rules()) {
      if (!(rule instanceof DayRule.Clock)) {
        (atEnd(rule) ? atEnd : onTheWay).add(rule);
      }
    }
    request.visits().forEach(visit -> ways.add(SecondWays.of(visit, request.terms().rules())));
  }

  /** Whether only a whole day tells if the rule is broken, or breaks it less than a part. */
  private static boolean atEnd(DayRule rule) {
    return rule instanceof DayRule.Together
        || (rule instanceof DayRule.PlaceInDay place
            && (place.where() == DayPlace.LAST || place.where() == DayPlace.NOT_LAST));
  }

  /** What tells partial days apart: visits made and the last one, tanks, stops, seconds served. */
  private record Part(int made, int last, WaterUse used, int waterStops, int served) {}

  /**
   * The least cost.
   *
   * @param set bit i for the i-th visit
   * @param below a cost from which on it does not matter
   * @return the cost where it is below, else {@link DaySeconds#NEVER}; anything where the work is
   *     spent
   */
  long least(long set, long below) {
    int n = Long.bitCount(set);
    if (n > MOST_VISITS) {
      work.spend(Long.MAX_VALUE);
      return DaySeconds.NEVER;
    }
    visits = new int[n];
    long rest = set;
    for (int k = 0; k < n; k++, rest &= rest - 1) {
      visits[k] = Long.numberOfTrailingZeros(rest);
    }
    work.spend((4L * n * n) << n);
    if (work.spent()) {
      return DaySeconds.NEVER;
    }
    need = below - leastDay.priceOfService(set);
    rests = new SetRests(request, leastDay, visits);
    if (rests.whole() >= need) {
      return DaySeconds.NEVER;
    }
    Map<Part, DaySeconds.Ready> parts = new LinkedHashMap<>();
    parts.put(new Part(0, -1, WaterUse.NONE, 0, 0), day.home());
    for (int size = 0; size < n && !work.spent(); size++) {
      Map<Part, DaySeconds.Ready> next = new LinkedHashMap<>();
      parts.forEach((part, ready) -> goOn(part, ready, next));
      next.values().removeIf(ready -> ready.least() >= DaySeconds.NEVER);
      long cells = next.values().stream().mapToLong(DaySeconds.Ready::cells).sum();
      work.spend(cells > MOST_CELLS ? Long.MAX_VALUE : 0);
      parts = next;
    }
    long least = DaySeconds.NEVER;
    for (Map.Entry<Part, DaySeconds.Ready> whole : parts.entrySet()) {
      least = Math.min(least, ended(whole.getKey(), whole.getValue()));
    }
    return least < below ? least : DaySeconds.NEVER;
  }

  private void goOn(Part part, DaySeconds.Ready ready, Map<Part, DaySeconds.Ready> next) {
    int place = part.last < 0 ? request.shift().startPlace() : visit(part.last).place();
    visits(part, ready, place, next);
    if (water == null || part.made == 0 || part.waterStops == water.most()) {
      return;
    }
    for (WaterPlace stop : water.places()) {
      DaySeconds.Ready full = new DaySeconds.Ready();
      List<SecondWays> free = List.of(SecondWays.FREE);
      int last = day.second(request.shift().latestEndSeconds());
      DaySeconds.Stop fill =
          new DaySeconds.Stop(stop.place(), stop.seconds(), free, 0, false, false, last, last);
      stay(ready, place, fill, full);
      int stops = part.waterStops + 1;
      Part filled = new Part(part.made, part.last, WaterUse.NONE, stops, part.served);
      visits(filled, full, stop.place(), next);
    }
  }

  private void visits(
      Part part, DaySeconds.Ready ready, int place, Map<Part, DaySeconds.Ready> next) {
    String before = part.last < 0 ? null : visit(part.last).id();
    long soFar = ready.least();
    for (int i = 0; i < visits.length && !work.spent(); i++) {
      Visit visit = visit(i);
      boolean tooLateFirst = visit.first() && part.made != 0;
      WaterUse used = terms.after(part.used, visit).orElse(null);
      if ((part.made >> i & 1) != 0 || tooLateFirst || used == null) {
        continue;
      }
      int made = part.made | 1 << i;
      long price = price(onTheWay, part, i);
      int latest = day.second(rests.latest(made, i));
      if (price >= DaySeconds.NEVER || latest < 0 || soFar + price + rests.cost(made, i) >= need) {
        continue;
      }
      int service = terms.served(visit, Integer.bitCount(made), before);
      int served = sumServed ? part.served + service : 0;
      Part then = new Part(made, i, used, part.waterStops, served);
      DaySeconds.Ready after = next.computeIfAbsent(then, key -> new DaySeconds.Ready());
      DaySeconds.Stop stop =
          new DaySeconds.Stop(
              visit.place(),
              service,
              ways.get(visits[i]),
              price,
              true,
              part.made != 0,
              latest,
              day.second(rests.latestOpen(made, i)));
      stay(ready, place, stop, after);
    }
  }

  private void stay(
      DaySeconds.Ready ready, int place, DaySeconds.Stop stop, DaySeconds.Ready after) {
    long worked = day.work();
    day.stay(ready, place, stop, after);
    work.spend(8 + day.work() - worked);
  }

  private Visit visit(int number) {
    return request.visits().get(visits[number]);
  }

  /** What making a visit next adds to the prices of rules; NEVER where it breaks a must. */
  private long price(List<DayRule> rules, Part part, int next) {
    if (rules.isEmpty()) {
      return 0;
    }
    List<String> ids = ids(part.made, part.last);
    List<String> more = new ArrayList<>(ids);
    more.add(visit(next).id());
    long sum = 0;
    for (DayRule rule : rules) {
      long added = count(rule, more) - count(rule, ids);
      if (added > 0 && rule.must()) {
        return DaySeconds.NEVER;
      }
      sum += added * rule.ratherSixtieths().orElse(0);
    }
    return sum;
  }

  /** Visits made in any order, but for the last. */
  private List<String> ids(int made, int last) {
    List<String> ids = new ArrayList<>();
    for (int i = 0; i < visits.length; i++) {
      if ((made >> i & 1) != 0 && i != last) {
        ids.add(visit(i).id());
      }
    }
    if (last >= 0) {
      ids.add(visit(last).id());
    }
    return ids;
  }

  private static long count(DayRule rule, List<String> ids) {
    return OrderRules.breaches(rule, ids).stream().mapToLong(RuleBreach::count).sum();
  }

  private long ended(Part part, DaySeconds.Ready ready) {
    List<String> ids = ids(part.made, part.last);
    long price = 0;
    for (DayRule rule : atEnd) {
      long count = count(rule, ids);
      if (count > 0 && rule.must()) {
        return DaySeconds.NEVER;
      }
      price += count * rule.ratherSixtieths().orElse(0);
    }
    long worked = day.work();
    long cost = day.end(ready, visit(part.last).place(), visits.length, part.served);
    work.spend(day.work() - worked);
    return cost >= DaySeconds.NEVER ? cost : cost + price;
  }
}
