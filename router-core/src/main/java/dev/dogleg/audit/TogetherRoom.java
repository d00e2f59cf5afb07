package dev.dogleg.audit;

import dev.dogleg.itinerary.BreakRule;
import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayShift;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.time.TimeWindow;
import java.util.List;

/** Whether a few visits fit into one day together, by trying every order and break. */
final class TogetherRoom {
  /** Most visits tried: 6! orders with 11 places of the break are about 8,000 days. */
  static final int MOST_VISITS = 6;

  private final DayShift shift;
  private final BreakRule rule;
  private final Onward onward;
  private final List<Visit> visits;
  private final boolean[] made;

  private TogetherRoom(DayRequest request, List<Visit> visits) {
    this.shift = request.shift();
    this.rule = shift.breakRule().orElse(null);
    this.onward = new Onward(request.travel(), rule);
    this.visits = visits;
    this.made = new boolean[visits.size()];
  }

  /**
   * Whether some day makes all of the visits.
   *
   * @param visits at most {@link #MOST_VISITS}
   */
  static boolean exists(DayRequest request, List<Visit> visits) {
    TogetherRoom room = new TogetherRoom(request, visits);
    List<Span> home = List.of(new Span(room.shift.hours().fromSeconds(), TimeWindow.DAY_END));
    return room.goesOn(home, room.shift.startPlace(), 0, false);
  }

  private boolean goesOn(List<Span> left, int place, int count, boolean breakTaken) {
    if (count == visits.size()) {
      return ends(left, place, breakTaken);
    }
    for (int v = 0; v < visits.size(); v++) {
      Visit visit = visits.get(v);
      if (made[v] || (visit.first() && count > 0)) {
        continue;
      }
      made[v] = true;
      for (BreakAt at : BreakAt.values()) {
        if (at == BreakAt.NONE || breakAllowed(at, count, breakTaken)) {
          List<Span> next = onward.afterDrive(left, place, Door.of(visit), at);
          boolean taken = breakTaken || at != BreakAt.NONE;
          if (!next.isEmpty() && goesOn(next, visit.place(), count + 1, taken)) {
            return true;
          }
        }
      }
      made[v] = false;
    }
    return false;
  }

  private boolean breakAllowed(BreakAt at, int count, boolean breakTaken) {
    boolean edge = at == BreakAt.BEFORE ? count == 0 : count == visits.size() - 1;
    return rule != null && !breakTaken && !edge;
  }

  private boolean ends(List<Span> left, int place, boolean breakTaken) {
    long end = onward.earliestArrival(left, place, shift.endPlace(), 0);
    boolean breakNeeded =
        rule != null && visits.size() >= 2 && end > rule.startWithin().fromSeconds();
    return end <= shift.latestEndSeconds() && (breakTaken || !breakNeeded);
  }
}
