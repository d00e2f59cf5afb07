package dev.dogleg.cli.command;

import dev.dogleg.cli.export.ZoneRoomSheet;
import dev.dogleg.fit.FitAnswer;
import dev.dogleg.fit.FitQuestion;
import dev.dogleg.fit.FitQuestion.OtherDays;
import dev.dogleg.fit.Offer;
import dev.dogleg.fit.RoomAhead;
import dev.dogleg.fit.RoomAsk;
import dev.dogleg.fit.RoomQuestion;
import dev.dogleg.itinerary.DayChoice;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.WeekBooking;
import dev.dogleg.itinerary.WeekRequest;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Room in a zone: each door is asked alone, then each day at which doors it has room for times that
 * hold at all of those doors without a longer day.
 */
final class ZoneRoom {
  /** Told spans are an hour and begin on quarter hours. */
  private static final int SPAN_SECONDS = 3_600;

  private static final int STEP_SECONDS = 900;

  private final AskedWeek asked;
  private final String zone;
  private final int doors;
  private final Map<WeekBooking, FitAnswer> answers = new LinkedHashMap<>();

  /** Asks. */
  ZoneRoom(AskedWeek asked, String zone, int doors) {
    this.asked = asked;
    this.zone = zone;
    this.doors = doors;
    for (WeekBooking door : asked.possible()) {
      answers.put(
          door,
          asked
              .fit()
              .ask(
                  new FitQuestion(
                      door, List.of(), Math.max(1, door.choices().size()), OtherDays.NEVER, 1)));
    }
  }

  /** {@return every day offered at any door} */
  List<Offer> offers() {
    return answers.values().stream().flatMap(answer -> answer.offers().stream()).toList();
  }

  /** What there is to say. */
  ZoneRoomSheet sheet() {
    List<ZoneRoomSheet.Day> days = new ArrayList<>();
    for (int day = 0; day < asked.week().days().size(); day++) {
      day(day).ifPresent(days::add);
    }
    boolean proven =
        answers.values().stream()
            .allMatch(answer -> answer.noDays().stream().allMatch(n -> n.proven()));
    int fitting =
        (int) answers.values().stream().filter(answer -> !answer.offers().isEmpty()).count();
    int seconds =
        answers.keySet().stream()
            .flatMap(door -> door.choices().stream())
            .mapToInt(choice -> choice.visit().serviceSeconds())
            .max()
            .orElseThrow();
    return new ZoneRoomSheet(zone, doors, fitting, proven, seconds, SPAN_SECONDS, days);
  }

  /** A van-day on which somebody of the zone may be visited. */
  private Optional<ZoneRoomSheet.Day> day(int number) {
    Map<WeekBooking, Offer> fits = new LinkedHashMap<>();
    int asks = 0;
    for (Map.Entry<WeekBooking, FitAnswer> entry : answers.entrySet()) {
      asks += entry.getKey().choices().stream().anyMatch(c -> c.day() == number) ? 1 : 0;
      entry.getValue().offers().stream()
          .filter(offer -> offer.day() == number)
          .findFirst()
          .ifPresent(offer -> fits.put(entry.getKey(), offer));
    }
    if (asks == 0) {
      return Optional.empty();
    }
    var day = asked.week().days().get(number);
    RoomAhead.Room room =
        fits.isEmpty()
            ? new RoomAhead.Room(0, 0, false, List.of(), true, 0)
            : windows(number, List.copyOf(fits.keySet()));
    var extra =
        fits.values().stream()
            .mapToInt(offer -> offer.changes().driveSeconds())
            .summaryStatistics();
    return Optional.of(
        new ZoneRoomSheet.Day(
            day.day(),
            day.groomer().name(),
            fits.size(),
            fits.isEmpty() ? 0 : extra.getMin(),
            fits.isEmpty() ? 0 : extra.getMax(),
            room.spans(),
            room.proven()));
  }

  /** Times that hold at every one of some doors, on one van-day. */
  private RoomAhead.Room windows(int number, List<WeekBooking> some) {
    return RoomAhead.of(
            alone(number, some),
            placed(number),
            new RoomQuestion(
                List.of(new RoomAsk(zone, zone, some.stream().map(d -> on(d, number)).toList())),
                SPAN_SECONDS,
                STEP_SECONDS,
                0,
                false,
                kept(number),
                DayRequest.USUAL_EFFORT),
            done -> {})
        .room(0, 0);
  }

  /** How often a told time is to be kept, as the card wants it. */
  private OptionalInt kept(int number) {
    return asked.week().request().days().get(number).terms().odds().stream()
        .mapToInt(OddsTerms::keptPermille)
        .findFirst();
  }

  private Map<String, Integer> placed(int number) {
    Map<String, Integer> placed = new TreeMap<>();
    asked
        .week()
        .before()
        .forEach(
            (id, day) -> {
              if (day == number) {
                placed.put(id, 0);
              }
            });
    return placed;
  }

  /** The week of one van-day: its visits and the doors asked about. */
  private WeekRequest alone(int number, List<WeekBooking> some) {
    WeekRequest week = asked.week().request();
    Set<String> wanted = some.stream().map(WeekBooking::id).collect(Collectors.toSet());
    wanted.addAll(placed(number).keySet());
    return new WeekRequest(
        List.of(week.days().get(number)),
        week.bookings().stream()
            .filter(booking -> wanted.contains(booking.id()))
            .map(booking -> on(booking, number))
            .toList(),
        week.prices(),
        week.seed(),
        week.effort());
  }

  /** A booking that may be on one van-day only, which is the first of its week. */
  private static WeekBooking on(WeekBooking booking, int number) {
    List<DayChoice> choices =
        booking.choices().stream()
            .filter(choice -> choice.day() == number)
            .map(choice -> new DayChoice(0, choice.visit(), choice.extraSixtieths()))
            .toList();
    return new WeekBooking(booking.id(), booking.counted(), booking.leftOutSixtieths(), choices);
  }
}
