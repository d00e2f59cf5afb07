package dev.dogleg.schedule;

import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;

/**
 * What a day's terms say of its next step: which visit may follow, what that costs, how long the
 * visit is served, how full the tanks are ({@code docs/WEEK.md}).
 *
 * <p>All of it depends on the visits served so far, the last of them and the next one alone. Sets
 * are given as rows of words, 64 visits to a word, with the index of the first word. Prices are at
 * the day's scale. Liked hours are not in here: they belong to the doors. Immutable.
 */
public final class StepTerms {
  private final int n;
  private final DayRules rules;
  private final ServedMinutes minutes;
  private final DayPrices prices;
  private final boolean water;
  private final int most;
  private final int freshTank;
  private final int greyTank;
  private final int[] fresh;
  private final int[] grey;

  StepTerms(DayModel day, DayPrices prices) {
    n = day.size();
    rules = day.doors.rules;
    minutes = day.doors.minutes;
    this.prices = prices;
    WaterTerms terms = day.terms.water().orElse(null);
    water = terms != null;
    most = water && !terms.places().isEmpty() ? terms.most() : 0;
    freshTank = water ? terms.tank().freshMillilitres() : 0;
    greyTank = water ? terms.tank().greyMillilitres() : 0;
    fresh = new int[n];
    grey = new int[n];
    for (int i = 0; i < n && water; i++) {
      WaterUse use = terms.useOf(day.visit(i).id());
      fresh[i] = use.freshMillilitres();
      grey[i] = use.greyMillilitres();
    }
  }

  /** {@return whether no rule binds or prices a step, so that the set need not be known} */
  public boolean free() {
    return rules.none();
  }

  /**
   * Whether one node may ever come right after another.
   *
   * @param last visit, or n for the start place
   * @param next visit, or n + 1 for the end place
   * @return false where a must rule forbids it
   */
  public boolean leg(int last, int next) {
    return rules.leg(last, next);
  }

  /**
   * Whether a set of visits may be followed by another.
   *
   * @param rows words of sets
   * @param at first word of the set served so far
   * @param last its last visit, n where it is empty
   * @param next the visit to come
   * @param place its place in the day, counted from 1
   * @return false where a must rule forbids it
   */
  public boolean may(long[] rows, int at, int last, int next, int place) {
    return rules.none() || rules.may(rows, at, last, next, place);
  }

  /**
   * What rules charge for a step.
   *
   * @param rows words of sets
   * @param at first word of the set served so far
   * @param last its last visit, n where it is empty
   * @param next the visit to come
   * @param place its place in the day, counted from 1
   * @return price
   */
  public long price(long[] rows, int at, int last, int next, int place) {
    return rules.none() || prices.rules() == 0
        ? 0
        : Math.multiplyExact(prices.rules(), rules.price(rows, at, last, next, place));
  }

  /**
   * What rules charge at least for a step, whatever was served before.
   *
   * @param last visit
   * @param next visit, or n + 1 for the end place
   * @return price
   */
  public long leastPrice(int last, int next) {
    return rules.none() || prices.rules() == 0
        ? 0
        : Math.multiplyExact(prices.rules(), rules.leastPrice(last, next));
  }

  /**
   * The least service of a visit after another, wherever the two stand.
   *
   * @param last visit before it
   * @param next the visit
   * @return seconds
   */
  public int leastService(int last, int next) {
    int least = Integer.MAX_VALUE;
    for (int place = 2; place <= n; place++) {
      least = Math.min(least, minutes.of(last, next, place));
    }
    return least;
  }

  /**
   * What rules ask of visits to come, as a small number of what was served.
   *
   * @param most numbers at the most, 1 or more
   * @return as much as fits into so many
   */
  public RuleModes modes(int most) {
    return new RuleModes(rules, n, prices.rules(), most);
  }

  /** {@return whether a service depends on the order of the visits} */
  public boolean servicesVary() {
    return minutes.vary();
  }

  /**
   * Service of a visit.
   *
   * @param last visit before it, n for none
   * @param next the visit
   * @param place its place in the day, counted from 1
   * @return seconds
   */
  public int service(int last, int next, int place) {
    return minutes.of(last, next, place);
  }

  /**
   * Every service that a visit can have.
   *
   * @param visit the visit
   * @return seconds, rising
   */
  int[] services(int visit) {
    return minutes.all(visit);
  }

  /**
   * Whether a day may end with a set.
   *
   * @param rows words of sets
   * @param at first word of the set served
   * @param last its last visit
   * @return false where a must rule forbids it
   */
  public boolean mayEnd(long[] rows, int at, int last) {
    return rules.none() || rules.mayEnd(rows, at, last);
  }

