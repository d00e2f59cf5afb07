package dev.dogleg.audit;

import dev.dogleg.itinerary.BalanceTerms;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayRule;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What {@link SecondBySecond} says of rules, tanks and balance: every pair of visits is looked at,
 * every millilitre poured; without any code of the audit.
 */
final class SecondBySecondTerms {
  private SecondBySecondTerms() {}

  private static List<String> ids(List<PlannedStop> stops) {
    return stops.stream().filter(s -> s.kind() == Kind.VISIT).map(PlannedStop::visitId).toList();
  }

  /** Seconds of a visit or water stop; -1 where water may not be had. */
  static int length(DayRequest request, List<PlannedStop> stops, int k) {
    DayTerms terms = request.terms();
    PlannedStop stop = stops.get(k);
    if (stop.kind() == Kind.WATER) {
      for (WaterPlace place : terms.water().map(WaterTerms::places).orElse(List.of())) {
        if (place.place() == stop.place()) {
          return place.seconds();
        }
      }
      return -1;
    }
    Visit visit =
        request.visits().stream().filter(v -> v.id().equals(stop.visitId())).findAny().get();
    List<String> before = ids(stops.subList(0, k));
    int number = before.size() + 1;
    double seconds = visit.serviceSeconds();
    for (DayRule rule : terms.rules()) {
      if (rule instanceof DayRule.PlaceMinutes m && m.visits().contains(visit.id())) {
        boolean here = m.fromPlace() <= number && m.toPlace() >= number;
        // Some thousands of thousandths: exact in a double.
        double times = Math.floor((2 * seconds * m.timesThousandths() + 1000) / 2000);
        seconds = here ? Math.max(0, times + m.plusSeconds()) : seconds;
      }
    }
    for (DayRule rule : terms.rules()) {
      if (rule instanceof DayRule.Changeover c && number > 1) {
        boolean pair = c.from().contains(before.get(number - 2)) && c.to().contains(visit.id());
        seconds += pair ? c.seconds() : 0;
      }
    }
    return (int) seconds;
  }

  /** The first must rule or tank that a day of lawful sequence breaks. */
  static Optional<String> wrong(DayRequest request, List<PlannedStop> stops) {
    for (DayRule rule : request.terms().rules()) {
      if (rule.ratherSixtieths().isEmpty() && breaches(rule, request, stops) > 0) {
        return Optional.of("rule " + rule.name());
      }
    }
    WaterTerms water = request.terms().water().orElse(null);
    long made = stops.stream().filter(s -> s.kind() == Kind.WATER).count();
    if (water == null) {
      return made > 0 ? Optional.of("water unplanned") : Optional.empty();
    }
    if (made > water.most()) {
      return Optional.of("too many water stops");
    }
    int clean = water.tank().freshMillilitres();
    int room = water.tank().greyMillilitres();
    for (PlannedStop stop : stops) {
      boolean fill = stop.kind() == Kind.WATER;
      int pours = stop.kind() == Kind.VISIT ? water.useOf(stop.visitId()).freshMillilitres() : 0;
      int grows = stop.kind() == Kind.VISIT ? water.useOf(stop.visitId()).greyMillilitres() : 0;
      clean = (fill ? water.tank().freshMillilitres() : clean) - pours;
      room = (fill ? water.tank().greyMillilitres() : room) - grows;
      if (clean < 0 || room < 0) {
        return Optional.of("tanks at " + stop);
      }
    }
    return Optional.empty();
  }

  /** Price of rules that should rather hold, and of balance, with so many seconds served. */
  static long price(DayRequest request, List<PlannedStop> stops, int served) {
    long price = 0;
    for (DayRule rule : request.terms().rules()) {
      price += rule.ratherSixtieths().orElse(0) * breaches(rule, request, stops);
    }
    BalanceTerms balance = request.terms().balance().orElse(null);
    if (balance != null) {
      int end = stops.get(stops.size() - 1).arriveSeconds();
      for (int s = balance.groomSeconds(); s < served; s++) {
        price += balance.groomSixtieths();
      }
      for (int t = balance.endSeconds(); t < end; t++) {
        price += balance.endSixtieths();
      }
    }
    return price;
  }

  private static long breaches(DayRule rule, DayRequest request, List<PlannedStop> stops) {
    List<String> ids = ids(stops);
    long count = 0;
    if (rule instanceof DayRule.Clock clock) {
      for (int k = 0; k < stops.size(); k++) {
        boolean named =
            stops.get(k).kind() == Kind.VISIT && clock.visits().contains(stops.get(k).visitId());
        count += named && !liked(clock, request, stops, k) ? 1 : 0;
      }
    } else if (rule instanceof DayRule.PlaceInDay place) {
      List<String> right = new ArrayList<>(ids);
      for (int k = 0; k < ids.size(); k++) {
        boolean first = k == 0;
        boolean last = k == ids.size() - 1;
        boolean holds =
            switch (place.where()) {
              case FIRST -> first;
              case LAST -> last;
              case NOT_FIRST -> !first;
              case NOT_LAST -> !last;
              case EXACTLY -> k == place.place() - 1;
            };
        if (holds || !place.visits().contains(ids.get(k))) {
          right.remove(ids.get(k));
        }
      }
      count = right.size();
    } else if (rule instanceof DayRule.AllBefore before) {
      for (String early : ids) {
        boolean behind = false;
        for (String late : ids) {
          behind |= before.later().contains(late) && ids.indexOf(late) < ids.indexOf(early);
        }
        count += behind && before.earlier().contains(early) ? 1 : 0;
      }
    } else if (rule instanceof DayRule.NotRightAfter after) {
      for (String one : after.visits()) {
        for (String other : after.after()) {
          boolean both = ids.contains(one) && ids.contains(other);
          count += both && ids.indexOf(one) == ids.indexOf(other) + 1 ? 1 : 0;
        }
      }
    } else {
      count = company(rule, ids);
    }
    return count;
  }

  private static long company(DayRule rule, List<String> ids) {
    if (rule instanceof DayRule.AtMost most) {
      long above = -most.most();
      for (String id : ids) {
        above += most.points().containsKey(id) ? most.points().get(id) : 0;
      }
      return Math.max(0, above);
    } else if (rule instanceof DayRule.Together together) {
      boolean any = together.visits().stream().anyMatch(ids::contains);
      boolean all = together.visits().stream().allMatch(ids::contains);
      return any && !all ? 1 : 0;
    } else if (rule instanceof DayRule.NotTogether apart) {
      List<String> here = new ArrayList<>(apart.visits());
      here.retainAll(ids);
      return here.isEmpty() ? 0 : here.size() - 1;
    }
    return 0;
  }

  private static boolean liked(
      DayRule.Clock clock, DayRequest request, List<PlannedStop> stops, int k) {
    PlannedStop visit = stops.get(k);
    PlannedStop next = stops.get(k + 1);
    boolean breakHere = next.kind() == Kind.BREAK && next.visitId().equals(visit.visitId());
    int gone = breakHere ? next.leaveSeconds() : visit.leaveSeconds();
    int done = visit.startSeconds() + length(request, stops, k);
    return clock.windows().stream()
        .anyMatch(
            w ->
                switch (clock.kind()) {
                  case ARRIVE ->
                      visit.arriveSeconds() <= w.toSeconds()
                          && visit.startSeconds() >= w.fromSeconds();
                  case DONE_BY -> done <= w.toSeconds();
                  case VAN -> w.holds(visit.arriveSeconds()) && w.holds(gone);
                });
  }
}
