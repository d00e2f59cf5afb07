package dev.dogleg.schedule;

import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.DayPlace;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * What a day's rules say of the next step, from the visits served and the last of them alone.
 *
 * <p>Maintainers: every shape but the clock's is compiled to pairs, places and masks, once per day.
 * A step is {@code last -> next}, where {@code last = n} is the start place; sets are rows of words
 * (see {@link VisitMask}) of the visits served before {@code next}. Prices are in sixtieths,
 * unscaled. Immutable.
 */
final class DayRules {
  /** A price for the step to one of {@code next} where one of {@code before} was served. */
  record Late(VisitMask next, VisitMask before, long price) {}

  /** Load points above the free ones, priced. */
  record Load(LoadLimit limit, long price) {}

  /** All or none; {@code strangers} are named but not asked of this day. */
  record Company(VisitMask named, boolean strangers, boolean must, long price) {
    boolean splits(long[] rows, int at) {
      int served = named.count(rows, at);
      return served > 0 && (strangers || served < named.size());
    }

    /** Whether one set may end split where another, going on alike, does not. */
    boolean splitsAhead(long[] one, int at, long[] other, int otherAt, long[] open, int openAt) {
      boolean servedThere = named.meets(other, otherAt);
      if (strangers || !servedThere) {
        return !servedThere
            && named.meets(one, at)
            && (strangers || named.count(one, at) < named.size());
      }
      return !(named.meets(one, at) && named.covers(one, at, other, otherAt))
          && named.within(other, otherAt, open, openAt);
    }
  }

  /** At most one. */
  private record Alone(VisitMask named, boolean must, long price) {}

  /** More than any price. */
  static final long FORBIDDEN = Long.MAX_VALUE / 4;

  private final int n;
  private final boolean any;
  private final boolean[] apart;
  private final long[] pairPrice;
  private final int[] exactly;
  private final long[] placePrice;

  /** What a visit pays wherever it stands; part of its place prices. */
  private final long[] own;

  private final VisitMask[] blocking;
  private final int[] everBlocked;
  private final boolean[] notLast;
  private final long[] lastPrice;
  private final List<LoadLimit> loads = new ArrayList<>();
  private final List<Load> pricedLoads = new ArrayList<>();
  private final List<Late> late = new ArrayList<>();
  private final List<Company> company = new ArrayList<>();
  private final List<Alone> alone = new ArrayList<>();

  /**
   * Compiles rules.
   *
   * @param ids ids of the day's visits, by number
   * @param rules all rules of the day
   */
  DayRules(List<String> ids, List<DayRule> rules) {
    n = ids.size();
    any = !rules.isEmpty();
    int wide = any ? n : 0;
    apart = new boolean[(wide + 1) * (wide + 2)];
    pairPrice = new long[(wide + 1) * (wide + 2)];
    exactly = new int[wide];
    placePrice = new long[wide * (wide + 1)];
    own = new long[wide];
    blocking = new VisitMask[wide];
    notLast = new boolean[wide];
    lastPrice = new long[wide];
    for (DayRule rule : rules) {
      long price = rule.ratherSixtieths().orElse(0);
      if (rule instanceof DayRule.PlaceInDay place) {
        place(place, VisitMask.of(ids, place.visits()), price);
      } else if (rule instanceof DayRule.AllBefore before) {
        before(VisitMask.of(ids, before.earlier()), VisitMask.of(ids, before.later()), rule);
      } else if (rule instanceof DayRule.NotTogether one) {
        VisitMask named = VisitMask.of(ids, one.visits());
        alone.add(new Alone(named, rule.must(), price));
        before(named, named, rule);
      } else if (rule instanceof DayRule.NotRightAfter after) {
        after(VisitMask.of(ids, after.after()), VisitMask.of(ids, after.visits()), rule);
      } else if (rule instanceof DayRule.AtMost most) {
        load(new LoadLimit(most, ids), rule);
      } else if (rule instanceof DayRule.Together together) {
        together(VisitMask.of(ids, together.visits()), together.visits().size(), rule);
      }
    }
    everBlocked = IntStream.range(0, wide).filter(v -> blocking[v] != null).toArray();
  }

  private void together(VisitMask named, int wanted, DayRule rule) {
    boolean strangers = named.size() < wanted;
    long price = rule.ratherSixtieths().orElse(0);
    if (strangers && !rule.must() && named.size() == 1) {
      // Its company can not come: the price is its own, and whoever looks ahead knows it at once.
      for (int v = 0; v < n; v++) {
        own[v] += named.holds(v) ? price : 0;
        for (int place = 1; named.holds(v) && place <= n; place++) {
          placePrice[v * (n + 1) + place] += price;
        }
      }
      return;
    }
    company.add(new Company(named, strangers, rule.must(), price));
    for (int i = 0; i < n && strangers && rule.must(); i++) {
      if (named.holds(i)) {
        never(i);
      }
    }
  }

