package dev.dogleg.cli.command;

import dev.dogleg.cli.prepare.FreeWeek;
import dev.dogleg.cli.prepare.ZoneRound;
import dev.dogleg.cli.prepare.ZoneRound.ZonedClient;
import dev.dogleg.cli.terms.VanDay;
import dev.dogleg.model.Booking;
import dev.dogleg.model.Zone;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Which zones hold a visit, and whether a van-day is one of theirs. */
final class ZoneBounds {
  private final List<Zone> zones;
  private final List<VanDay> days;
  private final Map<String, List<Integer>> byVisit = new HashMap<>();

  ZoneBounds(List<Zone> zones, ZoneRound round, FreeWeek free) {
    this.zones = zones;
    this.days = free.week().days();
    Map<String, ZonedClient> clients = round.byId();
    free.week()
        .bookings()
        .forEach(
            (visit, bookings) ->
                bookings.stream()
                    .map(Booking::clientId)
                    .filter(clients::containsKey)
                    .findFirst()
                    .ifPresent(client -> byVisit.put(visit, clients.get(client).zones())));
  }

  /** Numbers of the zones that hold a visit; none for errands. */
  List<Integer> zonesOf(String visitId) {
    return byVisit.getOrDefault(visitId, List.of());
  }

  /** {@return name of a zone} */
  String name(int zone) {
    return zones.get(zone).name();
  }

  /** Whether a zone speaks of a van-day: it is everybody's, or that groomer's. */
  boolean binds(int zone, int day) {
    return zones.get(zone).groomerId().map(days.get(day).groomer().id()::equals).orElse(true);
  }

  /** Whether a van-day is one of a zone's. */
  boolean worked(int zone, int day) {
    return zones.get(zone).days().matches(days.get(day).dayTags());
  }

  /** Whether a visit on a van-day is on a day of one of its zones. */
  boolean welcome(String visitId, int day) {
    return zonesOf(visitId).stream().anyMatch(zone -> binds(zone, day) && worked(zone, day));
  }

  /** Whether a visit on a van-day is on a day that is none of its zones'. */
  boolean wrong(String visitId, int day) {
    return zonesOf(visitId).stream().anyMatch(zone -> binds(zone, day)) && !welcome(visitId, day);
  }
}
