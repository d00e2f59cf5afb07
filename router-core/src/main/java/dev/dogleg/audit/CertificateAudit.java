package dev.dogleg.audit;

import dev.dogleg.audit.ProofAudit.Ground;
import dev.dogleg.audit.TriedSets.OneSet;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Computes the proof of a week that is said to be the best again, in whole numbers, from its
 * certificate: {@code docs/WEEK.md}, "Proof".
 *
 * <p>Stateless: every method may be called by any number of threads, and never throws for a bad
 * certificate.
 */
public final class CertificateAudit {
  /** Work where nobody names another: a few seconds on a week too large for every set. */
  public static final long USUAL_WORK = 800_000_000L;

  private final WeekRequest request;
  private final WeekPlan plan;
  private final WeekCertificate certificate;
  private final PricedSets priced;
  private final WeekFindings found = new WeekFindings();

  private CertificateAudit(WeekRequest request, WeekPlan plan, WeekCertificate certificate) {
    this.request = request;
    this.plan = plan;
    this.certificate = certificate;
    this.priced = new PricedSets(request, certificate.vanDays());
  }

  /**
   * Rechecks a proof.
   *
   * @param request what was asked
   * @param plan the answer
   * @param certificate what its proof rests on; {@link WeekCertificate#NONE} is enough for a week
   *     of one van-day, and for one that is not said to be the best
   * @param work how many steps may be taken to look at sets (a set's visits with one of them last,
   *     a second of a day), 0 or more; the answer depends on it, not on the machine
   * @return findings, and on what the proof holds
   */
  public static ProofAudit check(
      WeekRequest request, WeekPlan plan, WeekCertificate certificate, long work) {
    if (plan.proof().kind() != Proof.Kind.PROVEN_BEST) {
      return new ProofAudit(List.of(), Ground.NOT_CLAIMED, 0);
    }
    if (plan.oddsSixtieths().isPresent()) {
      return new ProofAudit(List.of(), Ground.ODDS, 0);
    }
    CertificateAudit audit = new CertificateAudit(request, plan, certificate);
    try {
      return certificate.searches().isEmpty() ? audit.bare(work) : audit.certified(work);
    } catch (ArithmeticException tooLarge) {
      audit.form("a number in it is too large to reckon with");
      return audit.answer(Ground.SMALL_SETS, 0);
    }
  }

  private ProofAudit answer(Ground ground, int setSize) {
    return new ProofAudit(found.inOrder(), ground, setSize);
  }

  private void form(String text) {
    found.week("certificate-form", "", 1, 0, "The certificate of the proof: " + text + ".");
  }

  private ProofAudit certified(long work) {
    new CertificateForm(request, certificate).wrong().forEach(this::form);
    if (!found.inOrder().isEmpty()) {
      return answer(Ground.SMALL_SETS, 0);
    }
    int last = certificate.searches().size() - 1;
    long[] most = new long[last + 1];
    Arrays.fill(most, DearestWeek.of(request));
    most[last] = plan.costSixtieths() - 1;
    SetNeeds needs = new SetNeeds(certificate, most);
    TriedSets tried =
        TriedSets.of(request, priced.bookings(), certificate.vanDays(), needs::of, work);
    for (int s = 0; s <= last; s++) {
      new SearchCheck(certificate, s, priced, tried.sets(), most[s], found).check();
    }
    limits();
    return tried.all() ? answer(Ground.EVERY_SET, 0) : answer(Ground.SMALL_SETS, tried.size());
  }

  /** The last search is of what the plan leaves out; the one before excludes that it is less. */
  private void limits() {
    int last = certificate.searches().get(certificate.searches().size() - 1).limit();
    int first = certificate.searches().get(0).limit();
    int leftOut = plan.leftOutCounted();
    if (last != leftOut || (leftOut > 0 && first >= leftOut)) {
      String text = "The proof speaks of weeks that leave out at most %d; the plan leaves out %d.";
      found.week("certificate-open", "", last, leftOut, text.formatted(last, leftOut));
    }
  }

  /** Without a certificate: a week of one van-day, where every set can be tried. */
  private ProofAudit bare(long work) {
    boolean nothing = request.bookings().isEmpty();
    if (request.days().size() != 1 && !nothing) {
      String text = "The week is said to be the best, and no certificate shows it.";
      found.week("certificate-missing", "", 0, 1, text);
      return answer(Ground.SMALL_SETS, 0);
    }
    List<List<Integer>> kinds =
        IntStream.range(0, request.days().size()).mapToObj(List::of).toList();
    TriedSets tried = TriedSets.of(request, priced.bookings(), kinds, this::beats, work);
    int fewest = counted(new BitSet());
    long least = leftOut(new BitSet());
    for (OneSet set : tried.sets()) {
      int left = counted(set.bookings());
      long cost = Math.addExact(set.costSixtieths(), leftOut(set.bookings()));
      if (left < fewest || (left == fewest && cost < least)) {
        fewest = left;
        least = cost;
      }
    }
    if (fewest < plan.leftOutCounted()) {
      String text = "A day leaves out %d; this one leaves out %d and is said to be the best.";
      text = text.formatted(fewest, plan.leftOutCounted());
      found.week("not-best", "", plan.leftOutCounted(), fewest, text);
    } else if (fewest == plan.leftOutCounted() && least < plan.costSixtieths()) {
      String text = "A day costs %d sixtieths; this one costs %d and is said to be the best.";
      text = text.formatted(least, plan.costSixtieths());
      found.week("not-best", "", plan.costSixtieths(), least, text);
    }
    return answer(tried.all() ? Ground.EVERY_SET : Ground.DAY_ALONE, 0);
  }

  /** What a day must cost that is no better than the plan. */
  private long beats(int kind, BitSet set, long known, WorkLeft work) {
    work.spend(priced.bookings().size());
    int left = counted(set);
    if (left > plan.leftOutCounted()) {
      return known;
    }
    return left < plan.leftOutCounted()
        ? DaySeconds.NEVER
        : Math.max(known, Math.subtractExact(plan.costSixtieths(), leftOut(set)));
  }

  private int counted(BitSet served) {
    List<WeekBooking> bookings = priced.bookings();
    return (int)
        IntStream.range(0, bookings.size())
            .filter(i -> !served.get(i) && bookings.get(i).counted())
            .count();
  }

  private long leftOut(BitSet served) {
    List<WeekBooking> bookings = priced.bookings();
    return IntStream.range(0, bookings.size())
        .filter(i -> !served.get(i))
        .mapToLong(i -> bookings.get(i).leftOutSixtieths())
        .sum();
  }
}
