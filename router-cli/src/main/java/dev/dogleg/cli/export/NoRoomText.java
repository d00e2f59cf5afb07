package dev.dogleg.cli.export;

import dev.dogleg.itinerary.NoRoom;
import dev.dogleg.itinerary.WeekNoRoom;
import java.util.ArrayList;
import java.util.List;

/** Says in plain words why a visit has no room. */
public final class NoRoomText {
  private NoRoomText() {}

  /**
   * The reason as a sentence without its subject.
   *
   * @param left what is left out
   * @param day the day, for the names of other visits
   * @return for example {@code cannot be reached in its time, not even alone: 12 minutes short}
   */
  public static String why(LeftOut left, PlannedDay day) {
    return why(left.reason(), day)
        + left.laterUntil().map(last -> "; its dates run on to " + last).orElse("");
  }

  /**
   * The reason on one day of a week.
   *
   * @param noRoom the reason
   * @param day that day, for the names of its visits
   * @return a sentence without its subject
   */
  public static String why(NoRoom noRoom, PlannedDay day) {
    return switch (noRoom.why()) {
      case IMPOSSIBLE_ALONE -> "not even alone: " + rule(noRoom.rule()) + missing(noRoom);
      case IMPOSSIBLE_TOGETHER ->
          "fits alone, but not in one day with " + others(noRoom, day) + tightest(noRoom);
      case NOT_WORTH_IT -> "waiting list: it would fit, but costs more driving than leaving it out";
      case NOT_FOUND -> "no room was found within the limit; it may still exist (raise --effort)";
    };
  }

  /**
   * The smallest change that makes room.
   *
   * @param left what is left out, with such a change
   * @param days planned days, by number
   * @return a sentence without a full stop
   */
  static String change(WeekLeftOut left, List<PlannedDay> days) {
    WeekNoRoom.Change change = left.reason().change().orElseThrow();
    String on = day(days.get(change.day()));
    String minutes = Amounts.spokenMinutes(Amounts.minutesUp(change.seconds()));
    return switch (change.kind()) {
      case WIDER_WINDOW -> "its own time " + minutes + " wider makes room on " + on;
      case LATER_END -> "a day that ends " + minutes + " later makes room on " + on;
      case MOVE_OTHER ->
          "moving "
              + left.moved().map(StopLabel::who).orElse(change.otherId())
              + " to "
              + day(days.get(change.toDay()))
              + " makes room on "
              + on;
    };
  }

  private static String day(PlannedDay day) {
    return day.plan().shift().day().date() + ", " + day.groomer();
  }

  private static String rule(String rule) {
    return switch (rule) {
      case "no-road" -> "no road that the van may use leads there";
      case "arrive-within" -> "the door cannot be reached within the time asked for";
      case "done-by" -> "it cannot be done by the time asked for";
      case "van-within" -> "the van may not stand there long enough";
      case "day-end" -> "the day ends too early";
      case "break" -> "the break cannot be held";
      case "first" -> "it must be first, and another is first already";
      case "water" -> "the tanks do not hold the water";
      default ->
          rule.startsWith("rule:") ? "the rule \"" + rule.substring(5) + "\" forbids it" : rule;
    };
  }

  private static String missing(NoRoom noRoom) {
    return noRoom.shortBySeconds() > 0
        ? ", " + Amounts.spokenMinutes(Amounts.minutesUp(noRoom.shortBySeconds())) + " short"
        : "";
  }

  private static String tightest(NoRoom noRoom) {
    return noRoom.rule().isEmpty() ? "" : " (" + rule(noRoom.rule()) + missing(noRoom) + ")";
  }

  private static String others(NoRoom noRoom, PlannedDay day) {
    List<String> names = new ArrayList<>();
    for (String visit : noRoom.withVisits()) {
      StopLabel label = day.stops().get(visit);
      names.add(label == null ? visit : label.client());
    }
    if (names.isEmpty()) {
      return "the others";
    }
    if (names.size() == 1) {
      return names.get(0);
    }
    return String.join(", ", names.subList(0, names.size() - 1))
        + " and "
        + names.get(names.size() - 1)
        + " together";
  }
}
