package dev.dogleg.cli.export;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * One row of plan.csv: one event of a day, as text that stands in the cells.
 *
 * <p>{@link PlanCsv} names the columns. Amounts that do not belong to an event are empty.
 *
 * @param date {@code YYYY-MM-DD}
 * @param groomer id of the groomer
 * @param van id of the van
 * @param stop number of the door in the day, from 1; empty where it is no visit
 * @param kind {@code leave}, {@code visit}, {@code break} or {@code home}
 * @param booking ids of the bookings joined by {@code ;}; for a break those of the door at which it
 *     is taken
 * @param client whose pets
 * @param pets names joined by {@code ;}
 * @param address one line
 * @param lat latitude in degrees
 * @param lon longitude in degrees
 * @param arrive {@code HH:MM:SS}
 * @param start {@code HH:MM:SS}
 * @param leave {@code HH:MM:SS}
 * @param driveMinutes two decimals
 * @param driveKm three decimals
 * @param waitMinutes two decimals
 * @param groomMinutes two decimals
 * @param spareMinutes two decimals
 * @param note free text
 */
public record PlanRow(
    String date,
    String groomer,
    String van,
    String stop,
    String kind,
    String booking,
    String client,
    String pets,
    String address,
    String lat,
    String lon,
    String arrive,
    String start,
    String leave,
    String driveMinutes,
    String driveKm,
    String waitMinutes,
    String groomMinutes,
    String spareMinutes,
    String note) {

  /** Checks that nothing is null. */
  public PlanRow {
    for (String cell :
        new String[] {
          date,
          groomer,
          van,
          stop,
          kind,
          booking,
          client,
          pets,
          address,
          lat,
          lon,
          arrive,
          start,
          leave,
          driveMinutes,
          driveKm,
          waitMinutes,
          groomMinutes,
          spareMinutes,
          note
        }) {
      Objects.requireNonNull(cell, "cell");
    }
  }

  /**
   * A row of its cells.
   *
   * @param cells twenty cells in the order of the columns
   * @return the row
   */
  static PlanRow of(List<String> cells) {
    return new PlanRow(
        cells.get(0),
        cells.get(1),
        cells.get(2),
        cells.get(3),
        cells.get(4),
        cells.get(5),
        cells.get(6),
        cells.get(7),
        cells.get(8),
        cells.get(9),
        cells.get(10),
        cells.get(11),
        cells.get(12),
        cells.get(13),
        cells.get(14),
        cells.get(15),
        cells.get(16),
        cells.get(17),
        cells.get(18),
        cells.get(19));
  }

  /**
   * The same row with another cell.
   *
   * @param column name of the column
   * @param cell what stands there from now on
   * @return the row
   */
  public PlanRow with(String column, String cell) {
    List<String> cells = new ArrayList<>(cells());
    cells.replaceAll(CsvText::unguarded);
    cells.set(PlanCsv.COLUMNS.indexOf(column), cell);
    return of(cells);
  }

  /** {@return the cells in the order of the columns, guarded against formulas where free text} */
  List<String> cells() {
    return List.of(
        date,
        CsvText.free(groomer),
        CsvText.free(van),
        stop,
        kind,
        CsvText.free(booking),
        CsvText.free(client),
        CsvText.free(pets),
        CsvText.free(address),
        lat,
        lon,
        arrive,
        start,
        leave,
        driveMinutes,
        driveKm,
        waitMinutes,
        groomMinutes,
        spareMinutes,
        CsvText.free(note));
  }
}
