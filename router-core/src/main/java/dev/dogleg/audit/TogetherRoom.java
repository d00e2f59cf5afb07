package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.itinerary.WaterPlace;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import dev.dogleg.time.TimeWindow;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether a few visits fit into one day together, by trying every order, break and water stop. */
final class TogetherRoom {
  private final DayShift shift;
  private final BreakRule rule;
  private final Onward onward;
  private final RoomTerms terms;
  private final List<Visit> visits;
  private final List<String> made = new ArrayList<>();

  private TogetherRoom(DayRequest request, RoomTerms terms, List<Visit> visits) {
    this.shift = request.shift();
    this.rule = shift.breakRule().orElse(null);
    this.onward = new Onward(request.travel(), rule);
    this.terms = terms;
    this.visits = visits;
  }

  /** Where the van may be at which times, and what was used up until then. */
  private record Partial(
      List<Span> left, int place, boolean breakTaken, WaterUse used, int waterStops) {}

  /**
   * Whether so many visits are few enough to try everything: 6! orders with 11 places of the break
   * are about 8,000 days, 5! with 9 and at most one of two water places four times about 90,000.
   */
  static boolean canTry(RoomTerms terms, int visits) {
    boolean water = terms.water().map(w -> w.most() > 0 && !w.places().isEmpty()).orElse(false);
    return visits <= (water ? 5 : 6);
  }

  /**
   * Whether some day makes all of the visits and no other.
   *
   * @param visits so few that {@link #canTry}
   */
  static boolean exists(DayRequest request, RoomTerms terms, List<Visit> visits) {
    TogetherRoom room = new TogetherRoom(request, terms, visits);
    List<Span> home = List.of(new Span(room.shift.hours().fromSeconds(), TimeWindow.DAY_END));
    return room.goesOn(new Partial(home, room.shift.startPlace(), false, WaterUse.NONE, 0));
  }

  private boolean goesOn(Partial day) {
    if (made.size() == visits.size()) {
      return ends(day);
    }
    if (visited(day)) {
      return true;
    }
    WaterTerms water = terms.water().orElse(null);
    if (water != null && !made.isEmpty() && day.waterStops < water.most()) {
      for (WaterPlace stop : water.places()) {
        Door door = Door.free(stop.place(), stop.seconds());
        List<Span> left = onward.afterDrive(day.left, day.place, door, BreakAt.NONE);
        int stops = day.waterStops + 1;
        Partial full = new Partial(left, stop.place(), day.breakTaken, WaterUse.NONE, stops);
        if (!left.isEmpty() && visited(full)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Whether one more visit can be made and the day goes on from there. */
  private boolean visited(Partial day) {
    for (Visit visit : visits) {
      Optional<WaterUse> used = terms.after(day.used, visit);
      boolean tooLateFirst = visit.first() && !made.isEmpty();
      if (made.contains(visit.id()) || tooLateFirst || used.isEmpty()) {
        continue;
      }
      String before = made.isEmpty() ? null : made.get(made.size() - 1);
      Door door = Door.of(visit, terms.served(visit, made.size() + 1, before));
      made.add(visit.id());
      for (BreakAt at : BreakAt.values()) {
        if (at == BreakAt.NONE || breakAllowed(at, made.size() - 1, day.breakTaken)) {
          List<Span> left = onward.afterDrive(day.left, day.place, door, at);
          boolean taken = day.breakTaken || at != BreakAt.NONE;
          Partial next = new Partial(left, visit.place(), taken, used.get(), day.waterStops);
          if (!left.isEmpty() && goesOn(next)) {
            return true;
          }
        }
      }
      made.remove(made.size() - 1);
    }
    return false;
  }

  private boolean breakAllowed(BreakAt at, int count, boolean breakTaken) {
    boolean edge = at == BreakAt.BEFORE ? count == 0 : count == visits.size() - 1;
    return rule != null && !breakTaken && !edge;
  }

  private boolean ends(Partial day) {
    long end = onward.earliestArrival(day.left, day.place, shift.endPlace(), 0);
    boolean breakNeeded =
        rule != null && visits.size() >= 2 && end > rule.startWithin().fromSeconds();
    return end <= shift.latestEndSeconds()
        && (day.breakTaken || !breakNeeded)
        && terms.broken(made).isEmpty();
  }
}
