package dev.dogleg.cli.export;

import dev.dogleg.audit.ProofAudit;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekPlan;
import java.util.List;
import java.util.Locale;

/** Says in one sentence how far from perfect a day can be. */
public final class ProofText {
  private static final long SIXTIETHS_PER_MINUTE = 60L * Prices.SIXTIETHS_PER_DRIVE_SECOND;

  private ProofText() {}

  /**
   * The sentence for a week, without a full stop.
   *
   * @param plan a planned week
   * @return for example {@code no plan can beat this}
   */
  public static String week(WeekPlan plan) {
    Proof proof = plan.proof();
    if (proof.kind() != Proof.Kind.PROVEN_BEST && plan.leftOutCounted() == proof.leftOutBound()) {
      long minutes = minutes(plan.costSixtieths() - proof.costBound());
      return "no plan can beat this by more than "
          + Amounts.spokenMinutes(minutes)
          + " of driving"
          + stopped(proof);
    }
    return of(proof, plan.leftOutCounted(), plan.costSixtieths());
  }

  /**
   * On what a proof holds after the audit has gone over it again.
   *
   * @param proof what the audit said; without findings
   * @return lines of at most 80 columns; none where nothing is claimed
   */
  public static List<String> rechecked(ProofAudit proof) {
    return switch (proof.ground()) {
      case NOT_CLAIMED -> List.of();
      case EVERY_SET -> List.of("Checked a second time: every way to fill a day was looked at.");
      case SMALL_SETS -> small(proof.setSize());
      case DAY_ALONE ->
          List.of("Not checked a second time: so full a day has too many ways to fill it.");
      case ODDS ->
          List.of(
              "Times and promises were checked a second time; the odds and the proof were not.");
    };
  }

  private static List<String> small(int visits) {
    String sums = "Checked a second time: all sums";
    return visits == 0
        ? List.of(sums + ".", "Ways to fill a day were not looked at twice: there are too many.")
        : List.of(
            sums + ", and every day of up to " + visits + (visits == 1 ? " visit." : " visits."),
            "Fuller days were not looked at twice: there are too many ways to fill them.");
  }

  private static String stopped(Proof proof) {
    return proof.kind() == Proof.Kind.CLOCK_LIMIT ? "; stopped by the clock" : "";
  }

  private static long minutes(long sixtieths) {
    return Math.floorDiv(Math.max(0, sixtieths) + SIXTIETHS_PER_MINUTE - 1, SIXTIETHS_PER_MINUTE);
  }

  /**
   * The sentence, without a full stop.
   *
   * @param plan a planned day
   * @return for example {@code no plan can beat this}
   */
  public static String of(DayPlan plan) {
    return of(plan.proof(), plan.leftOutBooked(), plan.costSixtieths());
  }

  private static String of(Proof proof, int leftOut, long costSixtieths) {
    if (proof.kind() == Proof.Kind.PROVEN_BEST) {
      return "no plan can beat this";
    }
    String stopped = stopped(proof);
    int fewer = leftOut - proof.leftOutBound();
    if (fewer > 0) {
      return "not proven: a better plan might leave out up to "
          + fewer
          + (fewer == 1 ? " visit fewer" : " visits fewer")
          + stopped;
    }
    long minutes = minutes(costSixtieths - proof.costBound());
    return "could be better by at most " + Amounts.spokenMinutes(minutes) + " of driving" + stopped;
  }

  /** {@return a proof as a sentence of its own, with a capital and a full stop} */
  static String sentence(String proof) {
    return proof.substring(0, 1).toUpperCase(Locale.ROOT) + proof.substring(1) + ".";
  }
}
