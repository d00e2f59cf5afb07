package dev.dogleg.cli.export;

import dev.dogleg.itinerary.DayShift;
import dev.dogleg.model.HowToTell;
import dev.dogleg.plan.late.LateAnswer;
import dev.dogleg.plan.late.LateChoice;
import dev.dogleg.time.TimeWindow;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * The rest of a late day with everything a reader is shown about it.
 *
 * @param answer what may be done
 * @param shift the whole day's shift
 * @param nowSeconds what time it is, elapsed seconds
 * @param groomer name of the groomer
 * @param van name of the van
 * @param standing where the van is, in words
 * @param places labels of the places, by place number
 * @param stops labels of the day's visits, by id
 * @param numbers numbers of the doors in the plan, by visit id
 * @param tell how clients are told, by visit id; an errand's has none
 * @param anchor id of the visit with which the rest begins, if there is one
 * @param done number of doors done
 * @param spans for each choice the spans to tell anew, by visit id
 * @param left ids of the visits that were left to be made, in the plan's order
 */
public record LateSheet(
    LateAnswer answer,
    DayShift shift,
    int nowSeconds,
    String groomer,
    String van,
    String standing,
    List<PlaceLabel> places,
    Map<String, StopLabel> stops,
    Map<String, Integer> numbers,
    Map<String, HowToTell> tell,
    Optional<String> anchor,
    int done,
    List<Map<String, TimeWindow>> spans,
    List<String> left) {
  /** Copies the collections. */
  public LateSheet {
    Objects.requireNonNull(answer, "answer");
    Objects.requireNonNull(shift, "shift");
    Objects.requireNonNull(anchor, "anchor");
    places = List.copyOf(places);
    stops = Map.copyOf(stops);
    numbers = Map.copyOf(numbers);
    tell = Map.copyOf(tell);
    left = List.copyOf(left);
    spans = spans.stream().map(Map::copyOf).toList();
  }

  /** {@return {@code HH:MM} by the day's clock} */
  String clock(int seconds) {
    return shift.day().wallText(seconds).substring(0, 5);
  }

  /** {@return the span to tell instead of a broken one} */
  TimeWindow anew(LateChoice choice, String visitId) {
    return spans.get(answer.choices().indexOf(choice)).get(visitId);
  }

  /** {@return whether an event belongs to the door with which the rest begins} */
  boolean atAnchor(String visitId) {
    return anchor.filter(visitId::equals).isPresent();
  }
}
