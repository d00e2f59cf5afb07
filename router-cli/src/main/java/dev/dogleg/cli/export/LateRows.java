package dev.dogleg.cli.export;

import dev.dogleg.itinerary.PlannedStop;
import dev.dogleg.plan.late.LateChoice;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Turns a choice for the rest of a day into the day's rows of plan.csv: what is done stays. */
public final class LateRows {
  private LateRows() {}

  /**
   * The rows of the whole day.
   *
   * @param made rows of what is done, in the order of the day, as the plan has them
   * @param notes notes of the plan, by visit id
   * @param sheet the rest of the day
   * @param number number of the choice, from 1
   * @param minutes service seconds as served, by visit id
   * @return rows of the day
   */
  public static List<PlanRow> of(
      List<PlanRow> made,
      Map<String, String> notes,
      LateSheet sheet,
      int number,
      Map<String, Integer> minutes) {
    LateChoice choice = sheet.answer().choices().get(number - 1);
    List<PlanRow> rows = new ArrayList<>(made);
    Map<String, StopLabel> labels = new HashMap<>(sheet.stops());
    minutes.forEach(
        (id, seconds) -> labels.computeIfPresent(id, (key, label) -> label.taking(seconds)));
    PlannedDay day =
        new PlannedDay(
            choice.plan(),
            sheet.groomer(),
            sheet.van(),
            sheet.places(),
            labels,
            List.of(),
            choice.request().seed());
    List<PlanRow> rest = PlanRows.of(day);
    Map<String, String> told = LateText.notes(sheet, choice);
    int door = sheet.done();
    for (int k = 0; k < rest.size(); k++) {
      PlannedStop stop = choice.plan().stops().get(k);
      PlanRow row = rest.get(k);
      boolean visit = stop.kind() == PlannedStop.Kind.VISIT;
      if (visit && sheet.atAnchor(stop.visitId())) {
        leave(rows, row.leave());
      } else if (visit) {
        String note = notes.getOrDefault(stop.visitId(), "");
        String late = told.getOrDefault(stop.visitId(), "");
        String both = note.isEmpty() || late.isEmpty() ? note + late : note + "; " + late;
        rows.add(row.with("stop", Integer.toString(++door)).with("note", both));
      } else if (stop.kind() != PlannedStop.Kind.LEAVE || sheet.anchor().isEmpty()) {
        rows.add(row);
      }
    }
    if (!rows.isEmpty()) {
      String late = "late from " + sheet.clock(sheet.nowSeconds()) + ", choice " + number;
      String note = rows.get(0).note();
      rows.set(0, rows.get(0).with("note", note.isEmpty() ? late : note + "; " + late));
    }
    return rows;
  }

  /** The door at which the rest begins is left when the rest says. */
  private static void leave(List<PlanRow> rows, String at) {
    for (int k = rows.size() - 1; k >= 0; k--) {
      if (rows.get(k).kind().equals("visit") || rows.get(k).kind().equals("errand")) {
        rows.set(k, rows.get(k).with("leave", at));
        return;
      }
    }
  }
}
