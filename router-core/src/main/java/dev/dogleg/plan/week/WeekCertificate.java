package dev.dogleg.plan.week;

import java.util.List;

/**
 * What a proof of a week rests on, in whole numbers, so that anybody can compute it again.
 *
 * <p>Each {@link Part} holds prices. Whatever they are, no week of that part is worth less than
 * {@code sum(cover) - count * limit - sum(cut) + sum over bookings that may be left out of min(0,
 * (objective of leaving it out) * scale - cover + (counted: count)) + sum over kinds of van-days of
 * many * least}, where {@code least} is at most 0 and no set that may be served there has a smaller
 * {@code objective * scale - sum of cover of its bookings + sum of cut of the cuts of which it
 * holds two or more}. Sets of no interest any more (their excess over a part's least is more than
 * what lies between that part's bound and {@code ceiling}) may be left aside.
 *
 * @param bookingIds ids of the bookings, in the order of {@code cover}
 * @param vanDays for each kind of van-day the van-days that are alike
 * @param ceiling cost of the plan that is proven best
 * @param parts the parts in the order in which they were closed; first, where there is one, the
 *     whole week
 */
public record WeekCertificate(
    List<String> bookingIds, List<List<Integer>> vanDays, long ceiling, List<Part> parts) {
  /** Copies the lists. */
  public WeekCertificate {
    bookingIds = List.copyOf(bookingIds);
    vanDays = List.copyOf(vanDays);
    parts = List.copyOf(parts);
  }

  /** A certificate that shows nothing. */
  static final WeekCertificate EMPTY = new WeekCertificate(List.of(), List.of(), 0, List.of());

  /**
   * One part of the search and its prices.
   *
   * @param decisions what marks the part, in words; empty: the whole week
   * @param counting whether the objective is the number left out, else the cost
   * @param limit most counted bookings left out
   * @param scale parts of one unit of the objective
   * @param cover price of each booking
   * @param count price of the limit, 0 or more
   * @param cuts the cuts
   * @param least least reduced cost of each kind of van-day, 0 or less
   * @param scaledBound the bound, in parts
   */
  public record Part(
      List<String> decisions,
      boolean counting,
      int limit,
      long scale,
      List<Long> cover,
      long count,
      List<Cut> cuts,
      List<Long> least,
      long scaledBound) {
    /** Copies the lists. */
    public Part {
      decisions = List.copyOf(decisions);
      cover = List.copyOf(cover);
      cuts = List.copyOf(cuts);
      least = List.copyOf(least);
    }
  }

  /**
   * Of three bookings the sets chosen hold two or more at most once.
   *
   * @param first a booking's number
   * @param second another's
   * @param third another's
   * @param price its price, 0 or more
   */
  public record Cut(int first, int second, int third, long price) {}
}
