package dev.dogleg.cli.export;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.itinerary.WeekNoRoom;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The end of a printed week: one line a day and groomer, what has no room, one sentence of proof.
 */
public final class WeekText {
  private static final int COLUMNS = 79;
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
  private static final String ROW = " %-11s %-16s %5s %6s %6s %6s %7s %6s %8s";

  private final List<PlannedDay> days;
  private final List<String> lines = new ArrayList<>();

  private WeekText(List<PlannedDay> days) {
    this.days = days;
  }

  /**
   * The summary.
   *
   * @param days planned days in order
   * @param values what each day earns, as text
   * @param left what is left out
   * @param proof the sentence of proof, without a full stop
   * @return lines of at most 80 columns
   */
  public static String of(
      List<PlannedDay> days, List<String> values, List<WeekLeftOut> left, String proof) {
    WeekText text = new WeekText(days);
    text.table(values);
    text.leftOut(left);
    text.lines.add("");
    text.lines.add(ProofText.sentence(proof));
    return String.join("\n", text.lines);
  }

  /**
   * The end of a single printed day.
   *
   * @param days that day
   * @param left what is left out
   * @param proof the sentence of proof, without a full stop
   * @return lines of at most 80 columns
   */
  public static String alone(List<PlannedDay> days, List<WeekLeftOut> left, String proof) {
    WeekText text = new WeekText(days);
    text.lines.add(" " + ProofText.sentence(proof));
    text.leftOut(left);
    return String.join("\n", text.lines);
  }

  private void table(List<String> values) {
    lines.add(
        ROW.formatted("day", "who", "doors", "drive", "km", "wait", "groom", "home", "value")
            .stripTrailing());
    DaySums all = new DaySums(0, 0, 0, 0);
    int doors = 0;
    for (int d = 0; d < days.size(); d++) {
      PlannedDay day = days.get(d);
      DaySums sums = DaySums.of(day);
      all = all.plus(sums);
      doors += day.doors();
      lines.add(
          ROW.formatted(
                  DATE.format(day.plan().shift().day().date()),
                  cut(day.groomer()),
                  day.doors(),
                  Amounts.roughMinutes(sums.driveSeconds()),
                  Amounts.roughKilometres(sums.metres()),
                  Amounts.roughMinutes(sums.waitSeconds()),
                  clock(sums.groomSeconds()),
                  home(day),
                  values.get(d))
              .stripTrailing());
    }
    lines.add(
        ROW.formatted(
                "together",
                "",
                doors,
                Amounts.roughMinutes(all.driveSeconds()),
                Amounts.roughKilometres(all.metres()),
                Amounts.roughMinutes(all.waitSeconds()),
                clock(all.groomSeconds()),
                "",
                sum(values))
            .stripTrailing());
    lines.add(" Drive and wait in minutes, groom in hours and minutes; value by pets' prices.");
  }

  private static String cut(String name) {
    return name.length() <= 16 ? name : name.substring(0, 15) + ".";
  }

  private static String clock(long seconds) {
    long minutes = Amounts.roughMinutes(seconds);
    return "%d:%02d".formatted(minutes / 60, minutes % 60);
  }

  private static String home(PlannedDay day) {
    List<PlannedStop> stops = day.plan().stops();
    return stops.isEmpty()
        ? "-"
        : day.plan()
            .shift()
            .day()
            .wallText(stops.get(stops.size() - 1).arriveSeconds())
            .substring(0, 5);
  }

  private static String sum(List<String> values) {
    return values.stream()
        .filter(value -> !value.isEmpty())
        .map(java.math.BigDecimal::new)
        .reduce(java.math.BigDecimal::add)
        .map(java.math.BigDecimal::toPlainString)
        .orElse("");
  }

  private void leftOut(List<WeekLeftOut> left) {
    if (left.isEmpty()) {
      return;
    }
    lines.add("");
    lines.add("No room for:");
    for (WeekLeftOut one : left) {
      add("- ", one.label().who() + state(one));
      for (WeekNoRoom.OnDay reason : one.reason().days()) {
        PlannedDay day = days.get(reason.day());
        add("    ", title(day) + ": " + NoRoomText.why(reason.reason(), day));
      }
      if (one.reason().days().isEmpty()) {
        add("    ", "no day of the run is left for it");
      }
      one.reason()
          .change()
          .ifPresent(
              change -> add("    ", "Smallest change: " + NoRoomText.change(one, days) + "."));
    }
  }

  private static String state(WeekLeftOut one) {
    return one.laterUntil().map(last -> " - its dates run on to " + last).orElse("")
        + (one.label().booked() ? "" : " - waiting list");
  }

  private String title(PlannedDay day) {
    boolean many = days.stream().map(PlannedDay::groomer).distinct().count() > 1;
    String date = DATE.format(day.plan().shift().day().date());
    return many ? date + ", " + day.groomer() : date;
  }

  private void add(String indent, String text) {
    List<String> wrapped = Wrap.lines(text, COLUMNS - indent.length() - 2);
    lines.add("  " + indent + wrapped.get(0));
    wrapped.stream().skip(1).forEach(line -> lines.add("  " + " ".repeat(indent.length()) + line));
  }
}
