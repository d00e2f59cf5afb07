package dev.dogleg.schedule;

import java.util.ArrayList;
import java.util.List;

/**
 * The little of what was served that rules ask of the visits to come, as one small number: how many
 * load points are used, and whether one of those was served after which others come late.
 *
 * <p>Maintainers: for floors of the rest of a day. Rules are taken in, those that bind first, while
 * there are few numbers; what is left out only makes such a floor lower. Sets are rows of words,
 * see {@link StepTerms}. Immutable.
 */
public final class RuleModes {
  /** What one rule asks: states 0 (nothing served) and more. */
  private interface Part {
    int states();

    int of(long[] rows, int at);

    /** State after a visit; -1 where the visit is forbidden. */
    int after(int state, int visit);

    long price(int state, int visit);

    /** Price of ending the day so. */
    default long endPrice(int state) {
      return 0;
    }
  }

  /** Two that go together: nobody is waited for (0), the second one is (1), or the first (2). */
  private record Pair(VisitMask first, VisitMask second, boolean must, long price) implements Part {
    @Override
    public int states() {
      return 3;
    }

    @Override
    public int of(long[] rows, int at) {
      boolean one = first.meets(rows, at);
      boolean other = second.meets(rows, at);
      return one == other ? 0 : one ? 1 : 2;
    }

    @Override
    public int after(int state, int visit) {
      if (first.holds(visit)) {
        return state == 2 ? 0 : 1;
      }
      if (second.holds(visit)) {
        return state == 1 ? 0 : 2;
      }
      return state;
    }

    @Override
    public long price(int state, int visit) {
      return 0;
    }

    @Override
    public long endPrice(int state) {
      return state == 0 ? 0 : must ? DayRules.FORBIDDEN : price;
    }
  }

  /** Load points used, the free ones at most. */
  private record Points(LoadLimit limit, boolean must, long price) implements Part {
    @Override
    public int states() {
      return (int) limit.most() + 1;
    }

    @Override
    public int of(long[] rows, int at) {
      return (int) limit.free(rows, at);
    }

    @Override
    public int after(int state, int visit) {
      long sum = state + limit.points(visit);
      return must && limit.tooMuchAfter(state, visit) ? -1 : (int) Math.min(limit.most(), sum);
    }

    @Override
    public long price(int state, int visit) {
      return must ? 0 : price * Math.max(0, state + limit.points(visit) - limit.most());
    }
  }

  /** Whether one of some visits was served, after which others are forbidden or dearer. */
  private record Served(VisitMask before, VisitMask next, boolean must, long price)
      implements Part {
    @Override
    public int states() {
      return 2;
    }

    @Override
    public int of(long[] rows, int at) {
      return before.meets(rows, at) ? 1 : 0;
    }

    @Override
    public int after(int state, int visit) {
      if (must && state == 1 && next.holds(visit)) {
        return -1;
      }
      return state == 1 || before.holds(visit) ? 1 : 0;
    }

    @Override
    public long price(int state, int visit) {
      return !must && state == 1 && next.holds(visit) ? price : 0;
    }
  }

  private final List<Part> parts = new ArrayList<>();
  private final int size;
  private final int[][] after;
  private final long[][] price;
  private final long[] endPrice;

  RuleModes(DayRules rules, int visits, long rulePrice, int most) {
    int modes = 1;
    for (Part part : candidates(rules, visits)) {
      if ((long) modes * part.states() <= most) {
        parts.add(part);
        modes *= part.states();
      }
    }
    size = modes;
    after = new int[size][visits];
    price = new long[size][visits];
    endPrice = new long[size];
    for (int mode = 0; mode < size; mode++) {
      endPrice[mode] = end(mode, rulePrice);
      for (int visit = 0; visit < visits; visit++) {
        step(mode, visit, rulePrice);
      }
    }
  }

  private static List<Part> candidates(DayRules rules, int visits) {
    List<Part> all = new ArrayList<>();
    for (DayRules.Company each : rules.company()) {
      if (!each.strangers() && each.named().size() == 2) {
        all.add(pair(each, visits));
      }
    }
    rules.loads().forEach(limit -> all.add(new Points(limit, true, 0)));
    rules.pricedLoads().forEach(load -> all.add(new Points(load.limit(), false, load.price())));
    rules.lastOnes().forEach((before, next) -> all.add(new Served(before, next, true, 0)));
    rules.late().forEach(l -> all.add(new Served(l.before(), l.next(), false, l.price())));
    all.removeIf(part -> part.states() < 2);
    return all;
  }

  private long end(int mode, long rulePrice) {
    int rest = mode;
    long sum = 0;
    for (Part part : parts) {
      sum = Math.min(DayRules.FORBIDDEN, sum + part.endPrice(rest % part.states()));
      rest /= part.states();
    }
    return sum == DayRules.FORBIDDEN ? FORBIDDEN : Math.multiplyExact(rulePrice, sum);
  }

  private static Part pair(DayRules.Company two, int visits) {
    List<VisitMask> one = new ArrayList<>();
    for (int v = 0; v < visits; v++) {
      if (two.named().holds(v)) {
        VisitMask mask = new VisitMask(visits);
        mask.add(v);
        one.add(mask);
      }
    }
    return new Pair(one.get(0), one.get(1), two.must(), two.price());
  }

  private void step(int mode, int visit, long rulePrice) {
    int rest = mode;
    int unit = 1;
    int to = 0;
    long sum = 0;
    for (Part part : parts) {
      int state = rest % part.states();
      rest /= part.states();
      int then = part.after(state, visit);
      if (then < 0) {
        after[mode][visit] = -1;
        return;
      }
      to += unit * then;
      unit *= part.states();
      sum += part.price(state, visit);
    }
    after[mode][visit] = to;
    price[mode][visit] = Math.multiplyExact(rulePrice, sum);
  }

  /** Price of an end that a must rule forbids. */
  public static final long FORBIDDEN = Long.MAX_VALUE;

  /**
   * What these rules charge for ending the day.
   *
   * @param mode number of all that was served
   * @return price, 0 or more; {@link #FORBIDDEN} where a must rule forbids it
   */
  public long endPrice(int mode) {
    return endPrice[mode];
  }

  /** {@return how many numbers there are; 1 where no rule asks anything} */
  public int size() {
    return size;
  }

  /**
   * The number of a set of visits.
   *
   * @param rows words of sets
   * @param at first word of the set served so far
   * @return 0..{@link #size} less 1
   */
  public int of(long[] rows, int at) {
    int mode = 0;
    int unit = 1;
    for (Part part : parts) {
      mode += unit * part.of(rows, at);
      unit *= part.states();
    }
    return mode;
  }

  /**
   * The number once a further visit is served.
   *
   * @param mode number before
   * @param visit the visit
   * @return number; -1 where a must rule forbids the visit
   */
  public int after(int mode, int visit) {
    return after[mode][visit];
  }

  /**
   * What these rules charge for a further visit.
   *
   * @param mode number before
   * @param visit the visit
   * @return price, 0 or more
   */
  public long price(int mode, int visit) {
    return price[mode][visit];
  }
}