  /**
   * What rules charge for ending so.
   *
   * @param rows words of sets
   * @param at first word of the set served
   * @param last its last visit
   * @return price; without that of a full day
   */
  public long endPrice(long[] rows, int at, int last) {
    return rules.none() || prices.rules() == 0
        ? 0
        : Math.multiplyExact(prices.rules(), rules.endPrice(rows, at, last));
  }

  /**
   * Adds to a set the visits that must rules forbid from now on, whatever comes between.
   *
   * @param rows words of sets
   * @param at first word of the set served so far
   * @param blocked words of sets; changed
   * @param blockedAt first word of the set added to
   */
  public void addBlocked(long[] rows, int at, long[] blocked, int blockedAt) {
    if (!rules.none()) {
      rules.addBlocked(rows, at, blocked, blockedAt);
    }
  }

  /**
   * What rules may charge more for going on after one set than after another in the same way, where
   * no visit comes that {@link #addBlocked} tells of the one.
   *
   * @param one words of sets
   * @param at first word of the one
   * @param other words of sets
   * @param otherAt first word of the other
   * @param open words of sets
   * @param openAt first word of the visits that may still come after the other
   * @return price, 0 or more; {@link Long#MAX_VALUE} where only the other may go on so
   */
  public long dearer(long[] one, int at, long[] other, int otherAt, long[] open, int openAt) {
    if (rules.none()) {
      return 0;
    }
    long more = rules.dearer(one, at, other, otherAt, open, openAt);
    return more >= DayRules.FORBIDDEN ? Long.MAX_VALUE : Math.multiplyExact(prices.rules(), more);
  }

  /** {@return whether it matters which place after the first a visit has} */
  public boolean byPlace() {
    return rules.byPlace() || minutes.byPlace();
  }

  /** {@return whether a day full of grooming is priced} */
  public boolean pricesGroom() {
    return prices.groom() > 0;
  }

  /**
   * Price of a full day.
   *
   * @param seconds all services as served
   * @return price
   */
  public long groomPrice(long seconds) {
    return prices.groom() * Math.max(0, seconds - prices.groomFrom());
  }

  /**
   * Whether some order of just a set may keep the rules that speak of sets alone.
   *
   * @param rows words of sets
   * @param at first word of the set
   * @return false where none can
   */
  public boolean setMay(long[] rows, int at) {
    return rules.none() || rules.setMay(rows, at);
  }

  /**
   * Whether a set or one that holds it may keep the rules that speak of sets alone.
   *
   * @param rows words of sets
   * @param at first word of the set
   * @return false where none can
   */
  public boolean setMayGrow(long[] rows, int at) {
    return rules.none() || rules.setMayGrow(rows, at);
  }

  /**
   * What every order of just a set pays for it.
   *
   * @param rows words of sets
   * @param at first word of the set
   * @return price
   */
  public long setPrice(long[] rows, int at) {
    return rules.none() ? 0 : Math.multiplyExact(prices.rules(), rules.setPrice(rows, at));
  }

  /** {@return whether tanks are planned} */
  public boolean water() {
    return water;
  }

  /** {@return most water stops of a day; 0 where there is no place for one} */
  public int mostStops() {
    return most;
  }

  /** {@return millilitres of fresh water that the tank holds; 0 without tanks} */
  public int freshTank() {
    return freshTank;
  }

  /** {@return millilitres of grey water that the tank holds; 0 without tanks} */
  public int greyTank() {
    return greyTank;
  }

  /**
   * Fresh water of a visit.
   *
   * @param visit the visit
   * @return millilitres used
   */
  public int fresh(int visit) {
    return fresh[visit];
  }

  /**
   * Grey water of a visit.
   *
   * @param visit the visit
   * @return millilitres made
   */
  public int grey(int visit) {
    return grey[visit];
  }

  /**
   * Whether the tanks last.
   *
   * @param freshUsed fresh water used since they were last full and empty
   * @param greyMade grey water made since then
   * @return whether both are enough
   */
  public boolean lasts(int freshUsed, int greyMade) {
    return !water || (freshUsed <= freshTank && greyMade <= greyTank);
  }

  /**
   * Whether tanks filled so often can last at all.
   *
   * @param freshUsed fresh water used in all
   * @param greyMade grey water made in all
   * @param fillings how often
   * @return whether both are enough
   */
  public boolean lasts(long freshUsed, long greyMade, int fillings) {
    return !water
        || (freshUsed <= (long) freshTank * fillings && greyMade <= (long) greyTank * fillings);
  }
}