  private void place(DayRule.PlaceInDay rule, VisitMask named, long price) {
    int wanted = rule.where() == DayPlace.FIRST ? 1 : rule.place();
    for (int v = 0; v < n; v++) {
      if (!named.holds(v)) {
        continue;
      }
      switch (rule.where()) {
        case FIRST, EXACTLY -> {
          for (int place = 1; place <= n; place++) {
            placePrice[v * (n + 1) + place] += place == wanted ? 0 : price;
          }
          if (rule.must()) {
            exactly(v, wanted);
          }
        }
        case NOT_FIRST -> pair(n, v, rule.must(), price);
        case LAST -> {
          for (int next = 0; next < n; next++) {
            pair(v, next, rule.must(), price);
          }
        }
        case NOT_LAST -> {
          pair(v, n + 1, rule.must(), 0);
          notLast[v] |= rule.must();
          lastPrice[v] += price;
        }
      }
    }
  }

  private void exactly(int v, int place) {
    if (place > n || (exactly[v] != 0 && exactly[v] != place)) {
      never(v);
    }
    exactly[v] = place;
    for (int last = 0; last <= n; last++) {
      pair(last, v, (last == n) != (place == 1), 0);
    }
  }

  private void pair(int last, int next, boolean must, long price) {
    apart[last * (n + 2) + next] |= must;
    pairPrice[last * (n + 2) + next] += price;
  }

  private void never(int v) {
    for (int other = 0; other <= n; other++) {
      pair(other, v, true, 0);
    }
    for (int next = 0; next < n + 2; next++) {
      pair(v, next, true, 0);
    }
  }

  private void before(VisitMask next, VisitMask before, DayRule rule) {
    if (!rule.must()) {
      late.add(new Late(next, before, rule.ratherSixtieths().orElseThrow()));
      return;
    }
    for (int v = 0; v < n; v++) {
      if (next.holds(v)) {
        if (blocking[v] == null) {
          blocking[v] = new VisitMask(n);
        }
        blocking[v].addAllBut(before, v);
        for (int last = 0; last < n; last++) {
          pair(last, v, last != v && before.holds(last), 0);
        }
      }
    }
  }

