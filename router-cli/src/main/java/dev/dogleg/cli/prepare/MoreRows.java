package dev.dogleg.cli.prepare;

import dev.dogleg.fault.Where;
import java.util.Optional;
import java.util.function.Function;

/**
 * Where things of a book stand to which somebody joined clients that stand elsewhere.
 *
 * @param book where those of the book stand
 * @param client where a joined client stands; empty for one of the book
 * @param booking where a joined booking stands; empty for one of the book
 */
public record MoreRows(
    RowFinder book,
    Function<String, Optional<Where>> client,
    Function<String, Optional<Where>> booking)
    implements RowFinder {

  @Override
  public Where client(String clientId) {
    return client.apply(clientId).orElseGet(() -> book.client(clientId));
  }

  @Override
  public Where booking(String bookingId) {
    return booking.apply(bookingId).orElseGet(() -> book.booking(bookingId));
  }

  @Override
  public Where home(String groomerId) {
    return book.home(groomerId);
  }

  @Override
  public Where rule(String name) {
    return book.rule(name);
  }

  @Override
  public Where zone(String name) {
    return book.zone(name);
  }

  @Override
  public Where errand(String errandId) {
    return book.errand(errandId);
  }

  @Override
  public Where waterPlaces() {
    return book.waterPlaces();
  }
}
