package dev.dogleg.audit;

import java.util.List;

/**
 * What came of rechecking the proof of a week.
 *
 * @param findings what is wrong; empty where the proof holds as far as {@code ground} says
 * @param ground on what it holds
 * @param setSize for {@link Ground#SMALL_SETS} up to how many bookings of a van-day every set was
 *     looked at, 0 or more; else 0
 */
public record ProofAudit(List<WeekFinding> findings, Ground ground, int setSize) {
  /** What the answer rests on. */
  public enum Ground {
    /** The plan is not said to be proven best; nothing was rechecked. */
    NOT_CLAIMED,
    /** The audit looked at every set of bookings itself; nothing is taken from the planner. */
    EVERY_SET,
    /**
     * The audit summed the bounds again and followed the search. That no set has a lower reduced
     * cost than the certificate says it looked at for small sets alone; for the rest it took the
     * certificate's word, unproved.
     */
    SMALL_SETS,
    /**
     * A week of one van-day too large to look at everything, proven as a day, without a
     * certificate: nothing was rechecked.
     */
    DAY_ALONE,
    /**
     * Promises are not all kept often enough and have a price; the audit does not reckon odds, so
     * nothing was rechecked.
     */
    ODDS
  }

  /** Copies the list. */
  public ProofAudit {
    findings = List.copyOf(findings);
  }
}
