package dev.dogleg.cli.terms;

import dev.dogleg.itinerary.DayRule;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** How long each stop of a planned day takes with its rules' minutes, for showing. */
public final class ServedSeconds {
  private ServedSeconds() {}

  /**
   * Service as served.
   *
   * @param order ids of the visits in their order
   * @param asked service seconds of each, without rules of the day
   * @param rules the day's rules, in their order
   * @return service seconds by id, in the day's order
   */
  public static Map<String, Integer> of(
      List<String> order, Map<String, Integer> asked, List<DayRule> rules) {
    Map<String, Integer> served = new LinkedHashMap<>();
    for (int place = 1; place <= order.size(); place++) {
      String id = order.get(place - 1);
      long seconds = asked.get(id);
      for (DayRule rule : rules) {
        if (rule instanceof DayRule.PlaceMinutes minutes
            && minutes.visits().contains(id)
            && place >= minutes.fromPlace()
            && place <= minutes.toPlace()) {
          seconds =
              Math.max(
                  0, (seconds * minutes.timesThousandths() + 500) / 1_000 + minutes.plusSeconds());
        }
      }
      for (DayRule rule : rules) {
        if (place > 1
            && rule instanceof DayRule.Changeover change
            && change.from().contains(order.get(place - 2))
            && change.to().contains(id)) {
          seconds += change.seconds();
        }
      }
      served.put(id, (int) seconds);
    }
    return served;
  }
}
