package dev.dogleg.cli.command;

import dev.dogleg.cli.command.DoorWords.PlannedDoor;
import dev.dogleg.cli.command.LateCommand.WrongUsage;
import dev.dogleg.cli.export.PlanReader.PlacedRow;
import dev.dogleg.cli.export.PlanRow;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * The rows of one planned day, and which of them are done or cancelled.
 *
 * @param rows rows of the day in their order
 * @param doors the rows that are visits or errands
 * @param done numbers of doors made, from 0, in the order made
 * @param cancelled numbers of doors that will not be made
 */
record LatePlan(
    List<PlacedRow> rows, List<PlacedRow> doors, List<Integer> done, Set<Integer> cancelled) {
  /** Copies the lists. */
  LatePlan {
    rows = List.copyOf(rows);
    doors = List.copyOf(doors);
    done = List.copyOf(done);
    cancelled = Set.copyOf(cancelled);
  }

  /**
   * Understands what was typed.
   *
   * @param rows rows of the day
   * @param doneWords doors made
   * @param cancelWords doors that will not be made
   * @throws WrongUsage where a word names no door of the day, or several
   */
  static LatePlan of(List<PlacedRow> rows, String doneWords, String cancelWords) {
    List<PlacedRow> doors = rows.stream().filter(row -> isDoor(row.row())).toList();
    DoorWords words = words(doors);
    try {
      List<Integer> done = doneWords.isBlank() ? List.of() : words.done(doneWords);
      Set<Integer> cancelled = new LinkedHashSet<>(words.named(cancelWords));
      for (int door : done) {
        if (cancelled.contains(door)) {
          throw new IllegalArgumentException(
              doors.get(door).row().client() + " is both done and cancelled");
        }
      }
      return new LatePlan(rows, doors, done, cancelled);
    } catch (IllegalArgumentException unknown) {
      throw new WrongUsage(unknown.getMessage());
    }
  }

  private static DoorWords words(List<PlacedRow> doors) {
    return new DoorWords(
        doors.stream()
            .map(row -> new PlannedDoor(row.row().client(), row.row().pets(), bookings(row)))
            .toList());
  }

  private static boolean isDoor(PlanRow row) {
    return row.kind().equalsIgnoreCase("visit") || row.kind().equalsIgnoreCase("errand");
  }

  private static boolean isBreak(PlanRow row) {
    return row.kind().equalsIgnoreCase("break");
  }

  /** {@return ids of the bookings of a row} */
  static List<String> bookings(PlacedRow row) {
    return Arrays.stream(row.row().booking().split(";"))
        .map(String::strip)
        .filter(id -> !id.isEmpty())
        .toList();
  }

  /** {@return numbers of doors that a word may name} */
  List<Integer> doorsAt(String word) {
    return words(doors).matching(word);
  }

  /** {@return the row of the door of the day's order that was done last, or -1} */
  private int lastDoneRow() {
    return done.stream().mapToInt(door -> rows.indexOf(doors.get(door))).max().orElse(-1);
  }

  /** {@return rows of a kind that lie before the last door done} */
  private List<Integer> passed(String kind) {
    List<Integer> passed = new ArrayList<>();
    for (int row = 0; row < lastDoneRow(); row++) {
      if (rows.get(row).row().kind().equalsIgnoreCase(kind)) {
        passed.add(row);
      }
    }
    return passed;
  }

  /** {@return whether the plan's break lies before the last door done} */
  boolean breakPassed() {
    return !passed("break").isEmpty();
  }

  /** {@return number of water stops passed} */
  int waterStops() {
    return passed("water").size();
  }

  /** {@return doors done since the tanks were last full and empty} */
  List<Integer> sinceWater() {
    List<Integer> stops = passed("water");
    int last = stops.isEmpty() ? -1 : stops.get(stops.size() - 1);
    return done.stream().filter(door -> rows.indexOf(doors.get(door)) > last).toList();
  }

  /**
   * Rows of what is done: where the day was left, doors in the order made, break and water before
   * the door they stood before; a break taken sooner than planned comes last.
   *
   * @param breakTaken whether the break was taken
   * @return rows
   */
  List<PlanRow> made(boolean breakTaken) {
    List<PlanRow> made = new ArrayList<>();
    if (done.isEmpty()) {
      return made;
    }
    rows.stream()
        .map(PlacedRow::row)
        .filter(row -> row.kind().equalsIgnoreCase("leave"))
        .forEach(made::add);
    int number = 0;
    Set<Integer> used = new LinkedHashSet<>();
    for (int door : done) {
      int at = rows.indexOf(doors.get(door));
      for (int row = at - 1; row >= 0 && !isDoor(rows.get(row).row()); row--) {
        PlanRow before = rows.get(row).row();
        boolean rest = isBreak(before) && breakTaken;
        if ((rest || before.kind().equalsIgnoreCase("water")) && used.add(row)) {
          made.add(before);
        }
      }
      made.add(doors.get(door).row().with("stop", Integer.toString(++number)));
    }
    if (breakTaken && made.stream().noneMatch(LatePlan::isBreak)) {
      rows.stream().map(PlacedRow::row).filter(LatePlan::isBreak).limit(1).forEach(made::add);
    }
    return made;
  }
}
