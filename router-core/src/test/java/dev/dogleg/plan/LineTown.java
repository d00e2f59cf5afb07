package dev.dogleg.plan;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import dev.dogleg.time.WorkDay;
import dev.dogleg.travel.BandedTravelTimes;
import dev.dogleg.travel.TrafficBands;
import dev.dogleg.travel.TravelMatrix;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A town along one road, for stories: place k lies at minute k, home at minute 0; a minute of road
 * is a kilometre.
 *
 * <p>Plans are told in one line: {@code home 08:00 > 08:10 a 09:10 > break 12:00-12:30 > 09:20
 * home}.
 */
final class LineTown {
  private static final int MINUTES = 61;

  private final List<Visit> visits = new ArrayList<>();
  private Optional<BreakRule> breakRule = Optional.empty();
  private Prices prices = Prices.STARTER;
  private int overtimeMinutes;
  private List<TrafficBands.Band> bands = List.of(new TrafficBands.Band("", 0, List.of(1000)));

  LineTown with(Visit... more) {
    visits.addAll(List.of(more));
    return this;
  }

  LineTown withBreak(int minutes, String from, String to) {
    breakRule = Optional.of(new BreakRule(60 * minutes, window(from, to)));
    return this;
  }

  LineTown overtime(int minutes) {
    overtimeMinutes = minutes;
    return this;
  }

  LineTown priced(Prices other) {
    prices = other;
    return this;
  }

  LineTown traffic(String from, String to, int permille) {
    bands =
        List.of(
            new TrafficBands.Band("", 0, List.of(1000)),
            new TrafficBands.Band("rush", at(from), List.of(permille)),
            new TrafficBands.Band("", at(to), List.of(1000)));
    return this;
  }

  /** A booked visit at a minute of the road. */
  static Visit door(String id, int minute, int serviceMinutes) {
    return Visit.booked(id, minute, 60 * serviceMinutes);
  }

  static TimeWindow window(String from, String to) {
    return new TimeWindow(at(from), at(to));
  }

  static int at(String clock) {
    String[] parts = clock.split(":");
    return 3600 * Integer.parseInt(parts[0]) + 60 * Integer.parseInt(parts[1]);
  }

  /** The request for a shift. */
  DayRequest shift(String from, String to) {
    int[][] seconds = new int[MINUTES][MINUTES];
    int[][] metres = new int[MINUTES][MINUTES];
    for (int i = 0; i < MINUTES; i++) {
      for (int j = 0; j < MINUTES; j++) {
        seconds[i][j] = 60 * Math.abs(i - j);
        metres[i][j] = 1000 * Math.abs(i - j);
      }
    }
    DayShift shift =
        new DayShift(
            "groomer",
            "van",
            new WorkDay(LocalDate.of(2026, 3, 3), ZoneId.of("Etc/UTC")),
            0,
            0,
            window(from, to),
            60 * overtimeMinutes,
            breakRule);
    return new DayRequest(
        shift,
        visits,
        new BandedTravelTimes(
            TravelMatrix.of(seconds, metres), new TrafficBands(List.of("road"), bands)),
        prices,
        1,
        DayRequest.USUAL_EFFORT);
  }

  /** One line for a plan. */
  static String line(DayPlan plan) {
    String stops =
        plan.stops().stream()
            .map(
                stop ->
                    switch (stop.kind()) {
                      case LEAVE -> "home " + clock(stop.leaveSeconds());
                      case HOME -> clock(stop.arriveSeconds()) + " home";
                      case BREAK ->
                          "break "
                              + clock(stop.startSeconds())
                              + "-"
                              + clock(endOfBreak(plan, stop));
                      case WATER ->
                          clock(stop.arriveSeconds()) + " water " + clock(stop.leaveSeconds());
                      case VISIT ->
                          clock(stop.arriveSeconds())
                              + " "
                              + stop.visitId()
                              + " "
                              + clock(stop.leaveSeconds());
                    })
            .collect(Collectors.joining(" > "));
    String left = plan.noRoom().stream().map(LineTown::reason).collect(Collectors.joining("; "));
    return left.isEmpty() ? stops : stops + " | " + left;
  }

  private static int endOfBreak(DayPlan plan, PlannedStop stop) {
    return stop.startSeconds() + plan.shift().breakRule().orElseThrow().lengthSeconds();
  }

  private static String reason(NoRoom noRoom) {
    return switch (noRoom.why()) {
      case IMPOSSIBLE_ALONE ->
          noRoom.visitId()
              + " alone misses "
              + noRoom.rule()
              + " by "
              + noRoom.shortBySeconds()
              + " s";
      case IMPOSSIBLE_TOGETHER ->
          noRoom.visitId() + " impossible with " + String.join(" ", noRoom.withVisits());
      case NOT_WORTH_IT -> noRoom.visitId() + " not worth it";
      case NOT_FOUND -> noRoom.visitId() + " not found";
    };
  }

  static String clock(int seconds) {
    String minutes = "%02d:%02d".formatted(seconds / 3600, seconds / 60 % 60);
    return seconds % 60 == 0 ? minutes : minutes + ":%02d".formatted(seconds % 60);
  }
}
