package dev.dogleg.oracle;

import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.itinerary.WeekRequest;
import dev.dogleg.plan.week.WeekCertificate;
import dev.dogleg.plan.week.WeekCertificate.Cut;
import dev.dogleg.plan.week.WeekCertificate.Part;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Computes a week's proof again from its certificate: weak duality in whole numbers, with the cost
 * of every set of bookings by {@link DayOracle}.
 *
 * <p>For each part: the prices are taken as they are; the least reduced cost of each van-day is
 * worked out again over all sets that the part's decisions allow, less those that a wider part
 * shows to be of no interest; the bound is summed again. The parts must leave nothing out: where a
 * decision was taken, both its sides stand. For every smaller number left out too the parts must
 * show that there is no such week.
 */
final class CertificateCheck {
  private final WeekRequest request;
  private final WeekPlan plan;
  private final WeekCertificate certificate;
  private final Map<String, Integer> numbers = new HashMap<>();
  private final List<Map<Integer, Long>> costs = new ArrayList<>();
  private final List<String> wrong = new ArrayList<>();

  /** Bounds of parts and their least reduced costs by day, for the limit at hand. */
  private final Map<Integer, BigInteger> known = new HashMap<>();

  private final Map<List<Integer>, BigInteger> leasts = new HashMap<>();

  private CertificateCheck(WeekRequest request, WeekPlan plan, WeekCertificate certificate) {
    this.request = request;
    this.plan = plan;
    this.certificate = certificate;
    for (int i = 0; i < certificate.bookingIds().size(); i++) {
      numbers.put(certificate.bookingIds().get(i), i);
    }
    for (int day = 0; day < request.days().size(); day++) {
      costs.add(costs(day));
    }
  }

  /** {@return what does not hold; empty where the proof stands by itself} */
  static List<String> check(WeekRequest request, WeekPlan plan, WeekCertificate certificate) {
    CertificateCheck check = new CertificateCheck(request, plan, certificate);
    check.tree(plan.leftOutCounted());
    return check.wrong;
  }

