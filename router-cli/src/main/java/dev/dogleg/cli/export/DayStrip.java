package dev.dogleg.cli.export;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.time.WorkDay;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Draws a day before and after a newcomer as two strips of letters over one scale of hours: a
 * letter a door, {@code *} the newcomer, {@code -} driving, {@code .} waiting, {@code =} the break,
 * {@code w} water.
 */
final class DayStrip {
  private static final int COLUMNS = 66;
  private static final int[] MINUTES = {5, 10, 15, 20, 30};
  private static final int HOUR = 3_600;
  private static final String LETTERS = "abcdefghijklmnopqrstuvxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";

  private final DayPlan before;
  private final DayPlan after;
  private final WorkDay day;
  private final Map<String, Character> letters = new LinkedHashMap<>();
  private final int fromSeconds;
  private final int columnSeconds;

  DayStrip(DayPlan before, DayPlan after, WorkDay day, String newcomerId) {
    this.before = before;
    this.after = after;
    this.day = day;
    int next = 0;
    for (DayPlan plan : List.of(before, after)) {
      for (PlannedStop stop : plan.stops()) {
        if (stop.kind() == PlannedStop.Kind.VISIT && !letters.containsKey(stop.visitId())) {
          boolean newcomer = stop.visitId().equals(newcomerId);
          letters.put(stop.visitId(), newcomer ? '*' : LETTERS.charAt(next % LETTERS.length()));
          next += newcomer ? 0 : 1;
        }
      }
    }
    int first = edge(true);
    int last = edge(false);
    fromSeconds = first / HOUR * HOUR;
    columnSeconds =
        60
            * Arrays.stream(MINUTES)
                .filter(minutes -> (last - fromSeconds) / (60 * minutes) < COLUMNS)
                .findFirst()
                .orElse(60);
  }

  private int edge(boolean start) {
    int edge = start ? Integer.MAX_VALUE : 0;
    for (DayPlan plan : List.of(before, after)) {
      if (!plan.stops().isEmpty()) {
        int first = plan.stops().get(0).leaveSeconds();
        int last = plan.stops().get(plan.stops().size() - 1).arriveSeconds();
        edge = start ? Math.min(edge, first) : Math.max(edge, last);
      }
    }
    return edge;
  }

  /** {@return the letter of each door, in the order of the day before, then the newcomer} */
  Map<String, Character> letters() {
    return letters;
  }

  /** {@return three lines: hours, before, after} */
  List<String> lines() {
    return List.of(
        "          " + hours(), "  before  " + strip(before), "  after   " + strip(after));
  }

  private String hours() {
    StringBuilder line = new StringBuilder();
    for (int second = fromSeconds; column(second) < COLUMNS; second += HOUR) {
      String hour = Integer.toString(day.wallAt(second).getHour());
      if (second > edge(false) || column(second) + hour.length() > COLUMNS) {
        break;
      }
      while (line.length() < column(second)) {
        line.append(' ');
      }
      line.append(hour);
    }
    return line.toString();
  }

  private int column(int second) {
    return (second - fromSeconds) / columnSeconds;
  }

  private String strip(DayPlan plan) {
    if (plan.stops().isEmpty()) {
      return "(at home)";
    }
    char[] cells = new char[COLUMNS];
    Arrays.fill(cells, ' ');
    PlannedStop last = plan.stops().get(0);
    for (PlannedStop stop : plan.stops().subList(1, plan.stops().size())) {
      // Waiting that is left between two events shows as such.
      fill(cells, last.leaveSeconds(), stop.startSeconds(), '.');
      fill(cells, last.leaveSeconds(), last.leaveSeconds() + stop.driveSeconds(), '-');
      char mark =
          switch (stop.kind()) {
            case VISIT -> letters.get(stop.visitId());
            case BREAK -> '=';
            case WATER -> 'w';
            case LEAVE, HOME -> ' ';
          };
      if (mark != ' ') {
        fill(cells, stop.startSeconds(), stop.leaveSeconds(), mark);
        // However short, a stop is seen.
        cells[Math.min(COLUMNS - 1, column(stop.startSeconds()))] = mark;
      }
      last = stop;
    }
    return new String(cells).stripTrailing();
  }

  private void fill(char[] cells, int from, int to, char mark) {
    int first = (from - fromSeconds + columnSeconds / 2) / columnSeconds;
    int last = (to - fromSeconds + columnSeconds / 2) / columnSeconds;
    for (int c = Math.max(0, first); c < Math.min(COLUMNS, last); c++) {
      cells[c] = mark;
    }
  }
}
