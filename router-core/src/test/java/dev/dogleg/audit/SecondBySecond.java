package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Prices;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A day lived second by second: every second of the van is given one label, and sums are counts of
 * labels. Slow, short, and without any code of the audit.
 */
final class SecondBySecond {
  private final DayRequest request;
  private final List<PlannedStop> stops;
  private final BreakRule rule;
  private char[] label;

  private SecondBySecond(DayRequest request, List<PlannedStop> stops) {
    this.request = request;
    this.stops = stops;
    this.rule = request.shift().breakRule().orElse(null);
  }

  /** The first thing wrong with the times of events; empty where they are sound. */
  static Optional<String> wrongTimes(DayRequest request, List<PlannedStop> stops) {
    return stops.isEmpty() ? Optional.empty() : new SecondBySecond(request, stops).times();
  }

  /** The first thing wrong with a plan that makes every visit; empty where it is sound. */
  static Optional<String> wrong(DayRequest request, DayPlan plan) {
    SecondBySecond day = new SecondBySecond(request, plan.stops());
    Optional<String> times = day.times();
    if (times.isPresent()) {
      return times;
    }
    List<PlannedStop> right = day.filled();
    if (!right.equals(plan.stops())) {
      return Optional.of("figures should be " + right);
    }
    long cost = day.cost();
    return cost == plan.costSixtieths() ? Optional.empty() : Optional.of("cost is " + cost);
  }

  /** A plan without findings for sound times that make every visit. */
  static List<PlannedStop> figures(DayRequest request, List<PlannedStop> stops) {
    SecondBySecond day = new SecondBySecond(request, stops);
    day.mustBeSound();
    return day.filled();
  }

  static long cost(DayRequest request, List<PlannedStop> stops) {
    SecondBySecond day = new SecondBySecond(request, stops);
    day.mustBeSound();
    return day.cost();
  }

  private void mustBeSound() {
    Optional<String> text = times();
    if (text.isPresent()) {
      throw new IllegalArgumentException(text.get());
    }
  }

  private Visit visit(int k) {
    PlannedStop stop = stops.get(k);
    return request.visits().stream()
        .filter(v -> v.id().equals(stop.visitId()))
        .findAny()
        .orElse(null);
  }

  /** L leave, V visit, a break after the visit before, b break before the visit after, H home. */
  private char letter(int k) {
    PlannedStop stop = stops.get(k);
    if (stop.kind() != Kind.BREAK) {
      return stop.kind().name().charAt(0);
    }
    boolean after = stops.get(k - 1).kind() == Kind.VISIT;
    if (after && stops.get(k - 1).visitId().equals(stop.visitId())) {
      return 'a';
    }
    boolean before = k + 1 < stops.size() && stops.get(k + 1).kind() == Kind.VISIT;
    return before && stops.get(k + 1).visitId().equals(stop.visitId()) ? 'b' : 'x';
  }

  private Optional<String> times() {
    if (stops.get(0).kind() != Kind.LEAVE) {
      return Optional.of("no leaving");
    }
    StringBuilder letters = new StringBuilder();
    for (int k = 0; k < stops.size(); k++) {
      letters.append(letter(k));
    }
    String day = letters.toString();
    // Water between two visits, one at a time; a break stands at a visit's door.
    String noWater = day.replaceAll("(?<=[Va])W(?=[Vb])", "");
    boolean withBreak = noWater.matches("LV+(aV+|bV+)H") && rule != null;
    if (!noWater.matches("LV+H") && !withBreak) {
      return Optional.of("sequence " + day);
    }
    int end = stops.get(stops.size() - 1).arriveSeconds();
    boolean needed =
        rule != null && noWater.matches("LVV+H") && end > rule.startWithin().fromSeconds();
    if (needed && !withBreak) {
      return Optional.of("break missing");
    }
    label = new char[500];
    List<String> made = new ArrayList<>();
    for (int k = 0; k < stops.size(); k++) {
      String text = event(k, made);
      if (!text.isEmpty()) {
        return Optional.of(text + " at " + k);
      }
    }
    return SecondBySecondTerms.wrong(request, stops);
  }

  private String event(int k, List<String> made) {
    PlannedStop s = stops.get(k);
    char letter = letter(k);
    int a = s.arriveSeconds();
    boolean inRange = a >= 0 && s.startSeconds() >= a && s.leaveSeconds() >= s.startSeconds();
    if (!inRange || s.leaveSeconds() >= label.length) {
      return "times in disorder";
    }
    boolean point = letter == 'L' || letter == 'H';
    if (point && (a != s.startSeconds() || a != s.leaveSeconds())) {
      return "an instant with a length";
    }
    boolean nameless = point || letter == 'W';
    if (nameless && !s.visitId().isEmpty()) {
      return "a name where nobody is served";
    }
    Visit visit = visit(k);
    if (!nameless && visit == null) {
      return "unknown visit";
    }
    int home = letter == 'L' ? request.shift().startPlace() : request.shift().endPlace();
    int right = letter == 'W' ? s.place() : point ? home : visit.place();
    if (s.place() != right || (letter == 'W' && length(k) < 0)) {
      return "place";
    }
    if (letter == 'L' && a < request.shift().hours().fromSeconds()) {
      return "too early out";
    }
    if (letter == 'H'
        && a > request.shift().hours().toSeconds() + request.shift().overtimeSeconds()) {
      return "too late home";
    }
    return k == 0 ? "" : labels(k, letter, visit, made);
  }

