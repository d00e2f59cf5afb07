package dev.dogleg.groom;

import java.util.List;
import java.util.Optional;

/**
 * Lays learned values over the tables' minutes and spread of one groom, and says so in the basis.
 *
 * <p>Minutes: tables times pace, service, breed and pet; a row that is missing is a factor of one.
 * Squared spread of a known pet: the tables' times the square of {@code SPREAD_KNOWN}, plus the
 * day's, plus the uncertainty of the pet's own factor; of a new pet instead of the last: what the
 * tables have on top for a new pet times the square of {@code SPREAD_NEW}, plus what is guessed.
 */
final class LearnedMinutes {
  /** Most spread that a {@link ServiceTime} takes. */
  private static final double MOST_SPREAD = 3;

  private LearnedMinutes() {}

  static double paced(
      double minutes, GroomQuestion question, Learned learned, List<BasisLine> basis) {
    double paced = minutes;
    Optional<LearnedRow> pace = learned.find(LearnedKind.PACE, question.keys().groomerId());
    if (pace.isPresent()) {
      paced *= said("the groomer's pace", pace, basis);
    } else if (question.pacePermille() != GroomQuestion.TABLE_PACE_PERMILLE) {
      basis.add(factor("the groomer's pace", question.pacePermille(), "the business card"));
      paced = paced * question.pacePermille() / 1000;
    }
    String service = Learned.serviceKey(question);
    paced *= said(service, learned.find(LearnedKind.SERVICE, service), basis);
    Optional<String> breed = Learned.breedKey(question);
    paced *=
        said(breed.orElse(""), breed.flatMap(name -> learned.find(LearnedKind.BREED, name)), basis);
    return paced * said(petName(question), pet(question, learned), basis);
  }

  static double spread(
      GroomQuestion question,
      TableTime table,
      TimeCell cell,
      Learned learned,
      List<BasisLine> basis) {
    Optional<LearnedRow> pet = pet(question, learned);
    boolean own = question.ownMinutes().isPresent() || question.usualMinutes().isPresent();
    boolean known =
        question.history() == VisitHistory.KNOWN
            || question.ownMinutes().isPresent()
            || pet.isPresent();
    String name = known ? "spread, known pet" : "spread, new pet";
    Optional<LearnedRow> visit = learned.find(LearnedKind.SPREAD_KNOWN, "");
    Optional<LearnedRow> day = learned.find(LearnedKind.DAY, "");
    Optional<LearnedRow> fresh = learned.find(LearnedKind.SPREAD_NEW, "");
    double base = squared(table.spreadKnown(), visit);
    base += day.map(LearnedRow::variance).orElse(0.0);
    if (!known) {
      double factor = fresh.map(LearnedRow::factor).orElse(1.0);
      base += table.newPetVariance() * factor * factor;
    }
    Optional<LearnedRow> from = known ? visit : fresh.or(() -> visit);
    double tableSpread =
        learned.isEmpty()
            ? (known ? table.spreadKnown() : table.spreadNew())
            : StrictMath.sqrt(base);
    basis.add(
        line(
            name,
            tableSpread,
            from.or(() -> day).map(LearnedRow::provenance).orElse(cell.provenance())));
    double spread = tableSpread;
    if (pet.isPresent() && !own) {
      spread = StrictMath.sqrt(spread * spread + pet.get().variance());
      basis.add(line("spread, with what is not known of this pet", spread, pet.get().provenance()));
    } else if (table.guessVariance() > 0) {
      spread = StrictMath.sqrt(spread * spread + table.guessVariance());
      basis.add(
          line(
              "spread, with what was guessed",
              spread,
              "reckoned from the same table: every size and coat it could be, held equally"
                  + " likely"));
    }
    return Math.min(spread, MOST_SPREAD);
  }

  private static double squared(double spread, Optional<LearnedRow> factor) {
    double scaled = spread * factor.map(LearnedRow::factor).orElse(1.0);
    return scaled * scaled;
  }

  private static Optional<LearnedRow> pet(GroomQuestion question, Learned learned) {
    return question.keys().petId().isEmpty()
        ? Optional.empty()
        : learned.find(LearnedKind.PET, question.keys().petId());
  }

  private static String petName(GroomQuestion question) {
    return (question.pet().isEmpty() ? question.keys().petId() : question.pet()) + " itself";
  }

  private static double said(String what, Optional<LearnedRow> row, List<BasisLine> basis) {
    row.ifPresent(found -> basis.add(factor(what, found.factorPermille(), found.provenance())));
    return row.map(LearnedRow::factor).orElse(1.0);
  }

  private static BasisLine factor(String what, int permille, String provenance) {
    return new BasisLine(what, permille, BasisUnit.FACTOR_PERMILLE, provenance);
  }

  static BasisLine line(String what, double spread, String provenance) {
    return new BasisLine(
        what, (int) Math.round(spread * 1000), BasisUnit.LOG_SPREAD_PERMILLE, provenance);
  }
}