  /** Least cost by set of booking numbers, extra prices of the choices included. */
  private Map<Integer, Long> costs(int day) {
    long[] bySet = DayOracle.costsBySet(WeekOracle.askedOf(request, day));
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
    Map<Integer, Long> costs = new HashMap<>();
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
        costs.put(named, cost);
      }
    }
    return costs;
  }

  /** Whether the closed parts with a limit cover the whole week, for this limit and all below. */
  private void tree(int leftOut) {
    List<Part> parts = certificate.parts();
    for (int limit = leftOut; limit >= 0; limit--) {
      boolean fewer = limit < leftOut;
      known.clear();
      leasts.clear();
      List<Part> closed = new ArrayList<>();
      for (Part part : parts) {
        if (closes(part, limit, fewer)) {
          closed.add(part);
        }
      }
      boolean free = !fewer && plan.costSixtieths() == 0; // No week costs less than nothing.
      if (!free && !covered(List.of(), closed)) {
        wrong.add("limit " + limit + " is not covered by " + closed.size() + " closed parts");
      }
    }
  }

  private boolean covered(List<String> decisions, List<Part> closed) {
    Set<String> next = new HashSet<>();
    for (Part part : closed) {
      List<String> its = part.decisions();
      int size = decisions.size();
      boolean within = its.size() >= size && its.subList(0, size).equals(decisions);
      if (within && its.size() == size) {
        return true;
      }
      if (within) {
        next.add(its.get(size));
      }
    }
    for (String decision : next) {
      if (!decision.contains(" not ")) {
        int verb = decision.indexOf(' ') + 1;
        String other = decision.substring(0, verb) + "not " + decision.substring(verb);
        if (covered(with(decisions, decision), closed) && covered(with(decisions, other), closed)) {
          return true;
        }
      }
    }
    return false;
  }

  private static List<String> with(List<String> decisions, String one) {
    List<String> longer = new ArrayList<>(decisions);
    longer.add(one);
    return longer;
  }

  /** Whether a part shows that it holds no week within the limit that beats the plan. */
  private boolean closes(Part part, int limit, boolean fewer) {
    List<Part> wider = new ArrayList<>();
    for (Part other : certificate.parts()) {
      int size = other.decisions().size();
      boolean prefix =
          size <= part.decisions().size()
              && part.decisions().subList(0, size).equals(other.decisions());
      if (prefix) {
        wider.add(other);
      }
    }
    return room(part, limit, fewer, bound(part, limit, fewer, wider)).signum() < 0;
  }

  /** What lies between a bound and the worst week of interest: one better than the plan. */
  private BigInteger room(Part part, int limit, boolean fewer, BigInteger bound) {
    BigInteger most = whole(limit);
    if (!part.counting()) {
      // Costs are whole: one sixtieth below the plan's.
      most = fewer ? dearest() : whole(plan.costSixtieths() - 1);
    }
    return most.multiply(whole(part.scale())).subtract(bound);
  }

  /** Whether a wider part shows that no week of interest holds a set. */
  private boolean aside(Part wider, int kind, int day, int set, int limit, boolean fewer) {
    int part = certificate.parts().indexOf(wider);
    if (!known.containsKey(part)) {
      known.put(part, bound(wider, limit, fewer, List.of()));
    }
    BigInteger room = room(wider, limit, fewer, known.get(part));
    List<Integer> place = List.of(part, day);
    if (!leasts.containsKey(place)) {
      leasts.put(place, least(wider, kind, day, limit, fewer, List.of()));
    }
    BigInteger excess = reduced(wider, set, costs.get(day).get(set)).subtract(leasts.get(place));
    return allowed(wider, kind, set) && excess.compareTo(room) > 0;
  }

  /** No week costs more. */
  private BigInteger dearest() {
    BigInteger sum = BigInteger.ZERO;
    for (Map<Integer, Long> day : costs) {
      long most = day.values().stream().mapToLong(Long::longValue).max().orElse(0);
      sum = sum.add(BigInteger.valueOf(most));
    }
    for (WeekBooking booking : request.bookings()) {
      sum = sum.add(BigInteger.valueOf(booking.leftOutSixtieths()));
    }
    return sum;
  }

  private BigInteger bound(Part part, int limit, boolean fewer, List<Part> wider) {
    int most = part.counting() ? part.limit() : limit;
    BigInteger sum = whole(part.count()).multiply(whole(most)).negate();
    for (Cut cut : part.cuts()) {
      sum = sum.subtract(whole(cut.price()));
      expect(cut.price() >= 0, "a cut of negative price");
    }
    expect(part.count() >= 0, "a limit of negative price");
    for (int i = 0; i < numbers.size(); i++) {
      WeekBooking booking = booking(i);
      sum = sum.add(whole(part.cover().get(i)));
      long objective = part.counting() ? (booking.counted() ? 1 : 0) : booking.leftOutSixtieths();
      BigInteger left = whole(objective).multiply(whole(part.scale()));
      left = left.subtract(whole(part.cover().get(i)));
      left = booking.counted() ? left.add(whole(part.count())) : left;
      sum = mustServe(part, i) ? sum : sum.add(left.min(BigInteger.ZERO));
    }
    for (int kind = 0; kind < certificate.vanDays().size(); kind++) {
      for (int day : certificate.vanDays().get(kind)) {
        sum = sum.add(least(part, kind, day, limit, fewer, wider));
      }
    }
    return sum;
  }

  private BigInteger least(
      Part part, int kind, int day, int limit, boolean fewer, List<Part> wider) {
    BigInteger least = BigInteger.ZERO;
    for (Map.Entry<Integer, Long> one : costs.get(day).entrySet()) {
      int set = one.getKey();
      BigInteger reduced = reduced(part, set, one.getValue());
      // Only sets that pull the bound down are worth the look at wider parts.
      if (reduced.compareTo(least) < 0
          && allowed(part, kind, set)
          && wider.stream().noneMatch(w -> aside(w, kind, day, set, limit, fewer))) {
        least = reduced;
      }
    }
    return least;
  }

  private BigInteger reduced(Part part, int set, long cost) {
    BigInteger reduced = whole(part.counting() ? 0 : cost).multiply(whole(part.scale()));
    for (int i = 0; i < numbers.size(); i++) {
      if ((set >> i & 1) != 0) {
        reduced = reduced.subtract(whole(part.cover().get(i)));
      }
    }
    for (Cut cut : part.cuts()) {
      int three = 1 << cut.first() | 1 << cut.second() | 1 << cut.third();
      boolean two = Integer.bitCount(three & set) >= 2;
      reduced = two ? reduced.add(whole(cut.price())) : reduced;
    }
    return reduced;
  }

  private boolean allowed(Part part, int kind, int set) {
    boolean allowed = true;
    for (String decision : part.decisions()) {
      String[] words = decision.split(" ", -1);
      boolean holds = !words[1].equals("not");
      String verb = words[holds ? 1 : 2];
      boolean serves = holds(set, words[0]);
      if (verb.equals("left")) {
        allowed &= !holds || !serves;
      } else if (verb.equals("on")) {
        String days = decision.substring(decision.indexOf('['));
        boolean here = certificate.vanDays().get(kind).toString().equals(days);
        allowed &= !serves || here == holds;
      } else {
        boolean other = holds(set, words[words.length - 1]);
        allowed &= holds ? serves == other : !(serves && other);
      }
    }
    return allowed;
  }

  private boolean holds(int set, String id) {
    return (set >> numbers.get(id) & 1) != 0;
  }

  private boolean mustServe(Part part, int number) {
    String id = certificate.bookingIds().get(number);
    return part.decisions().stream()
        .anyMatch(
            d ->
                d.equals(id + " not left out")
                    || d.startsWith(id + " on van-days")
                    || d.startsWith(id + " with ")
                    || (d.endsWith(" with " + id) && !d.contains(" not ")));
  }

  private WeekBooking booking(int number) {
    String id = certificate.bookingIds().get(number);
    return request.bookings().stream().filter(b -> b.id().equals(id)).findAny().orElseThrow();
  }

  private void expect(boolean holds, String otherwise) {
    if (!holds) {
      wrong.add(otherwise);
    }
  }

  private static BigInteger whole(long value) {
    return BigInteger.valueOf(value);
  }
}
