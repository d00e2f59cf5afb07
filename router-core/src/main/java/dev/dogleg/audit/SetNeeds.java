package dev.dogleg.audit;

import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekCertificate.Part;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekCertificate.Split;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How much a set must cost so that it contradicts no least reduced cost of a certificate: what is
 * known to cost so much needs no closer look.
 *
 * <p>Maintainers: read as {@link SearchCheck} reads it. A bound is contradicted by a set that costs
 * less than so much, unless it costs so much that a bound before dropped it. A part below which no
 * more can be asked for is not entered.
 */
final class SetNeeds {
  private final WeekCertificate certificate;
  private final long[] most;
  private final List<List<List<Integer>>> sides = new ArrayList<>();
  private final Map<String, Integer> numbers = new HashMap<>();

  /**
   * Needs.
   *
   * @param certificate certificate of sound form
   * @param most by search: cost of the weeks that it is to exclude, or less
   */
  SetNeeds(WeekCertificate certificate, long[] most) {
    this.certificate = certificate;
    this.most = most;
    for (int i = 0; i < certificate.bookingIds().size(); i++) {
      numbers.put(certificate.bookingIds().get(i), i);
    }
    for (Search search : certificate.searches()) {
      List<List<Integer>> ofSearch = new ArrayList<>();
      for (int p = 0; p < search.parts().size(); p++) {
        ofSearch.add(new ArrayList<>());
        int within = search.parts().get(p).within();
        if (within >= 0) {
          ofSearch.get(within).add(p);
        }
      }
      sides.add(ofSearch);
    }
  }

  /** A part to be entered, and from which cost on a set is dropped before. */
  private record Entry(int part, long dropped) {}

  /**
   * What a set must cost.
   *
   * @param kind kind of van-day
   * @param set bookings by number
   * @param known it is known to cost no less
   * @param work receives the steps this takes
   * @return sixtieths, {@code known} where that is enough; {@link DaySeconds#NEVER} where no
   *     van-day of the kind may serve the set at all
   */
  long of(int kind, BitSet set, long known, WorkLeft work) {
    long need = known;
    for (int s = 0; s < certificate.searches().size(); s++) {
      Search search = certificate.searches().get(s);
      Deque<Entry> entries = new ArrayDeque<>();
      if (!search.parts().isEmpty()) {
        entries.push(new Entry(0, DaySeconds.NEVER));
      }
      while (!entries.isEmpty()) {
        Entry entry = entries.pop();
        Part part = search.parts().get(entry.part);
        long dropped = entry.dropped;
        for (Bound bound : part.bounds()) {
          if (dropped <= need) {
            break;
          }
          long worst = bound.counting() ? search.limit() : most[s];
          long free = PricedSets.reduced(bound, set, 0);
          long paid = Math.subtractExact(bound.least().get(kind), free);
          need = Math.max(need, Math.min(dropped, contradicts(bound, paid)));
          dropped = Math.min(dropped, drops(bound, paid, worst));
          work.spend(4L + set.cardinality() + 3L * bound.cuts().size());
        }
        if (dropped > need && part.split().isPresent()) {
          for (int side : sides.get(s).get(entry.part)) {
            if (agrees(part.split().get(), search.parts().get(side).holds(), kind, set)) {
              entries.push(new Entry(side, dropped));
            }
          }
        }
      }
    }
    return need;
  }

  private boolean agrees(Split split, boolean holds, int kind, BitSet set) {
    int one = numbers.get(split.bookingId());
    int other = numbers.getOrDefault(split.otherId(), -1);
    return SearchCheck.agrees(split, holds, kind, set, one, other);
  }

  /**
   * The cost below which the reduced cost of a set is lower than the least of its kind.
   *
   * @param paid what the prices pay for the set beyond its least, in parts
   */
  private static long contradicts(Bound bound, long paid) {
    if (bound.counting()) {
      return paid > 0 ? DaySeconds.NEVER : 0;
    }
    return -Math.floorDiv(-paid, bound.parts());
  }

  /** The cost from which on a bound drops a set. */
  private static long drops(Bound bound, long paid, long worst) {
    long more = Math.addExact(paid, PricedSets.room(bound, worst));
    if (bound.counting()) {
      return more < 0 ? 0 : DaySeconds.NEVER;
    }
    return Math.addExact(Math.floorDiv(more, bound.parts()), 1);
  }
}
