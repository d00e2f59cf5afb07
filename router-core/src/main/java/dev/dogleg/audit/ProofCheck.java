package dev.dogleg.audit;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.Proof;

/** Whether the proof contradicts the plan that carries it. */
final class ProofCheck {
  private ProofCheck() {}

  static void check(DayPlan plan, FindingList found) {
    check(plan.proof(), plan.leftOutBooked(), plan.costSixtieths(), found);
  }

  /** Compares bounds with the number left out and the cost of a plan. */
  static void check(Proof proof, long leftOut, long cost, FindingList found) {
    boolean best = proof.kind() == Proof.Kind.PROVEN_BEST;
    if (proof.leftOutBound() > leftOut || (best && proof.leftOutBound() != leftOut)) {
      found.day(
          "proof-left-out",
          "",
          proof.leftOutBound(),
          leftOut,
          "The proof says that %d must be left out; the plan leaves out %d%s."
              .formatted(proof.leftOutBound(), leftOut, claim(best)));
      return;
    }
    // A bound that belongs to fewer visits left out says nothing about this plan's cost.
    boolean comparable = proof.leftOutBound() == leftOut;
    if (comparable && (proof.costBound() > cost || (best && proof.costBound() != cost))) {
      found.day(
          "proof-cost",
          "",
          proof.costBound(),
          cost,
          "The proof says that no plan costs less than %d sixtieths; this one costs %d%s."
              .formatted(proof.costBound(), cost, claim(best)));
    }
  }

  private static String claim(boolean best) {
    return best ? " and is said to be proven best" : "";
  }
}
