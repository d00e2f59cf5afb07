package dev.dogleg.cli.command;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Proof;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekCertificate.Cut;
import dev.dogleg.itinerary.WeekCertificate.Part;
import dev.dogleg.itinerary.WeekCertificate.Question;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekCertificate.Split;
import dev.dogleg.itinerary.WeekPlan;
import dev.dogleg.plan.week.WeekPlanner.Solved;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;

/** A planner's answers with something wrong in them. */
final class Spoiled {
  private Spoiled() {}

  static Solved proof(Solved solved, UnaryOperator<Proof> other) {
    WeekPlan plan = solved.plan();
    Proof proof = other.apply(plan.proof());
    return new Solved(
        new WeekPlan(
            plan.days(), plan.noRoom(), plan.leftOutCounted(), plan.costSixtieths(), proof),
        solved.certificate());
  }

  static Solved searches(Solved solved, List<Search> searches) {
    WeekCertificate old = solved.certificate();
    return new Solved(
        solved.plan(), new WeekCertificate(old.bookingIds(), old.vanDays(), searches));
  }

  static Solved part(Solved solved, int search, int part, UnaryOperator<Part> other) {
    List<Search> searches = new ArrayList<>(solved.certificate().searches());
    List<Part> parts = new ArrayList<>(searches.get(search).parts());
    parts.set(part, other.apply(parts.get(part)));
    searches.set(search, new Search(searches.get(search).limit(), parts));
    return searches(solved, searches);
  }

  static Solved bound(Solved solved, int search, int bound, UnaryOperator<Bound> other) {
    return part(
        solved,
        search,
        0,
        part -> {
          List<Bound> bounds = new ArrayList<>(part.bounds());
          bounds.set(bound, other.apply(bounds.get(bound)));
          return new Part(part.within(), part.holds(), bounds, part.split());
        });
  }

  static Bound sum(Bound bound, long more) {
    return new Bound(
        bound.counting(),
        bound.cover(),
        bound.count(),
        bound.cuts(),
        bound.least(),
        bound.sum() + more);
  }

  /** Another price of a booking; the sum is left as it was. */
  static Bound cover(Bound bound, int booking, long more) {
    List<Long> cover = new ArrayList<>(bound.cover());
    cover.set(booking, cover.get(booking) + more);
    return new Bound(
        bound.counting(), cover, bound.count(), bound.cuts(), bound.least(), bound.sum());
  }

  /** Another least reduced cost, the sum to match. */
  static Bound least(Bound bound, int kind, long more, int vanDays) {
    List<Long> least = new ArrayList<>(bound.least());
    least.set(kind, least.get(kind) + more);
    return new Bound(
        bound.counting(),
        bound.cover(),
        bound.count(),
        bound.cuts(),
        least,
        bound.sum() + more * vanDays);
  }

  /**
   * The same search, split: on both sides of the question whether a booking is left out stand the
   * bounds that the whole had. It proves as much.
   */
  static Search split(Search search, String bookingId) {
    Part whole = search.parts().get(0);
    Optional<Split> split = Optional.of(new Split(Question.LEFT_OUT, bookingId, "", -1));
    Optional<Split> none = Optional.empty();
    return new Search(
        search.limit(),
        List.of(
            new Part(-1, true, List.of(), split),
            new Part(0, true, whole.bounds(), none),
            new Part(0, false, whole.bounds(), none)));
  }

  /** One stop of the first day that has a visit, changed. */
  static Solved firstVisit(Solved solved, UnaryOperator<PlannedStop> other) {
    WeekPlan plan = solved.plan();
    List<DayPlan> days = new ArrayList<>(plan.days());
    for (int d = 0; d < days.size(); d++) {
      DayPlan day = days.get(d);
      List<PlannedStop> stops = new ArrayList<>(day.stops());
      for (int s = 0; s < stops.size(); s++) {
        if (stops.get(s).kind() == PlannedStop.Kind.VISIT) {
          stops.set(s, other.apply(stops.get(s)));
          days.set(
              d,
              new DayPlan(
                  day.shift(),
                  stops,
                  day.noRoom(),
                  day.leftOutBooked(),
                  day.costSixtieths(),
                  day.proof()));
          return new Solved(
              new WeekPlan(
                  days, plan.noRoom(), plan.leftOutCounted(), plan.costSixtieths(), plan.proof()),
              solved.certificate());
        }
      }
    }
    throw new IllegalArgumentException("no visit in " + plan);
  }

  /**
   * A certificate changed at random in one thing; in most the sum is made to match, so that it does
   * not give the change away.
   *
   * @param what receives what was changed
   */
  static Solved drawn(Solved solved, SplittableRandom random, StringBuilder what) {
    WeekCertificate certificate = solved.certificate();
    int s = random.nextInt(certificate.searches().size());
    Search search = certificate.searches().get(s);
    int b = random.nextInt(search.parts().get(0).bounds().size());
    long by = 1L << random.nextInt(36);
    int n = certificate.bookingIds().size();
    int booking = random.nextInt(n);
    int kind = random.nextInt(certificate.vanDays().size());
    int many = certificate.vanDays().get(kind).size();
    int draw = random.nextInt(9);
    what.append("search " + s + ", bound " + b + ", by " + by + ": ");
    switch (draw) {
      case 0 -> {
        what.append("price of booking " + booking + " and the sum higher");
        return bound(solved, s, b, old -> sum(cover(old, booking, by), by));
      }
      case 1 -> {
        what.append("price of booking " + booking + " and the sum lower");
        return bound(solved, s, b, old -> sum(cover(old, booking, -by), -by));
      }
      case 2 -> {
        int other = (booking + 1 + random.nextInt(n - 1)) % n;
        what.append("price of booking " + booking + " higher, of " + other + " lower");
        return bound(solved, s, b, old -> cover(cover(old, booking, by), other, -by));
      }
      case 3 -> {
        what.append("least of kind " + kind + " and the sum higher");
        return bound(solved, s, b, old -> least(old, kind, by, many));
      }
      case 4 -> {
        what.append("least of kind " + kind + " and the sum lower");
        return bound(solved, s, b, old -> least(old, kind, -by, many));
      }
      case 5 -> {
        what.append("the sum alone");
        return bound(solved, s, b, old -> sum(old, random.nextBoolean() ? by : -by));
      }
      case 6 -> {
        what.append("a cut of that price with the sum to match");
        Cut cut = new Cut(0, 1 + random.nextInt(n - 3), n - 1, by);
        return bound(
            solved,
            s,
            b,
            old ->
                new Bound(
                    old.counting(),
                    old.cover(),
                    old.count(),
                    List.of(cut),
                    old.least(),
                    old.sum() - by));
      }
      case 7 -> {
        what.append("the price of the limit and the sum");
        return bound(
            solved,
            s,
            b,
            old ->
                new Bound(
                    old.counting(),
                    old.cover(),
                    old.count() + by,
                    old.cuts(),
                    old.least(),
                    old.sum() - by * search.limit()));
      }
      default -> {
        what.append("the bound is gone");
        return part(
            solved,
            s,
            0,
            old -> {
              List<Bound> fewer = new ArrayList<>(old.bounds());
              fewer.remove(b);
              return new Part(old.within(), old.holds(), fewer, old.split());
            });
      }
    }
  }
}
