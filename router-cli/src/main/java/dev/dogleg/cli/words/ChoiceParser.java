package dev.dogleg.cli.words;

import dev.dogleg.model.WallSpan;
import dev.dogleg.model.WhenChoice;
import java.time.DayOfWeek;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Parses one choice of a {@code when}: weekdays, then items that all hold. By recursive descent
 * over tokens; the grammar stands in {@code docs/FORMATS.md}.
 */
final class ChoiceParser {
  private static final int HALF_HOUR = 1_800;
  private static final int NOON = 43_200;
  private static final int EVENING = 61_200;

  private final TokenStream tokens;
  private final WallSpan usual;
  private final List<Remark> remarks;
  private WallSpan arrive = WallSpan.ALWAYS;
  private int doneBy = WallSpan.OPEN;
  private VanLimits van = VanLimits.NONE;
  private boolean first;

  ChoiceParser(TokenStream tokens, WallSpan usual, List<Remark> remarks) {
    this.tokens = tokens;
    this.usual = usual;
    this.remarks = remarks;
  }

  WhenChoice parse() throws BadWhen {
    Set<DayOfWeek> days = days();
    while (!atEnd()) {
      if (!tokens.takeAny(",", "and", "&", "+")) {
        item();
      } else if (atEnd()) {
        throw bad("something after the last comma was expected", "");
      }
    }
    return choice(days);
  }

  private boolean atEnd() {
    return tokens.ended() || tokens.peek().equals(";") || tokens.peek().equals("or");
  }

  private Set<DayOfWeek> days() throws BadWhen {
    tokens.takeAny("on", "any", "every");
    boolean not = Weekdays.days(tokens.peek(1)).isPresent() && tokens.take("not");
    Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
    while (true) {
      Optional<Set<DayOfWeek>> named = Weekdays.days(tokens.peek());
      if (named.isEmpty()) {
        break;
      }
      String word = tokens.next();
      Optional<DayOfWeek> from = Weekdays.day(word);
      Optional<DayOfWeek> to = Weekdays.day(tokens.peek(1));
      if (from.isPresent() && to.isPresent() && tokens.takeAny("-", "to")) {
        tokens.next();
        days.addAll(Weekdays.span(from.get(), to.get()));
      } else {
        days.addAll(named.get());
      }
      if (Weekdays.days(tokens.peek(1)).isPresent()) {
        tokens.takeAny(",", "/", "or", "and", "&", "+");
      }
    }
    if (not) {
      days = EnumSet.complementOf(EnumSet.copyOf(days));
      if (days.isEmpty()) {
        throw new BadWhen("contradictory-limits", "at least one weekday must be left", "");
      }
    }
    return days;
  }

  private void item() throws BadWhen {
    if (tokens.takeAny("day", "time", "anytime", "flexible", "whenever", "any")) {
      return;
    }
    if (tokens.take("first")) {
      tokens.takeAny("stop", "door", "visit", "thing");
      first = true;
    } else if (tokens.takeAny("done", "finished", "finish", "ready", "out")) {
      tokens.takeAny("by", "before");
      doneBy = Math.min(doneBy, single());
    } else if (tokens.take("van")) {
      van();
    } else {
      tokens.take("arrive");
      tokens.take("within");
      arrive(arrival());
    }
  }

  private void van() throws BadWhen {
    boolean only = tokens.take("only");
    boolean not = tokens.take("not");
    WallSpan span = span().orElse(null);
    if (span == null) {
      throw bad("times after \"van\" were expected", "for example van 9-16 only, van not 12-14");
    }
    only |= tokens.take("only");
    if (only && not) {
      throw bad("\"only\" or \"not\" was expected, not both", "");
    }
    van = not ? van.without(span) : van.only(span);
    if (van.never()) {
      throw new BadWhen(
          "contradictory-limits", "these limits leave no time for the van to stand there", "");
    }
  }

  private void arrive(WallSpan span) throws BadWhen {
    int from = Math.max(arrive.fromSeconds(), span.fromSeconds());
    int to = Math.min(arrive.toSeconds(), span.toSeconds());
    if (from > to) {
      throw new BadWhen(
          "contradictory-limits",
          "limits that can hold together were expected: " + arrive + " and " + span + " cannot",
          "use ; where one or the other is meant");
    }
    arrive = new WallSpan(from, to);
  }

