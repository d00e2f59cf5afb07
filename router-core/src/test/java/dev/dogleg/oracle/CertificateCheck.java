package dev.dogleg.oracle;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekCertificate.Cut;
import dev.dogleg.itinerary.WeekCertificate.Part;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekCertificate.Split;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Computes a week's proof again from its certificate: weak duality in whole numbers, with the cost
 * of every set of bookings by {@link DayOracle}.
 *
 * <p>Of a bound only the prices are taken as they are. The least reduced costs are worked out again
 * over all sets that are still of interest in the part, and the bound is summed from them; so what
 * a certificate says of sums and least reduced costs is not asked here, only whether its prices and
 * its tree prove the plan.
 */
public final class CertificateCheck {
  private final WeekRequest request;
  private final WeekCertificate certificate;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<Map<Integer, Long>> costs = new ArrayList<>();

  private CertificateCheck(WeekRequest request, WeekCertificate certificate) {
    this.request = request;
    this.certificate = certificate;
    for (int i = 0; i < certificate.bookingIds().size(); i++) {
      numbers.put(certificate.bookingIds().get(i), i);
    }
    for (int day = 0; day < request.days().size(); day++) {
      costs.add(costs(day));
    }
  }

  /**
   * Checks.
   *
   * @param request a week small enough for {@link DayOracle}
   * @param plan the plan said to be the best
   * @param certificate of sound form
   * @return what does not hold; empty where the proof stands by itself
   */
  public static List<String> check(
      WeekRequest request, WeekPlan plan, WeekCertificate certificate) {
    CertificateCheck check = new CertificateCheck(request, certificate);
    List<String> wrong = new ArrayList<>();
    int leftOut = plan.leftOutCounted();
    if (!check.shown(leftOut, plan.costSixtieths() - 1)) {
      wrong.add("that no week within limit " + leftOut + " is cheaper is not shown");
    }
    if (leftOut > 0 && !check.shown(leftOut - 1, check.dearest())) {
      wrong.add("that no week within limit " + (leftOut - 1) + " exists is not shown");
    }
    return wrong;
  }

  /** Least cost by set of booking numbers, extra prices of the choices included. */
  private Map<Integer, Long> costs(int day) {
    long[] bySet = DayOracle.costsBySet(request.asking(day));
    List<Integer> members = new ArrayList<>();
    List<Long> extra = new ArrayList<>();
    for (WeekBooking booking : request.bookings()) {
      for (DayChoice choice : booking.choices()) {
        if (choice.day() == day) {
          members.add(numbers.get(booking.id()));
          extra.add(choice.extraSixtieths());
        }
      }
    }
    Map<Integer, Long> found = new HashMap<>();
    for (int set = 1; set < bySet.length; set++) {
      int named = 0;
      long cost = bySet[set];
      for (int m = 0; m < members.size(); m++) {
        if ((set >> m & 1) != 0) {
          named |= 1 << members.get(m);
          cost += extra.get(m);
        }
      }
      if (bySet[set] < DayOracle.NEVER) {
        found.put(named, cost);
      }
    }
    return found;
  }

  /** No week costs more. */
  private long dearest() {
    long sum = request.bookings().stream().mapToLong(WeekBooking::leftOutSixtieths).sum();
    for (Map<Integer, Long> day : costs) {
      sum += day.values().stream().mapToLong(Long::longValue).max().orElse(0);
    }
    return sum;
  }

  private boolean shown(int limit, long most) {
    boolean none = most < 0; // No week costs less than nothing.
    for (Search search : certificate.searches()) {
      if (search.limit() == limit && !search.parts().isEmpty()) {
        none |= none(search, 0, most, new boolean[numbers.size()], costs);
      }
    }
    return none;
  }

