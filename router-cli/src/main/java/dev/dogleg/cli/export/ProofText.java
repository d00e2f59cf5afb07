package dev.dogleg.cli.export;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Proof;

/** Says in one sentence how far from perfect a day can be. */
public final class ProofText {
  private static final long SIXTIETHS_PER_MINUTE = 60L * Prices.SIXTIETHS_PER_DRIVE_SECOND;

  private ProofText() {}

  /**
   * The sentence, without a full stop.
   *
   * @param plan a planned day
   * @return for example {@code no plan can beat this}
   */
  public static String of(DayPlan plan) {
    Proof proof = plan.proof();
    if (proof.kind() == Proof.Kind.PROVEN_BEST) {
      return "no plan can beat this";
    }
    String stopped = proof.kind() == Proof.Kind.CLOCK_LIMIT ? "; stopped by the clock" : "";
    int fewer = plan.leftOutBooked() - proof.leftOutBound();
    if (fewer > 0) {
      return "not proven: a better plan might leave out up to "
          + fewer
          + (fewer == 1 ? " visit fewer" : " visits fewer")
          + stopped;
    }
    long gap = Math.max(0, plan.costSixtieths() - proof.costBound());
    long minutes = Math.floorDiv(gap + SIXTIETHS_PER_MINUTE - 1, SIXTIETHS_PER_MINUTE);
    return "could be better by at most " + Amounts.spokenMinutes(minutes) + " of driving" + stopped;
  }
}
