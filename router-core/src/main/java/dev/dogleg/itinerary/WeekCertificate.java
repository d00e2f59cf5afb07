package dev.dogleg.itinerary;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What the proof of a week rests on, in whole numbers, so that anybody can compute it again; how it
 * is read stands in {@code docs/WEEK.md}, "Proof".
 *
 * <p>The source of the bound is Lagrangian duality (Geoffrion 1974, "Lagrangean relaxation for
 * integer programming", Mathematical Programming Study 2:82-114); that of dropping sets,
 * reduced-cost fixing (Dantzig, Fulkerson, Johnson 1954, Operations Research 2:393-410).
 *
 * @param bookingIds ids of the bookings, in id order; a booking's number is its place here
 * @param vanDays kinds of van-days: for each the van-days that are alike, rising; each van-day of
 *     the request is in one of them
 * @param searches what was shown, in the order in which it was shown; none where nothing was
 */
public record WeekCertificate(
    List<String> bookingIds, List<List<Integer>> vanDays, List<Search> searches) {
  /** A certificate that shows nothing. */
  public static final WeekCertificate NONE = new WeekCertificate(List.of(), List.of(), List.of());

  /** Parts of a sixtieth in prices and bounds of cost. */
  public static final long COST_PARTS = 1L << 10;

  /** Parts of one booking left out in prices and bounds of the number left out. */
  public static final long COUNT_PARTS = 1L << 30;

  /** Copies the lists. */
  public WeekCertificate {
    bookingIds = List.copyOf(bookingIds);
    vanDays = vanDays.stream().map(List::copyOf).toList();
    searches = List.copyOf(searches);
  }

  /**
   * A tree of parts of the week that shows: no week leaves out at most {@code limit} counted
   * bookings and costs less than the plan; or, where the plan leaves out more, no week leaves out
   * so few.
   *
   * @param limit most counted bookings left out
   * @param parts the parts looked at; the first, where there is one, is the whole week
   */
  public record Search(int limit, List<Part> parts) {
    /** Copies the list. */
    public Search {
      parts = List.copyOf(parts);
    }
  }

  /**
   * Some of the weeks: those of a part that was split, on one side of its question.
   *
   * @param within number of the part that was split, below this part's own; -1 for the whole week
   * @param holds whether here the split part's question is answered with yes; true for the whole
   * @param bounds bounds on the weeks of this part; each may drop sets of bookings
   * @param split the question on which it was split, if it was
   */
  public record Part(int within, boolean holds, List<Bound> bounds, Optional<Split> split) {
    /** Copies the list. */
    public Part {
      bounds = List.copyOf(bounds);
      Objects.requireNonNull(split, "split");
    }
  }

  /** What a part is split on. */
  public enum Question {
    /** Whether the booking is left out. */
    LEFT_OUT,
    /** Whether the booking is served on a van-day of the kind. */
    ON_KIND,
    /** Whether the booking is served on one van-day together with the other booking. */
    WITH
  }

  /**
   * A question with two answers, one of which every week gives.
   *
   * @param asks what is asked
   * @param bookingId of which booking
   * @param otherId id of the other booking for {@link Question#WITH}, else empty
   * @param kind number of the kind of van-day for {@link Question#ON_KIND}, else -1
   */
  public record Split(Question asks, String bookingId, String otherId, int kind) {
    /** Checks that nothing is null. */
    public Split {
      Objects.requireNonNull(asks, "asks");
      Objects.requireNonNull(bookingId, "bookingId");
      Objects.requireNonNull(otherId, "otherId");
    }
  }

  /**
   * A lower bound from prices.
   *
   * @param counting whether it bounds the number left out, else the cost
   * @param cover price of serving each booking, by its number, in parts
   * @param count price of each counted booking that may be left out, 0 or more; 0 where {@code
   *     counting}, and where none may be
   * @param cuts cuts with a price
   * @param least for each kind of van-day a reduced cost, 0 or less, that no set of bookings is
   *     below
   * @param sum the bound, in parts
   */
  public record Bound(
      boolean counting, List<Long> cover, long count, List<Cut> cuts, List<Long> least, long sum) {
    /** Copies the lists. */
    public Bound {
      cover = List.copyOf(cover);
      cuts = List.copyOf(cuts);
      least = List.copyOf(least);
    }

    /** {@return parts of one unit of what is bounded} */
    public long parts() {
      return counting ? COUNT_PARTS : COST_PARTS;
    }
  }

  /**
   * Of three bookings the sets chosen hold two or more at most once.
   *
   * @param first lowest booking number
   * @param second next
   * @param third highest
   * @param price its price in parts, above 0
   */
  public record Cut(int first, int second, int third, long price) {}
}