  private String labels(int k, char letter, Visit visit, List<String> made) {
    PlannedStop s = stops.get(k);
    PlannedStop before = stops.get(k - 1);
    boolean sameDoor = letter == 'a' || letter(k - 1) == 'b';
    if (!sameDoor) {
      if (!request.travel().reaches(before.place(), s.place())) {
        return "no road";
      }
      int arrive = before.leaveSeconds();
      int drive = request.travel().driveSeconds(before.place(), s.place(), arrive);
      for (int i = 0; i < drive; i++) {
        if (!put(arrive++, 'd')) {
          return "drives while busy";
        }
      }
      if (arrive != s.arriveSeconds()) {
        return "arrival";
      }
    }
    if (s.startSeconds() < before.leaveSeconds()) {
      return "starts before the event before is left";
    }
    for (int t = s.startSeconds(); t < s.startSeconds() + length(k); t++) {
      if (t >= s.leaveSeconds() || !put(t, letter == 'V' ? 's' : 'p')) {
        return "no time for its length";
      }
    }
    if (letter == 'a' || letter == 'b') {
      boolean arrival = letter == 'b' || s.arriveSeconds() == before.startSeconds() + length(k - 1);
      return rule.startWithin().holds(s.startSeconds()) && arrival ? "" : "break";
    }
    return letter == 'V' ? visit(k, visit, made) : "";
  }

  /** Seconds of service, break or water; -1 where the place is no water place. */
  private int length(int k) {
    return switch (letter(k)) {
      case 'L', 'H' -> 0;
      case 'a', 'b' -> rule.lengthSeconds();
      default -> SecondBySecondTerms.length(request, stops, k);
    };
  }

  private boolean put(int second, char what) {
    boolean free = second < label.length && label[second] == 0;
    if (free) {
      label[second] = what;
    }
    return free;
  }

  private String visit(int k, Visit visit, List<String> made) {
    PlannedStop s = stops.get(k);
    if (made.contains(visit.id()) || (visit.first() && !made.isEmpty())) {
      return "twice or not first";
    }
    made.add(visit.id());
    if (letter(k - 1) == 'b' && s.arriveSeconds() != stops.get(k - 1).arriveSeconds()) {
      return "another arrival than its break";
    }
    boolean arrives = false;
    for (TimeWindow window : visit.arriveWithin()) {
      boolean belongs = s.arriveSeconds() <= window.toSeconds();
      arrives |= belongs && s.startSeconds() >= window.fromSeconds();
    }
    int leave = letter(k + 1) == 'a' ? stops.get(k + 1).leaveSeconds() : s.leaveSeconds();
    boolean stays =
        visit.vanWithin().stream().anyMatch(w -> w.holds(s.arriveSeconds()) && w.holds(leave));
    boolean done = s.startSeconds() + length(k) <= visit.doneBySeconds();
    return arrives && stays && done ? "" : "a limit of the visit";
  }

  private List<PlannedStop> filled() {
    List<PlannedStop> right = new ArrayList<>();
    SecondBySecondSpare spare = new SecondBySecondSpare(request, stops, this::letter, this::length);
    for (int k = 0; k < stops.size(); k++) {
      PlannedStop s = stops.get(k);
      int from = k == 0 ? s.leaveSeconds() : stops.get(k - 1).leaveSeconds();
      int drive = count(from, s.leaveSeconds(), 'd');
      int metres = k == 0 ? 0 : request.travel().lengthMetres(stops.get(k - 1).place(), s.place());
      right.add(
          new PlannedStop(
              s.kind(),
              s.place(),
              s.visitId(),
              s.arriveSeconds(),
              s.startSeconds(),
              s.leaveSeconds(),
              drive,
              metres,
              count(from, s.leaveSeconds(), (char) 0),
              spare.of(k)));
    }
    return right;
  }

  private int count(int from, int to, char what) {
    int count = 0;
    for (int t = from; t < to; t++) {
      count += label[t] == what ? 1 : 0;
    }
    return count;
  }

  private long cost() {
    Prices prices = request.prices();
    int from = stops.get(0).leaveSeconds();
    int to = stops.get(stops.size() - 1).arriveSeconds();
    long cost =
        60L * count(from, to, 'd')
            + (long) prices.waitingMinuteSeconds() * count(from, to, (char) 0);
    for (int t = request.shift().hours().fromSeconds(); t < to; t++) {
      cost += prices.endMinuteSeconds();
      cost += t >= request.shift().hours().toSeconds() ? prices.overtimeMinuteSeconds() : 0;
    }
    for (int k = 1; k < stops.size(); k++) {
      int metres = request.travel().lengthMetres(stops.get(k - 1).place(), stops.get(k).place());
      BigDecimal km = BigDecimal.valueOf(metres).movePointLeft(3);
      BigDecimal price = km.multiply(BigDecimal.valueOf(60L * prices.kilometreSeconds()));
      cost += price.setScale(0, RoundingMode.HALF_UP).longValueExact();
    }
    int served = count(from, to, 's');
    return cost + SecondBySecondTerms.price(request, stops, served);
  }
}
