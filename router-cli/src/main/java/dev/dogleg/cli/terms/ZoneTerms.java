package dev.dogleg.cli.terms;

import dev.dogleg.fault.Where;
import dev.dogleg.model.Zone;
import java.util.List;
import java.util.function.BiPredicate;
import java.util.function.Function;

/** What zones come to: choices taken away or priced. */
public final class ZoneTerms {
  private ZoneTerms() {}

  /**
   * Applies zones. A told time stands whatever its zone.
   *
   * @param zones the zones
   * @param days van-days
   * @param stops stops with their choices; errands left out
   * @param inside whether a zone holds the door of a stop
   * @param rows where a zone stands, by its name
   */
  public static void apply(
      List<Zone> zones,
      List<VanDay> days,
      List<DraftStop> stops,
      BiPredicate<Zone, DraftStop> inside,
      Function<String, Where> rows) {
    for (DraftStop stop : stops) {
      List<Zone> around =
          stop.told() ? List.of() : zones.stream().filter(zone -> inside.test(zone, stop)).toList();
      for (DraftChoice choice : List.copyOf(stop.choices())) {
        VanDay day = days.get(choice.day());
        List<Zone> mine =
            around.stream()
                .filter(zone -> zone.groomerId().map(day.groomer().id()::equals).orElse(true))
                .toList();
        if (!mine.isEmpty() && mine.stream().noneMatch(z -> z.days().matches(day.dayTags()))) {
          outside(mine, stop, choice, rows);
        }
      }
    }
  }

  private static void outside(
      List<Zone> zones, DraftStop stop, DraftChoice choice, Function<String, Where> rows) {
    for (Zone zone : zones) {
      if (zone.strength().must()) {
        stop.remove(choice.day(), "zone " + zone.name(), rows.apply(zone.name()));
        return;
      }
    }
    int least = zones.stream().mapToInt(zone -> zone.strength().ratherMinutes()).min().orElse(0);
    choice.dearer(Price.ofMinutes(least));
  }
}
