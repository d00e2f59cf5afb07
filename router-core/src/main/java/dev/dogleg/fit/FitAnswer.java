package dev.dogleg.fit;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Yes, when, and at what cost; or no, and why.
 *
 * @param newcomerId id of the newcomer
 * @param offers tier A, best first: least extra cost, then the earlier van-day; no more than asked
 *     for
 * @param furtherDays van-days on which it fits too, beyond the offers asked for, best first
 * @param noDays van-days that it may be on and does not fit, in their order
 * @param otherDays what tier B says; empty where it was not asked
 */
public record FitAnswer(
    String newcomerId,
    List<Offer> offers,
    List<Integer> furtherDays,
    List<NoDay> noDays,
    Optional<WeekOffer> otherDays) {
  /** Copies the lists. */
  public FitAnswer {
    Objects.requireNonNull(newcomerId, "newcomerId");
    offers = List.copyOf(offers);
    furtherDays = List.copyOf(furtherDays);
    noDays = List.copyOf(noDays);
    Objects.requireNonNull(otherDays, "otherDays");
  }

  /**
   * The same answer with more said of the van-days without room.
   *
   * @param said the same van-days, see {@link FitWeek#why}
   * @return the answer
   */
  public FitAnswer saying(List<NoDay> said) {
    return new FitAnswer(newcomerId, offers, furtherDays, said, otherDays);
  }

  /** The three kinds of answer. */
  public enum Verdict {
    /** It fits. */
    FITS,
    /** Proven: it does not fit. */
    NEVER_FITS,
    /** No room was found within the limit; nothing is proven. */
    NOT_FOUND
  }

  /** {@return what tier A says alone: never an answer about other days} */
  public Verdict sameDays() {
    if (!offers.isEmpty()) {
      return Verdict.FITS;
    }
    return noDays.stream().allMatch(NoDay::proven) ? Verdict.NEVER_FITS : Verdict.NOT_FOUND;
  }

  /**
   * What both tiers say together: a no is proven only where tier B was asked and proved it.
   *
   * @return the verdict
   */
  public Verdict verdict() {
    if (!offers.isEmpty()) {
      return Verdict.FITS;
    }
    return otherDays.map(WeekOffer::verdict).orElse(Verdict.NOT_FOUND);
  }
}
