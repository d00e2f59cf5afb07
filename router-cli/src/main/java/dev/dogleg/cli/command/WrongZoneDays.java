package dev.dogleg.cli.command;

import dev.dogleg.audit.DayAudit;
import dev.dogleg.cli.export.ZonesSheet.Who;
import dev.dogleg.cli.export.ZonesSheet.WrongDay;
import dev.dogleg.cli.prepare.FreeWeek;
import dev.dogleg.fit.FitAnswer;
import dev.dogleg.fit.FitQuestion;
import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.fit.FitWeek;
import dev.dogleg.fit.Offer;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.model.Booking;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/**
 * Visits on a day that is none of their zones', and what each costs: it is taken out of the week
 * and asked for again, on its day and on each day of its zones.
 */
final class WrongZoneDays {
  private final ZoneBounds bounds;
  private final FreeWeek free;
  private final FitWeek planned;
  private final Map<String, FitAnswer> answers = new LinkedHashMap<>();
  private final List<String> findings = new ArrayList<>();

  WrongZoneDays(ZoneBounds bounds, FreeWeek free, FitWeek planned) {
    this.bounds = bounds;
    this.planned = planned;
    this.free = free;
    for (WeekBooking visit : free.week().request().bookings()) {
      if (bounds.wrong(visit.id(), free.placed().get(visit.id()))) {
        answers.put(visit.id(), asked(visit));
      }
    }
  }

  private FitAnswer asked(WeekBooking visit) {
    List<DayChoice> choices =
        visit.choices().stream()
            .filter(
                choice ->
                    choice.day() == free.placed().get(visit.id())
                        || bounds.welcome(visit.id(), choice.day()))
            .toList();
    WeekBooking asked =
        new WeekBooking(visit.id(), visit.counted(), visit.leftOutSixtieths(), choices);
    FitAnswer answer =
        planned
            .without(visit.id())
            .ask(new FitQuestion(asked, List.of(), choices.size(), OtherDays.NEVER, 1));
    for (Offer offer : answer.offers()) {
      DayAudit.check(offer.request(), offer.after())
          .forEach(one -> findings.add(one.text() + " [" + one.code() + "]"));
    }
    return answer;
  }

  /** {@return what the audit says of the days planned here} */
  List<String> findings() {
    return findings;
  }

  /** {@return ids of the visits} */
  Set<String> visits() {
    return answers.keySet();
  }

  /** All of them by day. */
  List<WrongDay> all(Function<String, Who> who) {
    return answers.keySet().stream()
        .map(visit -> one(visit, who))
        .sorted(Comparator.comparingInt(WrongDay::day))
        .toList();
  }

  private WrongDay one(String visit, Function<String, Who> who) {
    int day = free.placed().get(visit);
    List<Booking> bookings = free.week().bookings().get(visit);
    List<Offer> offers = answers.get(visit).offers();
    OptionalInt there =
        offers.stream()
            .filter(offer -> offer.day() == day)
            .mapToInt(WrongZoneDays::extra)
            .findFirst();
    Optional<Offer> best =
        offers.stream()
            .filter(offer -> bounds.welcome(visit, offer.day()))
            .min(Comparator.comparingInt(WrongZoneDays::extra).thenComparingInt(Offer::day));
    return new WrongDay(
        who.apply(bookings.get(0).clientId()),
        bookings.stream().map(Booking::id).toList(),
        day,
        bounds.zonesOf(visit).stream().map(bounds::name).toList(),
        bookings.stream().anyMatch(one -> one.told().isPresent()),
        there,
        best.map(offer -> OptionalInt.of(offer.day())).orElse(OptionalInt.empty()),
        best.map(offer -> OptionalInt.of(extra(offer))).orElse(OptionalInt.empty()),
        !free.free().contains(visit));
  }

  private static int extra(Offer offer) {
    return offer.changes().driveSeconds();
  }
}
