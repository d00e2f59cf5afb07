package dev.dogleg.fit;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.OddsTerms;
import dev.dogleg.itinerary.PlannedStop;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Tells whether a timed day keeps its told times often enough, with one more told among them.
 *
 * @param before the day without that one
 * @param keptPermille so many of a thousand told times are to be kept
 */
record RoomOdds(PlannedVanDay before, int keptPermille) {
  /** What the coarse grid of odds may be off, as the price of odds allows for (docs/WEEK.md). */
  private static final int GRID_PERMILLE = 10;

  /** Whether it does: those told already as often as asked, or as often as now. */
  boolean kept(DayRequest told, String newcomer, List<PlannedStop> stops) {
    int target = keptPermille - GRID_PERMILLE;
    Map<String, Integer> kept = DayOdds.kept(told, stops);
    Set<String> promised = told.terms().odds().map(OddsTerms::promised).orElse(Set.of());
    return kept.getOrDefault(newcomer, 0) >= target
        && promised.stream()
            .filter(kept::containsKey)
            .filter(id -> !id.equals(newcomer))
            .allMatch(id -> kept.get(id) >= Math.min(target, before.kept().getOrDefault(id, 0)));
  }
}
