package dev.dogleg.cli.csv;

import dev.dogleg.model.DayEntry;
import dev.dogleg.model.WeekBook;
import dev.dogleg.model.Zone;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The further tables of a book: days, rules, errands, zones.
 *
 * @param days rows of {@code days.csv}
 * @param rules rows of {@code rules.csv}
 * @param errands rows of {@code errands.csv}
 * @param zones rows of {@code zones.csv}
 * @param areas features of {@code zones.geojson}
 */
record WeekRows(
    List<Cells> days, List<Cells> rules, List<Cells> errands, List<Cells> zones, ZoneAreas areas) {

  /** Special days; the bookings are checked against them. */
  List<DayEntry> special(Context context) {
    return DayRows.read(days, context);
  }

  /** What the tables say; the faults stay with their rows. */
  WeekBook read(List<DayEntry> special, Context context, Set<String> bookingIds, Sources sources) {
    List<Zone> all = new ArrayList<>(ZoneRows.read(zones, areas.areas(), context, sources));
    all.addAll(areas.zones());
    return new WeekBook(
        special,
        RuleRows.read(rules, context, sources),
        all,
        ErrandRows.read(errands, context, bookingIds, sources));
  }

  /** All rows, for collecting their faults. */
  List<List<Cells>> tables() {
    return List.of(days, rules, zones, errands);
  }
}
