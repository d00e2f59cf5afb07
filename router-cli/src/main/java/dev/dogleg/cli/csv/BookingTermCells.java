package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.MoneyGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.WhenGrammar;
import dev.dogleg.fault.Severity;
import dev.dogleg.model.BookingStatus;
import dev.dogleg.model.BookingTerms;
import dev.dogleg.model.Lock;
import dev.dogleg.model.Moves;
import dev.dogleg.model.When;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;

/** Reads the cells of a booking that matter where several days are planned together. */
final class BookingTermCells {
  private BookingTermCells() {}

  static BookingTerms read(Cells cells, Context context, BookingStatus status, boolean told) {
    Moves moves = cells.read(Column.MOVES, BookingTermCells::moves).orElse(Moves.NEVER);
    if (told && moves != Moves.NEVER) {
      cells.add(
          "told-and-moves",
          Severity.LOOK,
          Column.MOVES,
          "a told time stays: the booking is not moved",
          "empty the one or the other");
      moves = Moves.NEVER;
    }
    Optional<Long> value =
        context
            .card()
            .flatMap(
                card ->
                    cells.read(
                        Column.VALUE, text -> MoneyGrammar.read(text, card.business().currency())));
    if (value.isPresent() && status == BookingStatus.BOOKED) {
      cells.add(
          "value-not-used",
          Severity.NOTE,
          Column.VALUE,
          "an agreed booking has no price: it comes before any saving",
          "the value counts on the waiting list");
    }
    Optional<When> likes =
        cells.readOrLook(Column.LIKES, text -> WhenGrammar.read(text, context.usualHours()));
    Optional<String> groomer = CrewCells.groomer(cells, context);
    Optional<String> van = CrewCells.van(cells, context);
    Optional<Lock> lock = cells.read(Column.LOCK, BookingTermCells::lock);
    return new BookingTerms(
        moves, value.map(OptionalLong::of).orElse(OptionalLong.empty()), likes, groomer, van, lock);
  }

  private static Reading<Moves> moves(String text) {
    return switch (text.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ")) {
      case "never", "no" -> Reading.of(Moves.NEVER);
      case "ask", "may be asked" -> Reading.of(Moves.ASK);
      case "any time", "anytime", "any", "gladly", "yes" -> Reading.of(Moves.ANY_TIME);
      default ->
          Reading.none(Remark.aside("unknown-moves", "never, ask or any time was expected", ""));
    };
  }

  private static Reading<Lock> lock(String text) {
    return switch (text.toLowerCase(Locale.ROOT)) {
      case "day" -> Reading.of(Lock.DAY);
      case "time" -> Reading.of(Lock.TIME);
      case "place", "order" -> Reading.of(Lock.PLACE);
      default ->
          Reading.none(
              Remark.aside(
                  "unknown-lock",
                  "day, time or place was expected",
                  "what is done has the status done"));
    };
  }
}
