package dev.dogleg.cli.prepare;

import dev.dogleg.cli.terms.DraftChoice;
import dev.dogleg.cli.terms.DraftStop;
import dev.dogleg.cli.terms.Likes;
import dev.dogleg.cli.terms.RuleTerms;
import dev.dogleg.cli.terms.TagVocabulary;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.cli.terms.WaterAndBalance;
import dev.dogleg.cli.terms.ZoneTerms;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayRule.DayPlace;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.ServiceSpread;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WeekDay;
import dev.dogleg.model.Book;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Business;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.Lock;
import dev.dogleg.model.Place;
import dev.dogleg.model.Remedy;
import dev.dogleg.model.Shifts;
import dev.dogleg.model.WaterWish;
import dev.dogleg.model.When;
import dev.dogleg.model.Worth;
import dev.dogleg.model.Zone;
import dev.dogleg.travel.BandedTravelTimes;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.OptionalLong;
import java.util.Set;

/**
 * Rules, zones, wishes, the earlier plan, water and balance of a week, and its van-days with them.
 */
final class WeekTerms {
  private static final int MOST_OVERTIME_MINUTE_SECONDS = 36_000;

  private final Book book;
  private final Business business;
  private final GroomTables tables;
  private final List<VanDay> days;
  private final List<WeekStop> stops;
  private final List<DraftStop> drafts;
  private final WeekPlaces places;
  private final InZone inZone;
  private final EarlierPlan earlier;
  private final RowFinder rows;
  private final Faults faults;
  private final boolean following;
  private final Map<String, Integer> before = new HashMap<>();

  /**
   * Terms of a week.
   *
   * @param following whether a plan is followed that a person may have edited: then water is always
   *     looked at
   */
  WeekTerms(
      Book book,
      GroomTables tables,
      List<VanDay> days,
      List<WeekStop> stops,
      WeekPlaces places,
      ZoneDistricts districts,
      EarlierPlan earlier,
      RowFinder rows,
      boolean following,
      Faults faults) {
    this.following = following;
    this.book = book;
    this.business = book.business();
    this.tables = tables;
    this.days = days;
    this.stops = stops;
    this.drafts = stops.stream().map(WeekStop::draft).toList();
    this.places = places;
    this.earlier = earlier;
    this.rows = rows;
    this.faults = faults;
    inZone = new InZone(places, districts, VanDay.vans(days));
  }

  /** The van-days with everything that binds them; shapes the stops on the way. */
  List<WeekDay> days() {
    new TagVocabulary(book, tables)
        .check(book.week().rules(), book.week().zones(), rows::rule, rows::zone, faults);
    stops.forEach(this::leftOut);
    stability();
    ZoneTerms.apply(
        book.week().zones(),
        days,
        stops.stream().filter(s -> s.client().isPresent()).map(WeekStop::draft).toList(),
        this::inside,
        rows::zone);
    List<List<DayRule>> rules = new ArrayList<>();
    RuleTerms.apply(book.week().rules(), days, drafts, rows::rule, faults)
        .forEach(ofDay -> rules.add(new ArrayList<>(ofDay)));
    likes(rules);
    lockedPlaces(rules);
    WaterAndBalance.tooMuch(days, drafts, this::row, faults);
    int share = evenShare();
    List<WeekDay> made = new ArrayList<>();
    for (VanDay day : days) {
      Optional<WaterTerms> water =
          WaterAndBalance.water(
              day, drafts, waterPlaces(day), business.week().water().most(), following);
      Optional<BalanceTerms> balance =
          business.week().balance().map(wish -> WaterAndBalance.balance(wish, day, share));
      made.add(
          new WeekDay(
              shift(day),
              new BandedTravelTimes(
                  places.matrix(day.van()), Traffic.bands(day.day(), tables.learned())),
              new DayTerms(rules.get(day.number()), water, balance).with(odds(day))));
    }
    return made;
  }

