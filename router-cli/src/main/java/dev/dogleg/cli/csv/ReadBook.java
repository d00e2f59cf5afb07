package dev.dogleg.cli.csv;

import dev.dogleg.cli.settings.Card;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Where;
import dev.dogleg.groom.GroomTables;
import dev.dogleg.model.Book;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/**
 * A book as read, with everything that is to be said about it.
 *
 * @param card the card, or empty where a fault stops the run
 * @param book what could be read, consistent; empty where a fault stops the run. Rows set aside are
 *     not in it
 * @param tables groom tables in force: the starter's with the book's own rows laid over them
 * @param corrections corrected addresses (already applied to the book's places)
 * @param sources where each record came from
 * @param faults all faults, by file in the order read, then by row
 */
public record ReadBook(
    Optional<Card> card,
    Optional<Book> book,
    GroomTables tables,
    Corrections corrections,
    Sources sources,
    Faults faults) {

  /** Checks that nothing is null. */
  public ReadBook {
    Objects.requireNonNull(card, "card");
    Objects.requireNonNull(book, "book");
    Objects.requireNonNull(tables, "tables");
    Objects.requireNonNull(corrections, "corrections");
    Objects.requireNonNull(sources, "sources");
    Objects.requireNonNull(faults, "faults");
  }

  /**
   * The row a fault points at, as it stands in its file, a person's own columns included.
   *
   * @param where the place of a fault
   * @return cells by the file's column names in its order; empty where the row could not be read
   */
  public Map<String, String> cells(Where where) {
    return sources.cells(where);
  }
}