  /** Whether no week of a part costs at most so much. */
  private boolean none(
      Search search, int number, long most, boolean[] mustServe, List<Map<Integer, Long>> before) {
    Part part = search.parts().get(number);
    List<Map<Integer, Long>> sets = before;
    for (Bound bound : part.bounds()) {
      long worst = bound.counting() ? search.limit() : most;
      List<BigInteger> least = new ArrayList<>();
      for (Map<Integer, Long> day : sets) {
        BigInteger lowest = BigInteger.ZERO;
        for (Map.Entry<Integer, Long> set : day.entrySet()) {
          lowest = lowest.min(reduced(bound, set.getKey(), set.getValue()));
        }
        least.add(lowest);
      }
      BigInteger room = whole(worst).multiply(whole(bound.parts()));
      room = room.subtract(sum(bound, search.limit(), mustServe, least));
      if (room.signum() < 0) {
        return true;
      }
      List<Map<Integer, Long>> fewer = new ArrayList<>();
      for (int day = 0; day < sets.size(); day++) {
        Map<Integer, Long> kept = new HashMap<>(sets.get(day));
        BigInteger highest = least.get(day).add(room);
        kept.entrySet()
            .removeIf(set -> reduced(bound, set.getKey(), set.getValue()).compareTo(highest) > 0);
        fewer.add(kept);
      }
      sets = fewer;
    }
    return part.split().isPresent()
        && side(search, number, most, mustServe, sets, true)
        && side(search, number, most, mustServe, sets, false);
  }

  private boolean side(
      Search search,
      int parent,
      long most,
      boolean[] mustServe,
      List<Map<Integer, Long>> sets,
      boolean holds) {
    Split split = search.parts().get(parent).split().orElseThrow();
    Optional<Part> side =
        search.parts().stream()
            .filter(part -> part.within() == parent && part.holds() == holds)
            .findFirst();
    boolean[] must = mustServe.clone();
    int one = numbers.get(split.bookingId());
    switch (split.asks()) {
      case LEFT_OUT -> must[one] |= !holds;
      case ON_KIND -> must[one] |= holds;
      case WITH -> {
        must[one] |= holds;
        must[numbers.get(split.otherId())] |= holds;
      }
    }
    List<Map<Integer, Long>> kept = new ArrayList<>();
    for (int day = 0; day < sets.size(); day++) {
      int here = day;
      Map<Integer, Long> agreeing = new HashMap<>(sets.get(day));
      agreeing.keySet().removeIf(set -> !agrees(split, holds, here, set));
      kept.add(agreeing);
    }
    return side.isPresent() && none(search, search.parts().indexOf(side.get()), most, must, kept);
  }

  private boolean agrees(Split split, boolean holds, int day, int set) {
    boolean serves = (set >> numbers.get(split.bookingId()) & 1) != 0;
    return switch (split.asks()) {
      case LEFT_OUT -> !(holds && serves);
      case ON_KIND -> !serves || certificate.vanDays().get(split.kind()).contains(day) == holds;
      case WITH -> {
        boolean other = (set >> numbers.get(split.otherId()) & 1) != 0;
        yield holds ? serves == other : !(serves && other);
      }
    };
  }

  private BigInteger sum(Bound bound, int limit, boolean[] mustServe, List<BigInteger> least) {
    int most = bound.counting() ? numbers.size() : limit;
    BigInteger sum = whole(bound.count()).multiply(whole(-most));
    for (Cut cut : bound.cuts()) {
      sum = sum.subtract(whole(cut.price()));
    }
    for (int i = 0; i < numbers.size(); i++) {
      WeekBooking booking = booking(i);
      boolean served = mustServe[i] || (limit == 0 && booking.counted() && !bound.counting());
      sum = sum.add(whole(bound.cover().get(i)));
      long objective = bound.counting() ? (booking.counted() ? 1 : 0) : booking.leftOutSixtieths();
      BigInteger left = whole(objective).multiply(whole(bound.parts()));
      left = left.subtract(whole(bound.cover().get(i)));
      left = booking.counted() ? left.add(whole(bound.count())) : left;
      sum = served ? sum : sum.add(left.min(BigInteger.ZERO));
    }
    return least.stream().reduce(sum, BigInteger::add);
  }

  private static BigInteger reduced(Bound bound, int set, long cost) {
    BigInteger reduced = whole(bound.counting() ? 0 : cost).multiply(whole(bound.parts()));
    for (int i = 0; i < bound.cover().size(); i++) {
      if ((set >> i & 1) != 0) {
        reduced = reduced.subtract(whole(bound.cover().get(i)));
      }
    }
    for (Cut cut : bound.cuts()) {
      int three = 1 << cut.first() | 1 << cut.second() | 1 << cut.third();
      boolean two = Integer.bitCount(three & set) >= 2;
      reduced = two ? reduced.add(whole(cut.price())) : reduced;
    }
    return reduced;
  }

  private WeekBooking booking(int number) {
    String id = certificate.bookingIds().get(number);
    return request.bookings().stream().filter(b -> b.id().equals(id)).findAny().orElseThrow();
  }

  private static BigInteger whole(long value) {
    return BigInteger.valueOf(value);
  }
}
