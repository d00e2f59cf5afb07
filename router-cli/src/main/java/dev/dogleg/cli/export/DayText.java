package dev.dogleg.cli.export;

import dev.dogleg.itinerary.DayPlan;
import dev.dogleg.itinerary.PlannedStop;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** A day as a person reads it on a terminal of 80 columns. */
public final class DayText {
  private static final int COLUMNS = 80;
  private static final int TEXT_COLUMNS = 39;
  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.ENGLISH);
  private static final String ROW = " %5s %2s  %-" + TEXT_COLUMNS + "s %6s %6s %6s %6s";

  private final PlannedDay day;
  private final List<String> lines = new ArrayList<>();

  private DayText(PlannedDay day) {
    this.day = day;
  }

  /**
   * The printed day.
   *
   * @param day a planned day
   * @return lines of at most 80 columns, each ended by a line feed
   */
  public static String of(PlannedDay day) {
    return new DayText(day).write();
  }

  private String write() {
    DayPlan plan = day.plan();
    heading();
    if (plan.stops().isEmpty()) {
      lines.add("");
      lines.add(" No visit: the van stays at home.");
    } else {
      table();
      sums();
    }
    if (day.weekProof().isEmpty()) {
      lines.add(" " + ProofText.sentence(day.proof()));
    }
    leftOut();
    return String.join("\n", lines) + "\n";
  }

  private void heading() {
    String left = DATE.format(day.plan().shift().day().date()) + ", " + day.groomer();
    int doors = day.doors();
    String right = doors == 1 ? "1 door" : doors + " doors";
    List<PlannedStop> stops = day.plan().stops();
    if (!stops.isEmpty()) {
      right += ", home " + clock(stops.get(stops.size() - 1).arriveSeconds());
    }
    lines.add(left + " ".repeat(Math.max(2, COLUMNS - left.length() - right.length())) + right);
    lines.add("");
  }

  private void table() {
    add("at", "", day.van().isEmpty() ? "" : "van: " + day.van(), "drive", "km", "groom", "spare");
    int door = 0;
    for (PlannedStop stop : day.plan().stops()) {
      switch (stop.kind()) {
        case LEAVE ->
            add(clock(stop.leaveSeconds()), "", "leave " + end(stop), "", "", "", spare(stop));
        case HOME -> add(clock(stop.arriveSeconds()), "", end(stop), drive(stop), km(stop), "", "");
        case BREAK -> takeBreak(stop);
        case WATER ->
            add(clock(stop.arriveSeconds()), "", "water", drive(stop), km(stop), "", spare(stop));
        case VISIT -> visit(stop, Integer.toString(++door));
      }
    }
  }

  /** Home, unless the day starts and ends at different places: then each is named. */
  private String end(PlannedStop stop) {
    if (day.plan().shift().startPlace() == day.plan().shift().endPlace()) {
      return "home";
    }
    return Wrap.lines(day.places().get(stop.place()).address(), TEXT_COLUMNS - 6).get(0);
  }

  private void takeBreak(PlannedStop stop) {
    String text =
        "break, "
            + Amounts.spoken(stop.leaveSeconds() - stop.startSeconds())
            + ", at "
            + day.stop(stop.visitId()).client()
            + "'s door";
    List<String> wrapped = Wrap.lines(text, TEXT_COLUMNS);
    add(clock(stop.startSeconds()), "", wrapped.get(0), drive(stop), km(stop), "", spare(stop));
    wrapped.stream().skip(1).forEach(this::more);
  }

  private void visit(PlannedStop stop, String door) {
    StopLabel label = day.stop(stop.visitId());
    List<String> who = Wrap.lines(label.who(), TEXT_COLUMNS);
    String groom = Long.toString(Amounts.roughMinutes(label.serviceSeconds()));
    add(clock(stop.arriveSeconds()), door, who.get(0), drive(stop), km(stop), groom, spare(stop));
    who.stream().skip(1).forEach(this::more);
    Wrap.lines(day.places().get(stop.place()).address(), TEXT_COLUMNS).forEach(this::more);
    int free = stop.startSeconds() - stop.arriveSeconds();
    if (free > 0) {
      more("groom starts " + clock(stop.startSeconds()));
    }
    if (!label.note().isEmpty()) {
      Wrap.lines(label.note(), COLUMNS - 12).forEach(this::more);
    }
  }

  private void add(
      String at, String door, String text, String drive, String km, String groom, String spare) {
    lines.add(ROW.formatted(at, door, text, drive, km, groom, spare).stripTrailing());
  }

  private void more(String text) {
    lines.add(" ".repeat(11) + text);
  }

  private void sums() {
    DaySums all = DaySums.of(day);
    lines.add("");
    String sums =
        "Driving %s over %s km, grooming %s, waiting %s."
            .formatted(
                Amounts.spoken(all.driveSeconds()),
                Amounts.roughKilometres(all.metres()),
                Amounts.spoken(all.groomSeconds()),
                Amounts.spoken(all.waitSeconds()));
    Wrap.lines(sums, COLUMNS - 1).forEach(line -> lines.add(" " + line));
    int over = end() - day.plan().shift().hours().toSeconds();
    if (over > 0) {
      lines.add(" Overtime: " + Amounts.spokenMinutes(Amounts.minutesUp(over)) + ".");
    }
    lines.add(" In minutes. Spare: how late the van may come before a later promise breaks.");
  }

  private int end() {
    return day.plan().stops().get(day.plan().stops().size() - 1).arriveSeconds();
  }

  private void leftOut() {
    if (day.leftOut().isEmpty()) {
      return;
    }
    lines.add("");
    lines.add(" No room for:");
    for (LeftOut left : day.leftOut()) {
      String text = left.label().who() + " - " + NoRoomText.why(left, day);
      List<String> wrapped = Wrap.lines(text, COLUMNS - 5);
      lines.add("   - " + wrapped.get(0));
      wrapped.stream().skip(1).forEach(line -> lines.add("     " + line));
    }
  }

  private String clock(int seconds) {
    return day.plan().shift().day().wallText(seconds).substring(0, 5);
  }

  private static String drive(PlannedStop stop) {
    return stop.driveMetres() == 0 && stop.driveSeconds() == 0
        ? ""
        : Long.toString(Amounts.roughMinutes(stop.driveSeconds()));
  }

  private static String km(PlannedStop stop) {
    return stop.driveMetres() == 0 ? "" : Amounts.roughKilometres(stop.driveMetres());
  }

  private static String spare(PlannedStop stop) {
    return Long.toString(Amounts.fullMinutes(stop.spareSeconds()));
  }
}
