package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.DateGrammar;
import dev.dogleg.cli.words.MatchGrammar;
import dev.dogleg.cli.words.MinutesGrammar;
import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.cli.words.RuleGrammar;
import dev.dogleg.cli.words.Slug;
import dev.dogleg.cli.words.WhenGrammar;
import dev.dogleg.model.DateSpan;
import dev.dogleg.model.RuleMinutes;
import dev.dogleg.model.RuleShape;
import dev.dogleg.model.Strength;
import dev.dogleg.model.TagMatch;
import dev.dogleg.model.TagRule;
import dev.dogleg.model.When;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Makes rules of the rows of {@code rules.csv}. */
final class RuleRows {
  private static final int MOST_NUMBER = 1_000;
  private static final int MOST_MINUTES = 720;

  private final Context context;
  private final Sources sources;

  private RuleRows(Context context, Sources sources) {
    this.context = context;
    this.sources = sources;
  }

  static List<TagRule> read(List<Cells> rows, Context context, Sources sources) {
    RuleRows reader = new RuleRows(context, sources);
    List<TagRule> rules = new ArrayList<>();
    Set<String> names = new HashSet<>();
    for (Cells cells : rows) {
      String name = cells.text(Column.RULE);
      if (name.isEmpty()) {
        cells.aside("missing-cell", Column.RULE, "a name for the rule was expected", "");
      } else if (!names.add(Slug.fold(name))) {
        cells.aside("duplicate-row", Column.RULE, "is the name of two rules", "rename one of them");
      } else {
        reader.rule(name, cells).ifPresent(rules::add);
      }
    }
    return rules;
  }

  private Optional<TagRule> rule(String name, Cells cells) {
    if (!cells.has(Column.SHAPE)) {
      cells.aside(
          "missing-cell", Column.SHAPE, "what the rule says was expected", "for example not after");
      return Optional.empty();
    }
    Optional<RuleShape> shape = cells.read(Column.SHAPE, RuleGrammar::shape);
    Optional<TagMatch> a = match(cells, Column.A);
    Optional<TagMatch> b = match(cells, Column.B);
    Optional<TagMatch> on = match(cells, Column.ON);
    Optional<Strength> strength =
        cells.has(Column.STRENGTH)
            ? cells.read(Column.STRENGTH, RuleGrammar::strength)
            : Optional.of(Strength.MUST);
    Optional<DateSpan> until =
        cells.read(Column.UNTIL, text -> DateGrammar.read(text, context.dateOrder()));
    if (cells.bad() || shape.isEmpty() || strength.isEmpty()) {
      return Optional.empty();
    }
    demands(shape.get(), strength.get(), cells);
    Optional<When> when = hours(shape.get(), cells);
    int number = number(shape.get(), cells);
    RuleMinutes minutes = minutes(shape.get(), cells);
    if (cells.bad()) {
      return Optional.empty();
    }
    sources.rule(name, cells.row());
    return Optional.of(
        new TagRule(
            name,
            shape.get(),
            a.orElse(TagMatch.ANY),
            b.orElse(TagMatch.ANY),
            on.orElse(TagMatch.ANY),
            when,
            number,
            minutes,
            strength.get(),
            until.map(DateSpan::to),
            cells.text(Column.LINE)));
  }

  private static Optional<TagMatch> match(Cells cells, Column column) {
    return cells.read(column, MatchGrammar::read);
  }

  /** A shape with two sides needs both; minutes cannot rather hold. */
  private static void demands(RuleShape shape, Strength strength, Cells cells) {
    if (!cells.has(Column.A)) {
      cells.aside("missing-cell", Column.A, "tags of those whom it concerns were expected", "any");
    }
    if (shape.twoSided() && !cells.has(Column.B)) {
      cells.aside(
          "missing-cell",
          Column.B,
          "the other side of \"" + shape.words() + "\" was expected",
          "tags of stops, of days, or of person, van and helper");
    }
    if (!shape.twoSided() && cells.has(Column.B)) {
      cells.aside(
          "cell-not-used", Column.B, "a rule \"" + shape.words() + "\" has one side", "empty it");
    }
    if (shape.mustOnly() && !strength.must()) {
      cells.aside(
          "bad-strength",
          Column.STRENGTH,
          "minutes are planned or not: must was expected",
          "leave it empty");
    }
  }

