package dev.dogleg.audit;

import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekCertificate.Cut;
import dev.dogleg.itinerary.WeekCertificate.Part;
import dev.dogleg.itinerary.WeekCertificate.Question;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekCertificate.Split;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Certificates that differ from a given one in a single number or name, by what was changed. */
final class BrokenCertificates {
  private final WeekCertificate whole;

  /** Amounts changed: prices, bounds, limits, places in the tree. */
  private final Map<String, WeekCertificate> amounts = new LinkedHashMap<>();

  /** Other bookings or kinds spoken of, or cost for number: and that may prove as much. */
  private final Map<String, WeekCertificate> names = new LinkedHashMap<>();

  BrokenCertificates(WeekCertificate whole) {
    this.whole = whole;
    for (int s = 0; s < whole.searches().size(); s++) {
      Search search = whole.searches().get(s);
      String place = "search " + s;
      for (int by : new int[] {-1, 1}) {
        Search other = new Search(search.limit() + by, search.parts());
        amounts.put(place + " limit " + by, with(s, other));
      }
      amounts.put(place + " gone", new WeekCertificate(ids(), whole.vanDays(), without(s)));
      for (int p = 0; p < search.parts().size(); p++) {
        part(s, p, place + " part " + p);
      }
    }
    List<String> swapped = new ArrayList<>(ids());
    swapped.add(swapped.remove(0));
    if (swapped.size() > 1) {
      amounts.put("ids", new WeekCertificate(swapped, whole.vanDays(), whole.searches()));
    }
    List<List<Integer>> fewer = whole.vanDays().subList(1, whole.vanDays().size());
    amounts.put("van-days", new WeekCertificate(ids(), fewer, whole.searches()));
  }

  Map<String, WeekCertificate> amounts() {
    return amounts;
  }

  Map<String, WeekCertificate> names() {
    return names;
  }

  private List<String> ids() {
    return whole.bookingIds();
  }

  private List<Search> without(int s) {
    List<Search> searches = new ArrayList<>(whole.searches());
    searches.remove(s);
    return searches;
  }

  private WeekCertificate with(int s, Search other) {
    List<Search> searches = new ArrayList<>(whole.searches());
    searches.set(s, other);
    return new WeekCertificate(ids(), whole.vanDays(), searches);
  }

  private WeekCertificate with(int s, int p, Part other) {
    Search search = whole.searches().get(s);
    List<Part> parts = new ArrayList<>(search.parts());
    parts.set(p, other);
    return with(s, new Search(search.limit(), parts));
  }

  private void part(int s, int p, String place) {
    Part part = whole.searches().get(s).parts().get(p);
    amounts.put(
        place + " within",
        with(s, p, new Part(part.within() + 1, part.holds(), part.bounds(), part.split())));
    amounts.put(
        place + " side",
        with(s, p, new Part(part.within(), !part.holds(), part.bounds(), part.split())));
    for (int b = 0; b < part.bounds().size(); b++) {
      for (Map.Entry<String, Bound> other : changed(part.bounds().get(b)).entrySet()) {
        List<Bound> bounds = new ArrayList<>(part.bounds());
        bounds.set(b, other.getValue());
        Part with = new Part(part.within(), part.holds(), bounds, part.split());
        boolean named = other.getKey().contains("of cut") || other.getKey().equals("objective");
        String what = place + " bound " + b + " " + other.getKey();
        (named ? names : amounts).put(what, with(s, p, with));
      }
    }
    if (part.split().isPresent()) {
      for (Split other : changed(part.split().get())) {
        Part with = new Part(part.within(), part.holds(), part.bounds(), Optional.of(other));
        names.put(place + " " + other, with(s, p, with));
      }
    }
  }

  private List<Split> changed(Split split) {
    List<Split> others = new ArrayList<>();
    for (String id : ids()) {
      if (split.asks() == Question.WITH && !id.equals(split.bookingId())) {
        others.add(new Split(split.asks(), split.bookingId(), id, -1));
      }
      if (!id.equals(split.otherId())) {
        others.add(new Split(split.asks(), id, split.otherId(), split.kind()));
      }
    }
    for (int kind = 0; split.asks() == Question.ON_KIND && kind < whole.vanDays().size(); kind++) {
      others.add(new Split(split.asks(), split.bookingId(), "", kind));
    }
    others.remove(split);
    return others;
  }

  private static Map<String, Bound> changed(Bound bound) {
    Map<String, Bound> others = new LinkedHashMap<>();
    for (int by : new int[] {-1, 1}) {
      for (int i = 0; i < bound.cover().size(); i++) {
        others.put("cover " + i + " " + by, cover(bound, added(bound.cover(), i, by)));
      }
      for (int k = 0; k < bound.least().size(); k++) {
        others.put("least " + k + " " + by, least(bound, added(bound.least(), k, by)));
      }
      others.put(
          "count " + by,
          new Bound(
              bound.counting(),
              bound.cover(),
              bound.count() + by,
              bound.cuts(),
              bound.least(),
              bound.sum()));
      others.put("sum " + by, sum(bound, bound.sum() + by));
      for (int c = 0; c < bound.cuts().size(); c++) {
        Cut cut = bound.cuts().get(c);
        Cut dearer = new Cut(cut.first(), cut.second(), cut.third(), cut.price() + by);
        others.put("price of a cut " + c + " " + by, cut(bound, c, dearer));
        Cut first = new Cut(cut.first() + by, cut.second(), cut.third(), cut.price());
        others.put("first of cut " + c + " " + by, cut(bound, c, first));
        Cut third = new Cut(cut.first(), cut.second(), cut.third() + by, cut.price());
        others.put("third of cut " + c + " " + by, cut(bound, c, third));
      }
    }
    others.put(
        "objective",
        new Bound(
            !bound.counting(),
            bound.cover(),
            bound.count(),
            bound.cuts(),
            bound.least(),
            bound.sum()));
    return others;
  }

  static Bound cover(Bound bound, List<Long> cover) {
    return new Bound(
        bound.counting(), cover, bound.count(), bound.cuts(), bound.least(), bound.sum());
  }

  static Bound least(Bound bound, List<Long> least) {
    return new Bound(
        bound.counting(), bound.cover(), bound.count(), bound.cuts(), least, bound.sum());
  }

  static Bound sum(Bound bound, long sum) {
    return new Bound(
        bound.counting(), bound.cover(), bound.count(), bound.cuts(), bound.least(), sum);
  }

  private static Bound cut(Bound bound, int number, Cut other) {
    List<Cut> cuts = new ArrayList<>(bound.cuts());
    cuts.set(number, other);
    return new Bound(
        bound.counting(), bound.cover(), bound.count(), cuts, bound.least(), bound.sum());
  }

  static List<Long> added(List<Long> values, int at, long by) {
    List<Long> others = new ArrayList<>(values);
    others.set(at, others.get(at) + by);
    return others;
  }
}