  /** What varies on a van-day, and what its told times are worth. */
  private OddsTerms odds(VanDay day) {
    Map<String, ServiceSpread> services = new HashMap<>();
    Set<String> promised = new LinkedHashSet<>();
    for (DraftStop stop : drafts) {
      for (DraftChoice choice : stop.choices()) {
        if (choice.day() == day.number()) {
          choice.spread().ifPresent(spread -> services.put(stop.id(), spread));
          if (stop.told()) {
            promised.add(stop.id());
          }
        }
      }
    }
    int kept = business.week().promises().keptPercent() * 10;
    return new OddsTerms(
        services, LearnedSpread.of(tables.learned()), promised, kept, brokenSixtieths());
  }

  private Where row(String id) {
    WeekStop stop = stops.stream().filter(s -> s.draft().id().equals(id)).findFirst().orElseThrow();
    return stop.bookings().isEmpty() ? rows.errand(id) : rows.booking(stop.bookings().get(0).id());
  }

  /** What leaving a stop out means: a price, where it may wait or is due later too. */
  private void leftOut(WeekStop stop) {
    if (!stop.draft().agreed()) {
      stop.draft().leftOutCosts(worthSeconds(stop.bookings()) * Prices.SIXTIETHS_PER_DRIVE_SECOND);
    } else if (business.week().whenFull().contains(Remedy.NEXT_WEEK)
        && !stop.draft().told()
        && stop.bookings().stream().allMatch(booking -> dueLater(booking.dates(), booking.when()))
        && stop.errand().stream()
            .allMatch(errand -> dueLater(Optional.of(errand.dates()), errand.when()))) {
      stop.draft()
          .leftOutCosts(
              (long) business.week().prices().nextWeekSeconds()
                  * Prices.SIXTIETHS_PER_DRIVE_SECOND);
    } else if (stop.draft().told()) {
      // A promise left out is broken.
      stop.draft().leftOutAlsoCosts(brokenSixtieths());
    }
  }

  private long brokenSixtieths() {
    return (long) business.week().promises().brokenSeconds() * Prices.SIXTIETHS_PER_DRIVE_SECOND;
  }

  /** Whether a later day of a span, after the run, may serve a stop. */
  private boolean dueLater(Optional<DateSpan> span, When when) {
    LocalDate last = days.get(days.size() - 1).day().date();
    if (span.isEmpty() || !span.get().to().isAfter(last)) {
      return false;
    }
    Shifts shifts = new Shifts(business.groomers(), book.week().days());
    return last.plusDays(1)
        .datesUntil(span.get().to().plusDays(1))
        .anyMatch(
            date ->
                shifts.anybodyOn(date)
                    && when.on(new dev.dogleg.time.WorkDay(date, business.zone())).isPresent());
  }

  /** Worth of a waiting-list stop: what its bookings say, else the prices of its pets. */
  private long worthSeconds(List<Booking> bookings) {
    long sum = 0;
    boolean known = false;
    for (Booking booking : bookings) {
      OptionalLong value = booking.terms().valueMinor();
      if (value.isEmpty()) {
        value = VisitMaker.price(List.of(booking), book.petsById());
      }
      known |= value.isPresent();
      sum += value.orElse(0);
    }
    return business.worth().waitingSeconds(known ? OptionalLong.of(sum) : OptionalLong.empty());
  }

  /** Another day than before has its price. */
  private void stability() {
    long change = (long) business.worth().changeSeconds() * Prices.SIXTIETHS_PER_DRIVE_SECOND;
    for (WeekStop stop : stops) {
      Optional<Integer> was = earlierDay(stop);
      if (was.isPresent()) {
        before.put(stop.draft().id(), was.get());
        for (DraftChoice choice : stop.draft().choices()) {
          if (choice.day() != was.get()) {
            choice.dearer(change);
          }
        }
      }
      for (Booking booking : stop.bookings()) {
        if (booking.terms().lock().isPresent() && earlier.of(booking.id()).isEmpty()) {
          faults.add(
              new Fault(
                  "lock-without-plan",
                  Severity.LOOK,
                  rows.booking(booking.id()).at("lock"),
                  booking.terms().lock().get().name().toLowerCase(java.util.Locale.ROOT),
                  "an earlier plan that has this booking was expected; nothing is locked",
                  "plan once without the lock, or give the booking a date and a told time"));
        }
      }
    }
  }

