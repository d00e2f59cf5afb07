package dev.dogleg.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.dogleg.itinerary.DayRequest;
import dev.dogleg.itinerary.Visit;
import dev.dogleg.oracle.DayOracle;
import dev.dogleg.oracle.RandomTerms;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Whether there is room, by the audit's intervals and by living every second: the same. */
class RoomTest {
  @Test
  void everySetOfVisitsHasRoomForBothOrForNeither() {
    int room = 0;
    int none = 0;
    for (int seed = 1; seed <= 50; seed++) {
      DayRequest free = RandomDay.request(new SplittableRandom(seed), 4, false);
      DayRequest day = RandomTerms.on(seed, free);
      RoomTerms terms = RoomTerms.of(day);
      long[] costs = DayOracle.costsBySet(day);
      for (int set = 1; set < costs.length; set++) {
        List<Visit> visits = new ArrayList<>();
        for (int v = 0; v < 4; v++) {
          if ((set >> v & 1) != 0) {
            visits.add(day.visits().get(v));
          }
        }
        boolean lived = costs[set] < DayOracle.NEVER;
        String name = "seed " + seed + " set " + set + " " + day;
        assertEquals(lived, TogetherRoom.exists(day, terms, visits), name);
        if (visits.size() == 1) {
          assertEquals(lived, new AloneRoom(day, visits.get(0), terms).exists(), name);
        }
        room += lived ? 1 : 0;
        none += lived ? 0 : 1;
      }
    }
    String seen = room + " with room, " + none + " without";
    assertTrue(room > 100 && none > 100, seen);
  }
}
