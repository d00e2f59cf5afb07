package dev.dogleg.plan.week;

import dev.dogleg.itinerary.DayRule;
import java.util.Arrays;

/** The load points of the one rule that must hold and names most visits; without one, no points. */
final class DayLoad {
  /** For each local visit its points. */
  final int[] points;

  /** Most points of a day. */
  final int most;

  /** Whether that rule is the day's only one. */
  final boolean alone;

  DayLoad(VanKind kind) {
    int[] chosen = new int[kind.size()];
    int limit = 0;
    long named = 0;
    for (DayRule rule : kind.day().terms().rules()) {
      if (rule instanceof DayRule.AtMost atMost && rule.must()) {
        int[] these = new int[kind.size()];
        Arrays.setAll(these, j -> atMost.points().getOrDefault(kind.visit(j).id(), 0));
        long count = Arrays.stream(these).filter(p -> p > 0).count();
        if (count > named) {
          named = count;
          chosen = these;
          limit = atMost.most();
        }
      }
    }
    points = chosen;
    most = limit;
    alone = named > 0 && kind.day().terms().rules().size() == 1;
  }
}
