package dev.dogleg.groom.learn;

import dev.dogleg.groom.GroomQuestion;
import dev.dogleg.groom.Learned;
import dev.dogleg.groom.LearnedKind;
import dev.dogleg.groom.LearnedRow;
import dev.dogleg.groom.TableTime;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;

/** Reads rows of learned values and odd visits off a fitted pool of grooms. */
final class GroomLesson {
  /** Two standard deviations and a third: one or two of a hundred lie beyond on each side. */
  private static final double WIDE = 2.33;

  private final GroomPool pool;
  private final PooledFit fit;

  GroomLesson(GroomPool pool) {
    this.pool = pool;
    this.fit = pool.fit();
  }

  /** {@return the rows: pace, spreads, day, services, breeds, pets; names in alphabetical order} */
  List<LearnedRow> rows() {
    List<LearnedRow> rows = new ArrayList<>();
    add(rows, GroomPool.PACE, LearnedKind.PACE);
    spreads(rows);
    add(rows, GroomPool.SERVICE, LearnedKind.SERVICE);
    add(rows, GroomPool.BREED, LearnedKind.BREED);
    add(rows, GroomPool.PET, LearnedKind.PET);
    return rows;
  }

  private void add(List<LearnedRow> rows, int kind, LearnedKind as) {
    new TreeMap<>(pool.named(kind))
        .forEach(
            (name, number) -> {
              List<Integer> of =
                  visits(groom -> name(groom, kind).filter(name::equals).isPresent());
              if (!of.isEmpty()) {
                rows.add(
                    LearnedRows.row(
                        as,
                        name,
                        fit.mean(number),
                        kind == GroomPool.PET ? fit.variance(effects(last(name, of))) : 0,
                        of.size(),
                        last(of),
                        kind == GroomPool.PET ? petNote(name, of) : ""));
              }
            });
  }

  private static Optional<String> name(GroomQuestion groom, int kind) {
    return switch (kind) {
      case GroomPool.PACE -> Optional.of(groom.keys().groomerId());
      case GroomPool.SERVICE -> Optional.of(Learned.serviceKey(groom));
      case GroomPool.BREED -> Learned.breedKey(groom);
      default -> Optional.of(groom.keys().petId());
    };
  }

  private List<Integer> visits(Predicate<GroomQuestion> about) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < pool.visits().size(); i++) {
      if (!fit.rejected(i) && pool.visits().get(i).grooms().stream().anyMatch(about)) {
        found.add(i);
      }
    }
    return found;
  }

  private Optional<LocalDate> last(List<Integer> of) {
    return of.stream().map(i -> pool.visits().get(i).visit().date()).max(LocalDate::compareTo);
  }

  /** The pet's last groom. */
  private GroomQuestion last(String petId, List<Integer> of) {
    return pool.visits().get(of.get(of.size() - 1)).grooms().stream()
        .filter(groom -> groom.keys().petId().equals(petId))
        .findFirst()
        .orElseThrow();
  }

  /** Service, the tables' minutes and the learned ones of the pet's last groom. */
  private String petNote(String petId, List<Integer> of) {
    AskedVisit asked = pool.visits().get(of.get(of.size() - 1));
    GroomQuestion groom = last(petId, of);
    double table = asked.tables().get(asked.grooms().indexOf(groom)).minutes();
    double factor = StrictMath.exp(effects(groom).stream().mapToDouble(fit::mean).sum());
    return LearnedRows.text("%s: %.0f min, tables %.0f", groom.order(), table * factor, table);
  }

  /** All effects of a groom but the day's, the pet's last. */
  private List<Integer> effects(GroomQuestion groom) {
    List<Integer> effects = new ArrayList<>();
    for (int kind : new int[] {GroomPool.PACE, GroomPool.SERVICE, GroomPool.BREED, GroomPool.PET}) {
      name(groom, kind).ifPresent(name -> effects.add(pool.named(kind).get(name)));
    }
    return effects;
  }

  private void spreads(List<LearnedRow> rows) {
    List<Integer> all = visits(groom -> true);
    if (all.isEmpty()) {
      return;
    }
    double unit = pool.unitVariance();
    double day = fit.scale(GroomPool.DAY);
    double onTop = newPetVariance();
    double fresh =
        fit.scale(GroomPool.PET) * onTop
            + meanVariance(GroomPool.SERVICE)
            + meanVariance(GroomPool.BREED);
    rows.add(
        LearnedRows.row(
            LearnedKind.SPREAD_KNOWN,
            "",
            StrictMath.log(fit.noiseScale()) / 2,
            0,
            all.size(),
            last(all),
            LearnedRows.text(
                "a visit by itself: spread %.2f where the tables have %.2f, day included",
                StrictMath.sqrt(fit.noiseScale() * unit), StrictMath.sqrt(unit))));
    if (onTop > 0) {
      rows.add(
          LearnedRows.row(
              LearnedKind.SPREAD_NEW,
              "",
              StrictMath.log(fresh / onTop) / 2,
              0,
              pool.named(GroomPool.PET).size(),
              last(all),
              LearnedRows.text(
                  "between pets: spread %.2f where the tables have %.2f",
                  StrictMath.sqrt(fresh), StrictMath.sqrt(onTop))));
    }
    rows.add(
        LearnedRows.row(
            LearnedKind.DAY,
            "",
            0,
            day,
            pool.named(GroomPool.DAY).size(),
            last(all),
            "what all grooms of a day share"));
  }

  /** Mean of what the tables' spread of a new pet has on top, over the grooms seen. */
  private double newPetVariance() {
    return pool.visits().stream()
        .flatMap(visit -> visit.tables().stream())
        .mapToDouble(TableTime::newPetVariance)
        .average()
        .orElse(0);
  }

  /** Mean variance that effects of a class still have. */
  private double meanVariance(int kind) {
    Map<String, Integer> named = pool.named(kind);
    return named.values().stream()
        .mapToDouble(number -> fit.variance(List.of(number)))
        .average()
        .orElse(fit.scale(kind));
  }

  /** {@return visits that were left out} */
  List<OddVisit> odd() {
    List<OddVisit> odd = new ArrayList<>();
    for (int i = 0; i < pool.visits().size(); i++) {
      if (fit.rejected(i)) {
        AskedVisit asked = pool.visits().get(i);
        double middle = asked.tableMinutes() * StrictMath.exp(fit.fitted(i));
        double wide = StrictMath.exp(WIDE * StrictMath.sqrt(spread(asked)));
        odd.add(
            new OddVisit(
                asked.visit(), (int) Math.round(middle / wide), (int) Math.round(middle * wide)));
      }
    }
    return odd;
  }

  private double spread(AskedVisit asked) {
    double known = asked.tables().stream().mapToDouble(TableTime::spreadKnown).max().orElseThrow();
    double pets = 0;
    for (GroomQuestion groom : asked.grooms()) {
      pets = Math.max(pets, fit.variance(effects(groom)));
    }
    return fit.noiseScale() * known * known + fit.scale(GroomPool.DAY) + pets;
  }
}
