package dev.dogleg.audit;

import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekCertificate;
import dev.dogleg.itinerary.WeekCertificate.Bound;
import dev.dogleg.itinerary.WeekCertificate.Cut;
import dev.dogleg.itinerary.WeekCertificate.Part;
import dev.dogleg.itinerary.WeekCertificate.Question;
import dev.dogleg.itinerary.WeekCertificate.Search;
import dev.dogleg.itinerary.WeekCertificate.Split;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;

/** Whether a certificate speaks of this week, and each part of it of what it may speak of. */
final class CertificateForm {
  private final WeekRequest request;
  private final WeekCertificate certificate;
  private final int bookings;
  private final int kinds;

  CertificateForm(WeekRequest request, WeekCertificate certificate) {
    this.request = request;
    this.certificate = certificate;
    this.bookings = certificate.bookingIds().size();
    this.kinds = certificate.vanDays().size();
  }

  /** {@return what has not its form, in words; empty where all has} */
  List<String> wrong() {
    List<String> wrong = new ArrayList<>();
    List<String> ids = request.bookings().stream().map(WeekBooking::id).sorted().toList();
    if (!certificate.bookingIds().equals(ids)) {
      wrong.add("it names other bookings than the week has");
    }
    List<Integer> days = certificate.vanDays().stream().flatMap(List::stream).sorted().toList();
    if (!days.equals(IntStream.range(0, request.days().size()).boxed().toList())) {
      wrong.add("its kinds of van-days do not hold every van-day once");
    }
    if (!wrong.isEmpty()) {
      return wrong;
    }
    for (int s = 0; s < certificate.searches().size(); s++) {
      Search search = certificate.searches().get(s);
      int before = s == 0 ? search.limit() - 1 : certificate.searches().get(s - 1).limit();
      if (search.limit() < 0 || search.limit() != before + 1) {
        wrong.add("search " + s + " has the limit " + search.limit());
      }
      Set<String> sides = new HashSet<>();
      for (int p = 0; p < search.parts().size(); p++) {
        String place = "search " + s + ", part " + p + ": ";
        part(search, p, sides).forEach(text -> wrong.add(place + text));
      }
    }
    return wrong;
  }

  private List<String> part(Search search, int number, Set<String> sides) {
    List<String> wrong = new ArrayList<>();
    Part part = search.parts().get(number);
    boolean whole = part.within() == -1 && part.holds();
    boolean side =
        part.within() >= 0
            && part.within() < number
            && search.parts().get(part.within()).split().isPresent();
    if (number == 0 ? !whole : !side) {
      wrong.add("it is a side of no part that was split before");
    }
    if (!sides.add(part.within() + " " + part.holds())) {
      wrong.add("this side stands there already");
    }
    if (part.split().isPresent() && !formed(part.split().get())) {
      wrong.add("its question is none: " + part.split().get());
    }
    for (Bound bound : part.bounds()) {
      if (!formed(search, bound)) {
        wrong.add("a bound has not its form");
      }
    }
    return wrong;
  }

  private boolean formed(Split split) {
    boolean other = certificate.bookingIds().contains(split.otherId());
    return certificate.bookingIds().contains(split.bookingId())
        && (split.asks() == Question.WITH
            ? other && !split.otherId().equals(split.bookingId())
            : split.otherId().isEmpty())
        && (split.asks() == Question.ON_KIND
            ? split.kind() >= 0 && split.kind() < kinds
            : split.kind() == -1);
  }

  private boolean formed(Search search, Bound bound) {
    boolean unpriced = bound.counting() || search.limit() == 0;
    return bound.cover().size() == bookings
        && bound.least().size() == kinds
        && bound.least().stream().allMatch(least -> least <= 0)
        && bound.count() >= 0
        && (bound.count() == 0 || !unpriced)
        && bound.cuts().stream().allMatch(this::formed);
  }

  private boolean formed(Cut cut) {
    return cut.first() >= 0
        && cut.first() < cut.second()
        && cut.second() < cut.third()
        && cut.third() < bookings
        && cut.price() > 0;
  }
}
