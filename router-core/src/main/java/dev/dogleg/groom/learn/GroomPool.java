package dev.dogleg.groom.learn;

import dev.dogleg.groom.GroomQuestion;
import dev.dogleg.groom.Learned;
import dev.dogleg.groom.TableTime;
import dev.dogleg.model.Book;
import dev.dogleg.model.Groomer;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Grooms of a log as a pool of effects, on the scale of logarithms.
 *
 * <p>Logarithm of the minutes over the tables' minutes = pace of the groomer + service with coat +
 * breed + pet + day + noise. A visit with several pets has one length: each pet's effects then load
 * it with its share of the tables' minutes, which is the first order of the logarithm of a sum. A
 * visit's noise has the tables' spread of a known pet, times one scale for all; what the day shares
 * is taken out of its start, so that both together start at the tables' spread.
 */
final class GroomPool {
  static final int PACE = 0;
  static final int SERVICE = 1;
  static final int BREED = 2;
  static final int PET = 3;
  static final int DAY = 4;

  /** Least spread between pets, so that a cell whose two spreads are alike can learn too. */
  private static final double LEAST_PET_SPREAD = 0.05;

  /** Most of the noise that the day may be before anything is seen. */
  private static final double MOST_DAY_PART = 0.5;

  private final List<AskedVisit> visits;
  private final LearnSettings settings;
  private final Pool pool;
  private final Map<String, Integer> paces = new LinkedHashMap<>();
  private double unitVariance;
  private PooledFit fit;

  private GroomPool(List<AskedVisit> visits, Book book, LearnSettings settings) {
    this.visits = visits;
    this.settings = settings;
    book.business()
        .groomers()
        .forEach((Groomer groomer) -> paces.put(groomer.id(), groomer.paceThousandths()));
    pool =
        new Pool(
            List.of(
                EffectClass.fixed(square(settings.paceSpread())),
                new EffectClass(square(settings.serviceSpread()), settings.pseudoGroups()),
                new EffectClass(square(settings.breedSpread()), settings.pseudoGroups()),
                new EffectClass(settings.petShare(), settings.pseudoPets()),
                new EffectClass(square(settings.daySpread()), settings.pseudoDays())));
  }

  /**
   * Fits a log.
   *
   * @param visits done visits, at least one
   * @param book card of the groomers
   * @param until the day from which age is counted
   * @param settings how much the log is trusted
   * @return the fitted pool
   */
  static GroomPool of(List<AskedVisit> visits, Book book, LocalDate until, LearnSettings settings) {
    GroomPool made = new GroomPool(visits, book, settings);
    visits.forEach(visit -> made.see(visit, until));
    double unit =
        made.pool.seen().stream().mapToDouble(Observation::unitVariance).average().orElseThrow();
    made.unitVariance = unit;
    double start = Math.max(MOST_DAY_PART, 1 - square(settings.daySpread()) / unit);
    made.fit =
        made.pool.fit(
            new PooledFit.Terms(
                start, settings.pseudoVisits(), settings.huber(), settings.reject(), DAY));
    return made;
  }

  private void see(AskedVisit asked, LocalDate until) {
    double whole = asked.tableMinutes();
    Map<Integer, Double> loads = new LinkedHashMap<>();
    String groomer = asked.visit().groomerId();
    double paceMean = StrictMath.log(paces.get(groomer) / 1000.0);
    load(loads, PACE, groomer, asked.groomMinutes() / whole, new Effect(PACE, paceMean, 1));
    double noise = 0;
    for (int g = 0; g < asked.grooms().size(); g++) {
      GroomQuestion groom = asked.grooms().get(g);
      TableTime table = asked.tables().get(g);
      double share = table.minutes() / whole;
      noise += square(share * table.spreadKnown());
      load(loads, SERVICE, Learned.serviceKey(groom), share, new Effect(SERVICE, 0, 1));
      Learned.breedKey(groom)
          .ifPresent(breed -> load(loads, BREED, breed, share, new Effect(BREED, 0, 1)));
      double own =
          Math.max(table.newPetVariance(), square(LEAST_PET_SPREAD)) + table.guessVariance();
      load(loads, PET, groom.keys().petId(), share, new Effect(PET, 0, own));
    }
    load(loads, DAY, asked.visit().date() + " " + groomer, 1, new Effect(DAY, 0, 1));
    double age = Math.max(0, ChronoUnit.DAYS.between(asked.visit().date(), until));
    double weight = StrictMath.pow(0.5, age / settings.halfLifeDays());
    double minutes = asked.visit().groomSeconds() / 60.0;
    pool.see(StrictMath.log(minutes / whole), noise, weight, loads);
  }

  private void load(Map<Integer, Double> loads, int kind, String name, double load, Effect before) {
    loads.merge(pool.effect(kind, name, () -> before), load, Double::sum);
  }

  private static double square(double number) {
    return number * number;
  }

  List<AskedVisit> visits() {
    return visits;
  }

  PooledFit fit() {
    return fit;
  }

  Map<String, Integer> named(int kind) {
    return pool.named(kind);
  }

  /** {@return mean of the tables' squared spread of the visits seen} */
  double unitVariance() {
    return unitVariance;
  }
}
