package dev.dogleg.audit;

import dev.dogleg.audit.TriedSets.OneSet;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekCertificate.Part;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekCertificate.Split;
import java.util.BitSet;
import java.util.List;

/**
 * Whether a search shows what it is to show: no week leaves out at most its limit and costs at most
 * so much.
 *
 * <p>Maintainers: suppose that there is such a week, and walk to the parts that hold it. By the
 * first bound none of its sets is dropped: what it has above the bound is the sum of what its sets,
 * and what it leaves out, have above theirs, each 0 or more; so no set has more than the room.
 * Bound by bound the same holds of those after. So the least reduced costs need only be true of
 * sets not dropped before, and a week that walks into closed parts alone is none. Parts stand after
 * those they are sides of, so two passes over them do without recursion.
 */
final class SearchCheck {
  private final Search search;
  private final WeekCertificate certificate;
  private final PricedSets priced;
  private final List<OneSet> sets;
  private final long most;
  private final WeekFindings found;
  private final String place;

  /** Sets not dropped at the end of each part, and bookings that must be served there. */
  private final BitSet[] kept;

  private final BitSet[] must;

  /**
   * A check.
   *
   * @param certificate certificate of sound form
   * @param number number of the search in it
   * @param priced what prices come to
   * @param sets sets of which the least reduced costs are asked
   * @param most cost of the weeks that the search is to exclude, or less
   * @param found receives findings
   */
  SearchCheck(
      WeekCertificate certificate,
      int number,
      PricedSets priced,
      List<OneSet> sets,
      long most,
      WeekFindings found) {
    this.search = certificate.searches().get(number);
    this.certificate = certificate;
    this.priced = priced;
    this.sets = sets;
    this.most = most;
    this.found = found;
    this.place = "Proof, at most " + search.limit() + " left out";
    kept = new BitSet[search.parts().size()];
    must = new BitSet[search.parts().size()];
  }

  void check() {
    int parts = search.parts().size();
    boolean[] closed = new boolean[parts];
    for (int p = 0; p < parts; p++) {
      enter(p);
      for (Bound bound : search.parts().get(p).bounds()) {
        sum(p, bound);
        least(p, bound);
        closed[p] |= PricedSets.room(bound, worst(bound)) < 0;
      }
    }
    boolean[][] sides = new boolean[parts][2];
    for (int p = parts - 1; p >= 0; p--) {
      closed[p] |= sides[p][0] && sides[p][1];
      Part part = search.parts().get(p);
      if (part.within() >= 0) {
        sides[part.within()][part.holds() ? 1 : 0] = closed[p];
      }
    }
    boolean nothing = most < 0; // No week costs less than nothing.
    if (!nothing && (parts == 0 || !closed[0])) {
      int open = parts == 0 ? 0 : open(closed);
      String text = place + ": part " + open + " is not closed; a better week may be in it.";
      found.week("certificate-open", "", reached(open), most + 1, text);
    }
  }

  /** The last part that has no closed sides and is not closed itself. */
  private static int open(boolean[] closed) {
    int p = closed.length - 1;
    while (p > 0 && closed[p]) {
      p--;
    }
    return p;
  }

  /** The highest bound on cost of a part, rounded up. */
  private long reached(int part) {
    long reached = 0;
    for (Bound bound :
        part < search.parts().size() ? search.parts().get(part).bounds() : List.<Bound>of()) {
      if (!bound.counting()) {
        reached = Math.max(reached, -Math.floorDiv(-bound.sum(), bound.parts()));
      }
    }
    return reached;
  }

  private long worst(Bound bound) {
    return bound.counting() ? search.limit() : most;
  }

  private void enter(int number) {
    Part part = search.parts().get(number);
    if (part.within() < 0) {
      kept[number] = new BitSet();
      kept[number].set(0, sets.size());
      must[number] = new BitSet();
      return;
    }
    kept[number] = (BitSet) kept[part.within()].clone();
    must[number] = (BitSet) must[part.within()].clone();
    Split split = search.parts().get(part.within()).split().orElseThrow();
    int one = certificate.bookingIds().indexOf(split.bookingId());
    int other = certificate.bookingIds().indexOf(split.otherId());
    BitSet here = kept[number];
    for (int s = here.nextSetBit(0); s >= 0; s = here.nextSetBit(s + 1)) {
      OneSet set = sets.get(s);
      here.set(s, agrees(split, part.holds(), set.kind(), set.bookings(), one, other));
    }
    switch (split.asks()) {
      case LEFT_OUT -> must[number].set(one, must[number].get(one) || !part.holds());
      case ON_KIND -> must[number].set(one, must[number].get(one) || part.holds());
      case WITH -> {
        must[number].set(one, must[number].get(one) || part.holds());
        must[number].set(other, must[number].get(other) || part.holds());
      }
    }
  }

  /**
   * Whether a set may be chosen on one side of a question.
   *
   * @param split the question
   * @param holds the side
   * @param kind the set's kind of van-day
   * @param set its bookings
   * @param one number of the booking asked about
   * @param other number of the other, where there is one
   */
  static boolean agrees(Split split, boolean holds, int kind, BitSet set, int one, int other) {
    boolean serves = set.get(one);
    return switch (split.asks()) {
      case LEFT_OUT -> !holds || !serves;
      case ON_KIND -> !serves || (kind == split.kind()) == holds;
      case WITH -> {
        boolean both = serves && set.get(other);
        yield holds ? serves == set.get(other) : !both;
      }
    };
  }

  private void sum(int part, Bound bound) {
    long right = priced.sum(bound, search.limit());
    if (bound.sum() != right) {
      String text = "%s, part %d: a bound is said to be %d parts; its prices give %d.";
      text = text.formatted(place, part, bound.sum(), right);
      found.week("certificate-sum", "", bound.sum(), right, text);
    }
    for (int i = 0; i < bound.cover().size(); i++) {
      boolean mayBeLeft = priced.mayBeLeft(bound, search.limit(), i) && !must[part].get(i);
      long price = bound.cover().get(i);
      if (mayBeLeft && price > priced.left(bound, i)) {
        String id = certificate.bookingIds().get(i);
        String text = "%s, part %d: serving %s is priced above what leaving it out costs.";
        text = text.formatted(place, part, id);
        found.week("certificate-price", id, price, priced.left(bound, i), text);
      }
    }
  }

  /** Whether no set is below the least reduced costs; then drops what has no room. */
  private void least(int part, Bound bound) {
    BitSet here = kept[part];
    long room = PricedSets.room(bound, worst(bound));
    for (int s = here.nextSetBit(0); s >= 0; s = here.nextSetBit(s + 1)) {
      OneSet set = sets.get(s);
      long reduced = PricedSets.reduced(bound, set.bookings(), set.costSixtieths());
      long least = bound.least().get(set.kind());
      if (reduced < least) {
        String text =
            "%s, part %d: on van-days %s the set %s has a lower reduced cost than is said.";
        List<String> ids = set.bookings().stream().mapToObj(certificate.bookingIds()::get).toList();
        text = text.formatted(place, part, certificate.vanDays().get(set.kind()), ids);
        found.week("certificate-least", "", reduced, least, text);
        return;
      }
      here.set(s, Math.subtractExact(reduced, least) <= room);
    }
  }
}
