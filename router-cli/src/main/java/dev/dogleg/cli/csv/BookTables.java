package dev.dogleg.cli.csv;

import dev.dogleg.cli.told.ToldBook;
import java.util.List;
import java.util.function.Function;

/**
 * The tables of a book; those it has not are empty.
 *
 * @param bookings who is to be groomed when
 * @param clients whose pets
 * @param pets what is known of each
 * @param places corrected addresses
 * @param days special days
 * @param rules rules by tag
 * @param errands the groomer's own stops
 * @param zones zones
 * @param areas areas of zones
 * @param told what owners were told
 */
record BookTables(
    Table bookings,
    Table clients,
    Table pets,
    Table places,
    Table days,
    Table rules,
    Table errands,
    Table zones,
    ZoneAreas areas,
    ToldBook told) {

  /** The further tables, as rows to be read. */
  WeekRows week(Function<Table, List<Cells>> cells) {
    return new WeekRows(
        cells.apply(days), cells.apply(rules), cells.apply(errands), cells.apply(zones), areas);
  }
}