  private WallSpan arrival() throws BadWhen {
    Optional<WallSpan> span = span();
    if (span.isPresent()) {
      return span.get();
    }
    if (tokens.takeAny("am", "morning", "mornings")) {
      return new WallSpan(0, NOON);
    }
    if (tokens.takeAny("pm", "afternoon", "afternoons")) {
      return new WallSpan(NOON, WallSpan.OPEN);
    }
    if (tokens.takeAny("evening", "evenings")) {
      remarks.add(Remark.guess("from 17:00", "write after 17:00"));
      return new WallSpan(EVENING, WallSpan.OPEN);
    }
    if (tokens.takeAny("around", "about", "approx", "circa", "ca", "~")) {
      int time = single();
      return new WallSpan(
          Math.max(0, time - HALF_HOUR), Math.min(WallSpan.MIDNIGHT, time + HALF_HOUR));
    }
    if (tokens.take("by")) {
      throw bad(
          "\"before\" or \"done by\" was expected",
          "before 11: at the door by 11; done by 11: groomed by 11");
    }
    if (tokens.peek().equals("last")) {
      throw bad("\"last\" cannot be asked for here", "write after and a time");
    }
    tokens.take("at");
    if (ClockTime.of(tokens.peek()).isPresent()) {
      int time = single();
      String text = WallSpan.text(time);
      remarks.add(
          Remark.guess("exactly " + text, "around " + text + " gives half an hour either way"));
      return new WallSpan(time, time);
    }
    throw bad(
        "a limit like 9-12, after 15:00, before 11, around 10, AM, first, done by 15:00 or van"
            + " not 12-14 was expected",
        "at \"" + tokens.peek() + "\"");
  }

  /** A span of times, or one end of it; empty where neither is ahead. */
  private Optional<WallSpan> span() throws BadWhen {
    if (tokens.takeAny("before", "until", "till")
        || tokens.take("not", "after")
        || tokens.take("no", "later", "than")
        || tokens.take("not", "later", "than")) {
      return Optional.of(new WallSpan(0, single()));
    }
    boolean between = tokens.take("between");
    boolean open =
        !between
            && (tokens.takeAny("after", "from", "since")
                || tokens.take("not", "before")
                || tokens.take("no", "earlier", "than")
                || tokens.take("not", "earlier", "than"));
    boolean two = ClockTime.of(tokens.peek(2)).isPresent();
    boolean joined =
        two
            && switch (tokens.peek(1)) {
              case "-", "to", "until", "till" -> true;
              case "and" -> between;
              default -> false;
            };
    if (joined) {
      ClockTime from = tokens.time().orElseThrow(() -> bad("a time was expected", ""));
      tokens.next();
      ClockTime to = tokens.time().orElseThrow(() -> bad("a time was expected", ""));
      HalfOfDay<WallSpan> span =
          HalfOfDay.span(from, to, usual)
              .orElseThrow(
                  () ->
                      new BadWhen(
                          "span-backwards", "a span that ends after it starts was expected", ""));
      said(span.guess(), span.value()::toString);
      return Optional.of(span.value());
    }
    if (open) {
      return Optional.of(new WallSpan(single(), WallSpan.OPEN));
    }
    if (between) {
      throw bad("two times were expected", "between 9 and 12");
    }
    return Optional.empty();
  }

  private int single() throws BadWhen {
    Optional<ClockTime> time = tokens.time();
    if (time.isEmpty()) {
      throw bad("a time like 9, 9:30, 15:00 or 3pm was expected", "at \"" + tokens.peek() + "\"");
    }
    HalfOfDay<Integer> decided = HalfOfDay.time(time.get(), usual);
    said(decided.guess(), () -> WallSpan.text(decided.value()));
    return decided.value();
  }

  private void said(boolean guess, Supplier<String> readAs) {
    if (guess) {
      remarks.add(Remark.guess(readAs.get(), "write it with am, pm or in 24 hours"));
    }
  }

  private WhenChoice choice(Set<DayOfWeek> days) throws BadWhen {
    try {
      return new WhenChoice(days, arrive, doneBy, van.spans(), first);
    } catch (IllegalArgumentException e) {
      throw new BadWhen(
          "contradictory-limits",
          "limits that can hold together were expected: " + e.getMessage(),
          "");
    }
  }

  private static BadWhen bad(String expected, String hint) {
    return new BadWhen("bad-when", expected, hint);
  }
}