  private Optional<When> hours(RuleShape shape, Cells cells) {
    boolean clock =
        shape == RuleShape.ARRIVE || shape == RuleShape.DONE_BY || shape == RuleShape.VAN;
    if (!clock) {
      unused(cells, Column.WHEN, shape);
      return Optional.empty();
    }
    if (!cells.has(Column.WHEN)) {
      cells.aside("missing-cell", Column.WHEN, "hours were expected", "for example before 11");
      return Optional.empty();
    }
    Optional<When> when =
        cells.read(Column.WHEN, text -> WhenGrammar.read(text, context.usualHours()));
    boolean plain =
        when.stream()
            .flatMap(found -> found.choices().stream())
            .allMatch(
                choice ->
                    choice.days().isEmpty()
                        && !choice.first()
                        && choice.vanWithin().equals(List.of(dev.dogleg.model.WallSpan.ALWAYS))
                        && choice.doneByWallSeconds() == dev.dogleg.model.WallSpan.OPEN);
    boolean end =
        shape != RuleShape.DONE_BY
            || when.stream()
                .flatMap(found -> found.choices().stream())
                .allMatch(
                    choice -> choice.arriveWithin().toSeconds() != dev.dogleg.model.WallSpan.OPEN);
    boolean one = shape != RuleShape.DONE_BY || when.map(w -> w.choices().size() == 1).orElse(true);
    if (!plain || !end || !one) {
      cells.aside(
          "bad-rule-hours",
          Column.WHEN,
          shape == RuleShape.DONE_BY
              ? "one time like before 15:00 was expected"
              : "hours like 9-12; 14-16 were expected",
          "weekdays belong into the column on");
      return Optional.empty();
    }
    return when;
  }

  private static int number(RuleShape shape, Cells cells) {
    if (shape != RuleShape.AT_MOST) {
      unused(cells, Column.NUMBER, shape);
      return 0;
    }
    if (!cells.has(Column.NUMBER)) {
      cells.aside("missing-cell", Column.NUMBER, "how many at most was expected", "");
      return 0;
    }
    return cells.read(Column.NUMBER, RuleRows::whole).orElse(0);
  }

  private static Reading<Integer> whole(String text) {
    return text.matches("\\d{1,4}") && Integer.parseInt(text) <= MOST_NUMBER
        ? Reading.of(Integer.parseInt(text))
        : Reading.none(
            Remark.aside(
                "bad-rule-number",
                "a whole number from 0 to " + MOST_NUMBER + " was expected",
                ""));
  }

  private static RuleMinutes minutes(RuleShape shape, Cells cells) {
    if (!shape.mustOnly()) {
      unused(cells, Column.MINUTES, shape);
      unused(cells, Column.AT_PLACE, shape);
      return RuleMinutes.NONE;
    }
    if (!cells.has(Column.MINUTES)) {
      cells.aside("missing-cell", Column.MINUTES, "minutes were expected", "");
      return RuleMinutes.NONE;
    }
    if (shape == RuleShape.CHANGEOVER) {
      unused(cells, Column.AT_PLACE, shape);
      int minutes =
          cells
              .read(
                  Column.MINUTES,
                  text -> MinutesGrammar.read(text.replaceFirst("^\\+", ""), 0, MOST_MINUTES))
              .orElse(0);
      return new RuleMinutes(1_000, 60 * minutes, 1, RuleMinutes.NO_END);
    }
    RuleMinutes read = cells.read(Column.MINUTES, RuleGrammar::minutes).orElse(RuleMinutes.NONE);
    return cells.read(Column.AT_PLACE, text -> RuleGrammar.places(text, read)).orElse(read);
  }

  private static void unused(Cells cells, Column column, RuleShape shape) {
    if (cells.has(column)) {
      cells.aside(
          "cell-not-used",
          column,
          "a rule \"" + shape.words() + "\" makes nothing of it",
          "empty it, or choose another shape");
    }
  }
}
