package dev.dogleg.groom.learn;

import dev.dogleg.groom.LearnedKind;
import dev.dogleg.groom.LearnedRow;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Learns how much longer or shorter drives are than planned, by traffic band and road class.
 *
 * <p>Logarithm of driven over planned seconds = band + the band's road classes, each with its share
 * of the planned seconds, + noise. Both are drawn towards zero. Minutes written by hand are whole:
 * the rounding of a short drive is part of its noise.
 */
final class DriveLesson {
  private static final int BAND = 0;
  private static final int ROAD_CLASS = 1;
  private static final int DAY = 2;

  /** Before any drive is seen: planning estimates. */
  private static final double BAND_SPREAD = 0.10;

  private static final double CLASS_SPREAD = 0.08;
  private static final double DAY_SPREAD = 0.10;
  private static final double DRIVE_SPREAD = 0.20;
  private static final double PSEUDO_BANDS = 4;

  /** Both times of a drive are rounded to a minute: two uniform errors of half a minute. */
  private static final double ROUNDING_SECONDS_SQUARED = 2 * 60 * 60 / 12.0;

  /** Drives that a row needs. */
  private static final int LEAST_DRIVES = 5;

  private final List<LoggedVisit> visits;
  private final Pool pool;
  private PooledFit fit;

  private DriveLesson(List<LoggedVisit> visits, LearnSettings settings) {
    this.visits = visits;
    pool =
        new Pool(
            List.of(
                new EffectClass(BAND_SPREAD * BAND_SPREAD, PSEUDO_BANDS),
                new EffectClass(CLASS_SPREAD * CLASS_SPREAD, PSEUDO_BANDS),
                new EffectClass(DAY_SPREAD * DAY_SPREAD, settings.pseudoDays())));
  }

  /**
   * Learns.
   *
   * @param visits visits up to {@code until}; those without a drive are passed over
   * @param until the day from which age is counted
   * @param settings how much the log is trusted
   * @return the lesson
   */
  static DriveLesson of(List<LoggedVisit> visits, LocalDate until, LearnSettings settings) {
    DriveLesson lesson =
        new DriveLesson(
            visits.stream().filter(visit -> visit.drive().isPresent()).toList(), settings);
    lesson.visits.forEach(
        visit -> {
          double age = Math.max(0, ChronoUnit.DAYS.between(visit.date(), until));
          lesson.see(visit, StrictMath.pow(0.5, age / settings.halfLifeDays()));
        });
    lesson.fit =
        lesson.pool.fit(
            new PooledFit.Terms(
                1, settings.pseudoVisits(), settings.huber(), settings.reject(), DAY));
    return lesson;
  }

  private void see(LoggedVisit visit, double weight) {
    LoggedDrive drive = visit.drive().orElseThrow();
    Map<Integer, Double> loads = new LinkedHashMap<>();
    loads.put(pool.effect(BAND, drive.band(), () -> new Effect(BAND, 0, 1)), 1.0);
    double sum = drive.plannedSecondsByClass().values().stream().mapToInt(s -> s).sum();
    drive
        .plannedSecondsByClass()
        .forEach(
            (road, seconds) -> {
              if (seconds > 0) {
                String name = drive.band() + "/" + road;
                loads.put(
                    pool.effect(ROAD_CLASS, name, () -> new Effect(ROAD_CLASS, 0, 1)),
                    seconds / sum);
              }
            });
    String day = visit.date() + " " + visit.groomerId();
    loads.put(pool.effect(DAY, day, () -> new Effect(DAY, 0, 1)), 1.0);
    double planned = drive.plannedSeconds();
    double noise = DRIVE_SPREAD * DRIVE_SPREAD + ROUNDING_SECONDS_SQUARED / (planned * planned);
    pool.see(StrictMath.log(drive.drivenSeconds() / planned), noise, weight, loads);
  }

  /** {@return rows of bands and their road classes that enough drives speak of} */
  List<LearnedRow> rows() {
    List<LearnedRow> rows = new ArrayList<>();
    for (int kind = BAND; kind <= ROAD_CLASS; kind++) {
      new TreeMap<>(pool.named(kind))
          .forEach(
              (name, number) -> {
                List<Integer> of = drives(number);
                if (of.size() >= LEAST_DRIVES) {
                  DriveScore score = score(of);
                  rows.add(
                      LearnedRows.row(
                          LearnedKind.DRIVE,
                          name,
                          fit.mean(number),
                          leg() + fit.scale(DAY),
                          of.size(),
                          last(of),
                          LearnedRows.text(
                              "mean error %.1f min before, %.1f after",
                              score.errorBeforeMinutes(), score.errorAfterMinutes())));
                }
              });
    }
    if (all().size() >= LEAST_DRIVES) {
      spreads(rows);
    }
    return rows;
  }

  private void spreads(List<LearnedRow> rows) {
    List<Integer> all = all();
    rows.add(
        LearnedRows.row(
            LearnedKind.DRIVE_DAY,
            "",
            0,
            fit.scale(DAY),
            pool.named(DAY).size(),
            last(all),
            "what all drives of a day share"));
    rows.add(
        LearnedRows.row(
            LearnedKind.DRIVE_LEG, "", 0, leg(), all.size(), last(all), "a drive by itself"));
  }

  /** Variance of one drive by itself. */
  private double leg() {
    return fit.noiseScale() * DRIVE_SPREAD * DRIVE_SPREAD;
  }

  private Optional<LocalDate> last(List<Integer> of) {
    return of.stream().map(i -> visits.get(i).date()).max(LocalDate::compareTo);
  }

  private List<Integer> all() {
    List<Integer> all = new ArrayList<>();
    for (int i = 0; i < visits.size(); i++) {
      if (!fit.rejected(i)) {
        all.add(i);
      }
    }
    return all;
  }

  /** {@return how well all drives fit; empty where there is none} */
  Optional<DriveScore> score() {
    List<Integer> all = all();
    return all.isEmpty() ? Optional.empty() : Optional.of(score(all));
  }

  private DriveScore score(List<Integer> of) {
    double before = 0;
    double after = 0;
    for (int i : of) {
      LoggedDrive drive = visits.get(i).drive().orElseThrow();
      before += Math.abs(drive.drivenSeconds() - drive.plannedSeconds());
      after += Math.abs(drive.drivenSeconds() - drive.plannedSeconds() * StrictMath.exp(factor(i)));
    }
    return new DriveScore(of.size(), before / of.size() / 60, after / of.size() / 60);
  }

  /** Logarithm of the learned factor of a drive; what its day was like is not known before. */
  private double factor(int i) {
    return pool.seen().get(i).loads().stream()
        .filter(load -> !pool.named(DAY).containsValue(load.effect()))
        .mapToDouble(load -> load.size() * fit.mean(load.effect()))
        .sum();
  }

  private List<Integer> drives(int effect) {
    List<Integer> found = new ArrayList<>();
    for (int i = 0; i < pool.seen().size(); i++) {
      boolean in = pool.seen().get(i).loads().stream().anyMatch(load -> load.effect() == effect);
      if (in && !fit.rejected(i)) {
        found.add(i);
      }
    }
    return found;
  }
}
