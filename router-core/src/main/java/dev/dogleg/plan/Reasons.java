package dev.dogleg.plan;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.DayTerms;
import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.schedule.DayModel;
import dev.dogleg.schedule.LegMemory;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Why each left-out visit has no room, truly.
 *
 * <p>Impossible alone: timed alone. Impossible together: the booked visits served, thinned one by
 * one (deletion filter) over exact searches for a day that serves them all, until no one can go.
 * Rules that want other visits are passed over there, and named where nothing else is the reason.
 */
final class Reasons {
  private final DayModel day;
  private final DayModel room;
  private final int[] served;
  private final boolean proven;
  private final WorkMeter meter;
  private final DayRequest request;

  Reasons(
      DayRequest request,
      DayModel day,
      DayModel room,
      int[] served,
      boolean proven,
      WorkMeter meter) {
    this.day = day;
    this.served = served;
    this.proven = proven;
    this.meter = meter;
    this.request = request;
    this.room = room;
  }

  /**
   * The day without rules that want other visits.
   *
   * @param legs what is known of its legs
   */
  static DayModel room(DayRequest request, DayModel day, LegMemory legs) {
    DayTerms passing = RoomTerms.passingOverCompany(request).terms();
    return request.terms().none() ? day : DayModel.of(request.under(passing), legs);
  }

  List<NoRoom> list() {
    boolean[] in = new boolean[day.size()];
    for (int visit : served) {
      in[visit] = true;
    }
    List<NoRoom> reasons = new ArrayList<>();
    for (int visit = 0; visit < day.size(); visit++) {
      if (!in[visit]) {
        reasons.add(why(visit, in));
      }
    }
    return reasons;
  }

  private NoRoom why(int visit, boolean[] in) {
    String id = day.visit(visit).id();
    Optional<NoRoom> alone = AloneReason.of(request, day.visit(visit));
    if (alone.isPresent()) {
      return alone.get();
    }
    List<Integer> booked = new ArrayList<>();
    for (int other = 0; other < day.size(); other++) {
      if (in[other] && day.visit(other).booked()) {
        booked.add(other);
      }
    }
    Boolean together = FitsTogether.all(room, visit, booked, meter);
    if (Boolean.FALSE.equals(together)) {
      List<Integer> conflict = thin(visit, booked);
      if (conflict != null) {
        List<String> ids = conflict.stream().map(other -> day.visit(other).id()).toList();
        return new NoRoom(id, NoRoom.Why.IMPOSSIBLE_TOGETHER, "", 0, ids);
      }
    }
    if (room != day && Boolean.TRUE.equals(together)) {
      together = FitsTogether.all(day, visit, booked, meter);
      Optional<NoRoom> wanting = AloneReason.forWantOfOthers(request, day.visit(visit));
      if (wanting.isPresent() && !Boolean.TRUE.equals(together)) {
        return wanting.get();
      }
    }
    boolean notWorth = proven && !day.visit(visit).booked() && Boolean.TRUE.equals(together);
    NoRoom.Why why = notWorth ? NoRoom.Why.NOT_WORTH_IT : NoRoom.Why.NOT_FOUND;
    return new NoRoom(id, why, "", 0, List.of());
  }

  /** A part of the visits that still cannot be served with it, from which none can go; or null. */
  private List<Integer> thin(int visit, List<Integer> booked) {
    List<Integer> kept = new ArrayList<>(booked);
    boolean shorter = true;
    while (shorter) {
      shorter = false;
      for (Integer other : List.copyOf(kept)) {
        List<Integer> fewer = new ArrayList<>(kept);
        fewer.remove(other);
        Boolean fits = FitsTogether.all(room, visit, fewer, meter);
        if (fits == null) {
          return null;
        }
        if (!fits) {
          kept = fewer;
          shorter = true;
        }
      }
    }
    return kept;
  }
}
