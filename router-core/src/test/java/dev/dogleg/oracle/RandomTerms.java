package dev.dogleg.oracle;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.ClockKind;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.TreeSet;

/** Terms for a day by seed: every shape of rule, must and rather, water, balance. */
public final class RandomTerms {
  /** How many shapes of a day's rule there are. */
  public static final int SHAPES = 9;

  private final SplittableRandom random;
  private final DayRequest day;

  private RandomTerms(SplittableRandom random, DayRequest day) {
    this.random = random;
    this.day = day;
  }

  /**
   * The same day with terms: no, one or several rules, often water, sometimes balance.
   *
   * @param seed seed
   * @param day a day, of which seconds and prices are taken as measure
   * @return the day with terms
   */
  public static DayRequest on(long seed, DayRequest day) {
    RandomTerms terms = new RandomTerms(new SplittableRandom(seed * 6271 + 11), day);
    List<DayRule> rules = new ArrayList<>();
    int count = terms.random.nextInt(5);
    for (int r = 0; r < count; r++) {
      rules.add(terms.rule(terms.random.nextInt(SHAPES), "rule " + r));
    }
    Optional<WaterTerms> water = terms.chance(45) ? Optional.of(terms.water()) : Optional.empty();
    Optional<BalanceTerms> balance =
        terms.chance(25) ? Optional.of(terms.balance()) : Optional.empty();
    return with(day, new DayTerms(rules, water, balance));
  }

  /**
   * The same day with one rule.
   *
   * @param seed seed
   * @param day a day
   * @param shape which shape, 0..{@link #SHAPES}-1, in the order of docs/WEEK.md
   * @return the day with a rule of that shape
   */
  public static DayRequest onlyRule(long seed, DayRequest day, int shape) {
    RandomTerms terms = new RandomTerms(new SplittableRandom(seed * 104_729 + shape), day);
    return with(day, DayTerms.of(List.of(terms.rule(shape, "rule"))));
  }

  /**
   * The same day with tanks and no rule.
   *
   * @param seed seed
   * @param day a day
   * @return the day with water
   */
  public static DayRequest onlyWater(long seed, DayRequest day) {
    RandomTerms terms = new RandomTerms(new SplittableRandom(seed * 15_485_863), day);
    return with(day, new DayTerms(List.of(), Optional.of(terms.water()), Optional.empty()));
  }

  /**
   * The same day with other terms.
   *
   * @param day a day
   * @param terms its terms from now on
   * @return the day with these terms
   */
  public static DayRequest with(DayRequest day, DayTerms terms) {
    return new DayRequest(
        day.shift(), day.visits(), day.travel(), day.prices(), terms, day.seed(), day.effort());
  }

  private DayRule rule(int shape, String name) {
    return switch (shape) {
      case 0 -> clock(name);
      case 1 -> {
        DayPlace where = one(DayPlace.values());
        int place = where == DayPlace.EXACTLY ? 1 + random.nextInt(day.visits().size() + 1) : 0;
        yield new DayRule.PlaceInDay(name, price(), some(35), where, place);
      }
      case 2 -> new DayRule.AllBefore(name, price(), some(50), some(50));
      case 3 -> new DayRule.NotRightAfter(name, price(), some(50), some(60));
      case 4 -> atMost(name);
      case 5 -> new DayRule.Changeover(name, some(60), some(60), random.nextInt(25));
      case 6 -> {
        int from = 1 + random.nextInt(3);
        yield new DayRule.PlaceMinutes(
            name,
            some(70),
            from,
            from + random.nextInt(3),
            chance(30) ? 1000 : random.nextInt(2000),
            random.nextInt(40) - 20);
      }
      case 7 -> new DayRule.Together(name, price(), some(40));
      case 8 -> new DayRule.NotTogether(name, price(), some(50));
      default -> throw new IllegalArgumentException("no shape " + shape);
    };
  }

  private DayRule clock(String name) {
    ClockKind kind = one(ClockKind.values());
    List<TimeWindow> windows = new ArrayList<>();
    int opens = day.shift().hours().fromSeconds();
    int length = day.shift().latestEndSeconds() - opens;
    int from = opens + random.nextInt(length + 1);
    windows.add(new TimeWindow(from, from + random.nextInt(90)));
    if (kind != ClockKind.DONE_BY && chance(40)) {
      from = windows.get(0).toSeconds() + 1 + random.nextInt(60);
      windows.add(new TimeWindow(from, from + random.nextInt(90)));
    }
    return new DayRule.Clock(name, OptionalLong.of(random.nextInt(4000)), some(60), kind, windows);
  }

  private DayRule atMost(String name) {
    Map<String, Integer> points = new TreeMap<>();
    int sum = 0;
    for (String id : some(70)) {
      int one = chance(60) ? 1 : 1 + random.nextInt(3);
      points.put(id, one);
      sum += one;
    }
    return new DayRule.AtMost(name, price(), points, random.nextInt(sum + 1));
  }

  private WaterTerms water() {
    int tank = 40 + random.nextInt(50);
    Map<String, WaterUse> uses = new TreeMap<>();
    for (Visit visit : day.visits()) {
      if (chance(80)) {
        uses.put(visit.id(), new WaterUse(random.nextInt(50), random.nextInt(50)));
      }
    }
    // Places of visits and of the shift serve as water places too.
    Set<Integer> places = new TreeSet<>();
    int count = chance(85) ? 1 + random.nextInt(2) : 0;
    for (int p = 0; p < count; p++) {
      places.add(random.nextInt(day.travel().size()));
    }
    List<WaterPlace> stops = new ArrayList<>();
    places.forEach(place -> stops.add(new WaterPlace(place, random.nextInt(10))));
    return new WaterTerms(
        new WaterUse(tank, chance(30) ? 2_000_000 : tank),
        uses,
        stops,
        chance(15) ? 0 : 1 + random.nextInt(4));
  }

  private BalanceTerms balance() {
    int opens = day.shift().hours().fromSeconds();
    return new BalanceTerms(
        random.nextInt(150), random.nextInt(200), opens + random.nextInt(400), random.nextInt(200));
  }

  private OptionalLong price() {
    return chance(50) ? OptionalLong.empty() : OptionalLong.of(random.nextInt(4000));
  }

  /** Each visit with a chance, sometimes a stranger too, at least one. */
  private Set<String> some(int percent) {
    Set<String> ids = new TreeSet<>();
    for (Visit visit : day.visits()) {
      if (chance(percent)) {
        ids.add(visit.id());
      }
    }
    if (chance(8)) {
      ids.add("stranger");
    }
    if (ids.isEmpty()) {
      ids.add(day.visits().get(random.nextInt(day.visits().size())).id());
    }
    return ids;
  }

  private <T> T one(T[] of) {
    return of[random.nextInt(of.length)];
  }

  private boolean chance(int percent) {
    return random.nextInt(100) < percent;
  }
}