  private Optional<Integer> earlierDay(WeekStop stop) {
    Optional<EarlierPlan.Spot> spot =
        stop.bookings().isEmpty()
            ? earlier.of(stop.draft().id())
            : earlier.of(stop.bookings().get(0).id());
    return spot.flatMap(
        was ->
            days.stream()
                .filter(
                    day ->
                        day.day().date().equals(was.date())
                            && day.groomer().id().equals(was.groomerId()))
                .map(VanDay::number)
                .findFirst());
  }

  /** The van-day of the earlier plan, by stop; those it did not have are missing. */
  Map<String, Integer> before() {
    return before;
  }

  private void likes(List<List<DayRule>> rules) {
    int price = business.week().prices().likeSeconds();
    for (WeekStop stop : stops) {
      for (Booking booking : stop.bookings()) {
        booking
            .terms()
            .likes()
            .ifPresent(likes -> Likes.apply(likes, stop.draft(), days, price, rules));
      }
    }
  }

  private void lockedPlaces(List<List<DayRule>> rules) {
    for (WeekStop stop : stops) {
      for (Booking booking : stop.bookings()) {
        Optional<EarlierPlan.Spot> spot =
            booking
                .terms()
                .lock()
                .filter(Lock.PLACE::equals)
                .flatMap(l -> earlier.of(booking.id()));
        if (spot.isPresent()) {
          for (DraftChoice choice : stop.draft().choices()) {
            rules
                .get(choice.day())
                .add(
                    new DayRule.PlaceInDay(
                        "lock of " + stop.draft().name(),
                        OptionalLong.empty(),
                        Set.of(stop.draft().id()),
                        DayPlace.EXACTLY,
                        spot.get().place()));
          }
          break;
        }
      }
    }
  }

  private boolean inside(Zone zone, DraftStop draft) {
    WeekStop stop = stops.stream().filter(s -> s.draft() == draft).findFirst().orElseThrow();
    return inZone.holds(zone, stop.place());
  }

  private List<WaterPlace> waterPlaces(VanDay day) {
    WaterWish wish = business.week().water();
    Set<Place> all = new LinkedHashSet<>();
    if (wish.atHome()) {
      all.add(day.groomer().home());
    }
    all.addAll(wish.places());
    Set<Integer> numbers = new LinkedHashSet<>();
    int start = places.number(day.start()).orElseThrow();
    int end = places.number(day.end()).orElseThrow();
    for (Place place : all) {
      OptionalInt number = places.number(place);
      if (number.isPresent() && places.reaches(day.van(), start, number.getAsInt(), end)) {
        numbers.add(number.getAsInt());
      }
    }
    return numbers.stream().map(number -> new WaterPlace(number, wish.seconds())).toList();
  }

  private int evenShare() {
    long sum = 0;
    for (DraftStop stop : drafts) {
      if (stop.agreed()) {
        sum += stop.choices().stream().mapToInt(DraftChoice::seconds).min().orElse(0);
      }
    }
    return (int) ((sum + days.size() - 1) / days.size());
  }

  private DayShift shift(VanDay day) {
    boolean longer = business.week().whenFull().contains(Remedy.LONGER_DAY);
    return new DayShift(
        day.groomer().id(),
        day.van().id(),
        day.day(),
        places.number(day.start()).orElseThrow(),
        places.number(day.end()).orElseThrow(),
        day.hours().on(day.day()),
        longer ? business.overtimeSeconds() : 0,
        business
            .dailyBreak()
            .map(wish -> new BreakRule(wish.lengthSeconds(), wish.startWithin().on(day.day()))));
  }

  /** What things are worth, overtime by its place among the remedies. */
  Prices prices() {
    Worth worth = business.worth();
    long overtime = (long) worth.overtimeMinuteSeconds() * business.week().prices().overtimeTimes();
    return new Prices(
        worth.kilometreSeconds(),
        worth.waitingMinuteSeconds(),
        (int) Math.min(MOST_OVERTIME_MINUTE_SECONDS, overtime),
        worth.endMinuteSeconds());
  }
}
