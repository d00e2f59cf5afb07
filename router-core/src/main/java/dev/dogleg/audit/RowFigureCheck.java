package dev.dogleg.audit;

import dev.dogleg.itinerary.PlannedStop;

/** Whether drive, length, waiting and spare of each event are what its times say. */
final class RowFigureCheck {
  private final FindingList found;

  private RowFigureCheck(FindingList found) {
    this.found = found;
  }

  /** Checks a plan of sound structure. */
  static void check(DayRows rows, FindingList found) {
    RowFigureCheck check = new RowFigureCheck(found);
    SpareTimes spare = new SpareTimes(rows);
    for (Row row : rows.all()) {
      PlannedStop stop = row.stop();
      if (RowFigures.known(rows, row)) {
        RowFigures right = RowFigures.of(rows, row);
        check.expect(row, "drive-seconds", stop.driveSeconds(), right.driveSeconds());
        check.expect(row, "drive-metres", stop.driveMetres(), right.driveMetres());
        check.expect(row, "wait-seconds", stop.waitSeconds(), right.waitSeconds());
      }
      spare.of(row).ifPresent(s -> check.expect(row, "spare-seconds", stop.spareSeconds(), s));
    }
  }

  private void expect(Row row, String code, long given, long right) {
    if (given != right) {
      String what = code.replace('-', ' ');
      found.at(
          row,
          code,
          given,
          right,
          "At %s the plan gives %d %s; it is %d.".formatted(row.words(), given, what, right));
    }
  }
}
