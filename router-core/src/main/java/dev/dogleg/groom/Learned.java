package dev.dogleg.groom;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** What was learned from a visit log, to be laid over the groom tables; immutable. */
public final class Learned {

  /** Nothing learned: every answer is the tables'. */
  public static final Learned NONE = new Learned(List.of());

  private final Map<String, LearnedRow> rows = new LinkedHashMap<>();

  private Learned(List<LearnedRow> rows) {
    for (LearnedRow row : rows) {
      this.rows.put(key(row.kind(), row.what()), row);
    }
  }

  /**
   * Learned values.
   *
   * @param rows any number; of two rows about the same the later holds
   * @return the values
   */
  public static Learned of(List<LearnedRow> rows) {
    return rows.isEmpty() ? NONE : new Learned(rows);
  }

  /** {@return all rows, in their order} */
  public List<LearnedRow> rows() {
    return List.copyOf(rows.values());
  }

  /** {@return whether nothing was learned} */
  public boolean isEmpty() {
    return rows.isEmpty();
  }

  /**
   * One row.
   *
   * @param kind what it speaks of
   * @param what whose it is
   * @return the row, or empty: then the level above holds
   */
  public Optional<LearnedRow> find(LearnedKind kind, String what) {
    return Optional.ofNullable(rows.get(key(kind, what)));
  }

  /**
   * A spread that belongs to nobody in particular: {@code DAY}, {@code DRIVE_DAY} or {@code
   * DRIVE_LEG}, the standard deviation of the logarithm of a factor. What the grooms of a day share
   * is a part of the spread of every estimate made with these values.
   *
   * @param kind one of the three
   * @return thousandths, 0..1,500; empty where nothing was learned
   */
  public OptionalInt spreadPermille(LearnedKind kind) {
    return find(kind, "")
        .map(row -> OptionalInt.of(row.spreadPermille()))
        .orElse(OptionalInt.empty());
  }

  /**
   * The factor on the planned seconds of a road class in a traffic band: the band's own, times the
   * band's for that class.
   *
   * @param band name of the traffic band
   * @param roadClass name of the road class
   * @return factor, 1 where nothing was learned
   */
  public double driveFactor(String band, String roadClass) {
    return find(LearnedKind.DRIVE, band).map(LearnedRow::factor).orElse(1.0)
        * find(LearnedKind.DRIVE, band + "/" + roadClass).map(LearnedRow::factor).orElse(1.0);
  }

  /**
   * What the rows of kind {@code SERVICE} call a groom.
   *
   * @param question the groom
   * @return for example {@code dog full curly}
   */
  public static String serviceKey(GroomQuestion question) {
    return (question.look().species()
            + " "
            + question.order().service().name()
            + " "
            + question.look().coat().taken())
        .toLowerCase(Locale.ROOT);
  }

  /**
   * What the rows of kind {@code BREED} call a groom.
   *
   * @param question the groom
   * @return the breed's name; empty where no breed is known
   */
  public static Optional<String> breedKey(GroomQuestion question) {
    return question.look().grade() == MatchGrade.NONE
        ? Optional.empty()
        : question.look().breed().map(Breed::name);
  }

  /** Ids are compared as they stand, for two of them may differ in a sign alone. */
  private static String key(LearnedKind kind, String what) {
    boolean id = kind == LearnedKind.PET || kind == LearnedKind.PACE;
    return kind + " " + (id ? what : Folding.fold(what));
  }
}
