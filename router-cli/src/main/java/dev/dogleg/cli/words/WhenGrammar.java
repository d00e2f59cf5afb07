package dev.dogleg.cli.words;

import dev.dogleg.model.WallSpan;
import dev.dogleg.model.When;
import dev.dogleg.model.WhenChoice;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Reads a {@code when} cell: {@code Tue 9-12; Thu after 15:00}, {@code AM}, {@code first}, {@code
 * around 10}, {@code before 11, done by 15:00}, {@code van not 12-14}.
 *
 * <p>{@code ;} means or; inside a choice everything holds. A bare limit is hard and means arrive
 * within; done by and van are said by name. No text makes it throw.
 */
public final class WhenGrammar {
  private static final int MOST_TOKENS = 400;

  private WhenGrammar() {}

  /**
   * Reads a cell.
   *
   * @param cell its text, not blank
   * @param usual hours usually worked; they decide what {@code 2-4} means
   * @return the limits; codes {@code bad-when}, {@code contradictory-limits}, {@code mixed-limits},
   *     {@code span-backwards}, {@code time-became-date}, {@code time-became-number}, {@code
   *     date-1900}, {@code date-became-number}, {@code guess}
   */
  public static Reading<When> read(String cell, WallSpan usual) {
    Optional<Remark> damage = SpreadsheetDamage.ofTimes(cell);
    if (damage.isPresent()) {
      return Reading.none(damage.get());
    }
    Optional<List<String>> cut = WhenToken.cut(cell);
    if (cut.isEmpty() || cut.get().size() > MOST_TOKENS) {
      return Reading.none(
          Remark.aside(
              "bad-when",
              "weekdays and times like Tue 9-12; Thu after 15:00 were expected",
              "other remarks belong into the column note"));
    }
    TokenStream tokens = new TokenStream(cut.get());
    List<Remark> remarks = new ArrayList<>();
    List<WhenChoice> choices = new ArrayList<>();
    try {
      while (!tokens.ended()) {
        if (!tokens.takeAny(";", "or")) {
          choices.add(new ChoiceParser(tokens, usual, remarks).parse());
        }
      }
    } catch (BadWhen e) {
      return Reading.none(e.remark);
    }
    if (choices.isEmpty()) {
      return Reading.of(When.ANY);
    }
    try {
      return new Reading<>(Optional.of(new When(choices)), remarks);
    } catch (IllegalArgumentException e) {
      return Reading.none(
          Remark.aside(
              "mixed-limits",
              "choices of one day must agree on done by, van and first",
              "join limits that hold together with a comma; ; means or"));
    }
  }
}