  private void after(VisitMask last, VisitMask next, DayRule rule) {
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        if (i != j && last.holds(i) && next.holds(j)) {
          pair(i, j, rule.must(), rule.ratherSixtieths().orElse(0));
        }
      }
    }
  }

  private void load(LoadLimit limit, DayRule rule) {
    if (!rule.must()) {
      pricedLoads.add(new Load(limit, rule.ratherSixtieths().orElseThrow()));
      return;
    }
    loads.add(limit);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        pair(i, j, i != j && limit.points(j) > 0 && limit.tooMuch(i, j), 0);
      }
      if (limit.tooMuchAlone(i)) {
        never(i);
      }
    }
  }

  /** {@return load points that must not be above the free ones} */
  List<LoadLimit> loads() {
    return loads;
  }

  List<Load> pricedLoads() {
    return pricedLoads;
  }

  List<Late> late() {
    return late;
  }

  List<Company> company() {
    return company;
  }

  /** {@return by visits once one of which is served, those that must not come any more} */
  Map<VisitMask, VisitMask> lastOnes() {
    Map<VisitMask, VisitMask> blocked = new LinkedHashMap<>();
    for (int v : everBlocked) {
      blocked.computeIfAbsent(blocking[v], mask -> new VisitMask(n)).add(v);
    }
    return blocked;
  }

  /** {@return whether there is no rule, so that every step is allowed and free} */
  boolean none() {
    return !any;
  }

  /** {@return whether {@code next} (n + 1: the way home) may ever come right after {@code last}} */
  boolean leg(int last, int next) {
    return !any || !apart[last * (n + 2) + next];
  }

  /** {@return whether a set may go on with a visit at a place} */
  boolean may(long[] rows, int at, int last, int next, int place) {
    if (apart[last * (n + 2) + next] || (exactly[next] != 0 && exactly[next] != place)) {
      return false;
    }
    if (blocking[next] != null && blocking[next].meets(rows, at)) {
      return false;
    }
    for (LoadLimit load : loads) {
      if (load.moreAbove(rows, at, next) > 0) {
        return false;
      }
    }
    return true;
  }

  /** {@return price of that step} */
  long price(long[] rows, int at, int last, int next, int place) {
    long sum = pairPrice[last * (n + 2) + next] + placePrice[next * (n + 1) + place];
    for (Late each : late) {
      if (each.next.holds(next) && each.before.meetsBesides(rows, at, next)) {
        sum += each.price;
      }
    }
    for (Load load : pricedLoads) {
      sum += Math.multiplyExact(load.price, load.limit.moreAbove(rows, at, next));
    }
    return sum;
  }

  /** {@return what the step to a visit, or home (n + 1), costs at least whatever was served} */
  long leastPrice(int last, int next) {
    long least = pairPrice[last * (n + 2) + next];
    if (next >= n) {
      return least + lastPrice[last];
    }
    long atPlace = Long.MAX_VALUE;
    for (int place = last < n ? 2 : 1; place <= (last < n ? n : 1); place++) {
      atPlace = Math.min(atPlace, placePrice[next * (n + 1) + place]);
    }
    return least + (n > 1 || last == n ? atPlace : 0);
  }

  /** {@return whether a day may end with a set and a last visit} */
  boolean mayEnd(long[] rows, int at, int last) {
    return !notLast[last] && !split(rows, at);
  }

  /** {@return price of ending so} */
  long endPrice(long[] rows, int at, int last) {
    return lastPrice[last] + splitPrice(rows, at);
  }

  private boolean split(long[] rows, int at) {
    for (Company each : company) {
      if (each.must && each.splits(rows, at)) {
        return true;
      }
    }
    return false;
  }

  private long splitPrice(long[] rows, int at) {
    long sum = 0;
    for (Company each : company) {
      sum += each.splits(rows, at) ? each.price : 0;
    }
    return sum;
  }

  /**
   * What going on after one set may cost more than going on in the same way after another, but for
   * the visits that {@link #addBlocked} tells.
   *
   * @param open visits that may still come after the other
   * @return price, 0 or more; {@link #FORBIDDEN} where only the other may go on so
   */
  long dearer(long[] one, int at, long[] other, int otherAt, long[] open, int openAt) {
    for (LoadLimit load : loads) {
      if (load.names(open, openAt) && load.sum(one, at) > load.sum(other, otherAt)) {
        return FORBIDDEN;
      }
    }
    long sum = 0;
    for (Load load : pricedLoads) {
      if (load.limit.names(open, openAt)) {
        long more = load.limit.free(one, at) - load.limit.free(other, otherAt);
        sum += Math.multiplyExact(load.price, Math.max(0, more));
      }
    }
    for (Late each : late) {
      if (each.before.meets(one, at) && !each.before.meets(other, otherAt)) {
        sum += Math.multiplyExact(each.price, (long) each.next.count(open, openAt));
      }
    }
    for (Company each : company) {
      if (each.splitsAhead(one, at, other, otherAt, open, openAt)) {
        if (each.must) {
          return FORBIDDEN;
        }
        sum += each.price;
      }
    }
    return sum;
  }

  /** Adds to a set the visits that may not come any more once another set is served. */
  void addBlocked(long[] rows, int at, long[] blocked, int blockedAt) {
    for (int v : everBlocked) {
      if (blocking[v].meets(rows, at)) {
        blocked[blockedAt + (v >>> 6)] |= 1L << v;
      }
    }
    for (LoadLimit load : loads) {
      long sum = load.sum(rows, at);
      for (int v = 0; v < n && sum > 0; v++) {
        if (load.tooMuchAfter(sum, v)) {
          blocked[blockedAt + (v >>> 6)] |= 1L << v;
        }
      }
    }
  }

  /** {@return whether it matters which place after the first a visit has} */
  boolean byPlace() {
    boolean matters = false;
    for (int v = 0; v < n && any; v++) {
      matters |= exactly[v] > 1;
      for (int place = 3; place <= n; place++) {
        matters |= placePrice[v * (n + 1) + place] != placePrice[v * (n + 1) + 2];
      }
    }
    return matters;
  }

  /** {@return whether some order of just a set may keep what speaks of sets alone} */
  boolean setMay(long[] rows, int at) {
    return setMayGrow(rows, at) && !split(rows, at);
  }

  /** {@return whether a set, or one that holds it, may keep them} */
  boolean setMayGrow(long[] rows, int at) {
    for (LoadLimit load : loads) {
      if (load.above(rows, at) > 0) {
        return false;
      }
    }
    for (Alone each : alone) {
      if (each.must && each.named.count(rows, at) > 1) {
        return false;
      }
    }
    return true;
  }

  /** {@return what every order of just a set pays for it} */
  long setPrice(long[] rows, int at) {
    long sum = splitPrice(rows, at);
    for (int v = 0; v < own.length; v++) {
      sum += (rows[at + (v >>> 6)] >>> v & 1) != 0 ? own[v] : 0;
    }
    for (Load load : pricedLoads) {
      sum += load.price * load.limit.above(rows, at);
    }
    for (Alone each : alone) {
      sum += each.price * Math.max(0, each.named.count(rows, at) - 1);
    }
    return sum;
  }
}
