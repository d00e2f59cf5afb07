package dev.dogleg.audit;

import dev.dogleg.itinerary.PlannedStop.Kind;
import dev.dogleg.itinerary.WaterTerms;
import dev.dogleg.itinerary.WaterUse;
import java.util.List;

/** Whether water stops stand where they may, and the tanks last. */
final class WaterCheck {
  private final DayRows rows;
  private final FindingList found;
  private final WaterTerms water;

  private WaterCheck(DayRows rows, FindingList found, WaterTerms water) {
    this.rows = rows;
    this.found = found;
    this.water = water;
  }

  /** Checks a day; where it has no tanks, water stops are told by {@link StructureCheck}. */
  static void check(DayRows rows, FindingList found) {
    rows.request()
        .terms()
        .water()
        .ifPresent(
            water -> {
              WaterCheck check = new WaterCheck(rows, found, water);
              check.places();
              check.levels();
            });
  }

  private void places() {
    List<Row> stops = rows.of(Kind.WATER);
    List<Row> visits = rows.of(Kind.VISIT);
    Row before = null;
    for (int w = 0; w < stops.size(); w++) {
      Row row = stops.get(w);
      long made = visits.stream().filter(visit -> visit.index() < row.index()).count();
      if (made == 0) {
        found.at(row, "water-before-first", 1, 0, "A water stop stands before the first visit.");
      } else if (made == visits.size()) {
        found.at(row, "water-after-last", 1, 0, "A water stop stands after the last visit.");
      }
      if (before != null && !visitBetween(before, row)) {
        found.at(row, "water-twice", 2, 1, "Two water stops stand between the same two visits.");
      }
      if (w == water.most()) {
        String text = "The day has %d water stops and may have %d.";
        text = text.formatted(stops.size(), water.most());
        found.at(row, "water-too-often", stops.size(), water.most(), text);
      }
      before = row;
    }
  }

  private boolean visitBetween(Row one, Row other) {
    return rows.of(Kind.VISIT).stream()
        .anyMatch(visit -> one.index() < visit.index() && visit.index() < other.index());
  }

  private void levels() {
    long fresh = 0;
    long grey = 0;
    for (Row row : rows.all()) {
      if (row.is(Kind.WATER)) {
        fresh = 0;
        grey = 0;
      } else if (row.is(Kind.VISIT)) {
        WaterUse use = water.useOf(row.stop().visitId());
        fresh += use.freshMillilitres();
        grey += use.greyMillilitres();
        String full = "With %s %d ml of fresh water are used since the last filling of %d ml.";
        tank(row, "tank-fresh", fresh, water.tank().freshMillilitres(), full);
        String grown = "With %s %d ml of grey water are made since the last emptying of %d ml.";
        tank(row, "tank-grey", grey, water.tank().greyMillilitres(), grown);
      }
    }
  }

  private void tank(Row row, String code, long used, long tank, String text) {
    if (used > tank) {
      found.at(row, code, used, tank, text.formatted(row.words(), used, tank));
    }
  }
}
