package dev.dogleg.cli.words;

import dev.dogleg.model.Tag;
import dev.dogleg.model.TagMatch;
import dev.dogleg.model.TagTerm;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads whom a rule means: {@code giant}, {@code large + double; matted}, {@code dog + not senior},
 * {@code giant = 2; large}, {@code neighbours-*}, {@code any}.
 */
public final class MatchGrammar {
  private static final Pattern POINTS = Pattern.compile("(.*?)\\s*=\\s*(\\d{1,4})");
  private static final Pattern PARTS = Pattern.compile("[;,]");
  private static final Pattern JOINED = Pattern.compile("[+&]");
  private static final Pattern NOT = Pattern.compile("(?i)(not\\s+|!).*");
  private static final Pattern NOT_FIRST = Pattern.compile("(?i)^(not\\s+|!)\\s*");

  private MatchGrammar() {}

  /**
   * Reads a cell.
   *
   * @param cell its text, not blank
   * @return the match; code {@code bad-match}
   */
  public static Reading<TagMatch> read(String cell) {
    List<TagTerm> terms = new ArrayList<>();
    for (String part : PARTS.split(cell, -1)) {
      if (part.isBlank()) {
        continue;
      }
      if (isAny(part)) {
        return Reading.of(TagMatch.ANY);
      }
      Optional<TagTerm> term = term(part.strip());
      if (term.isEmpty()) {
        return Reading.none(
            Remark.aside(
                "bad-match",
                "tags were expected: ; means or, + means and, not keeps out, = 2 gives load points",
                "for example large + double; matted"));
      }
      terms.add(term.get());
    }
    return terms.isEmpty() ? Reading.of(TagMatch.ANY) : Reading.of(new TagMatch(terms));
  }

  private static boolean isAny(String part) {
    return switch (part.strip().toLowerCase(Locale.ROOT)) {
      case "any", "all", "every", "everybody", "*" -> true;
      default -> false;
    };
  }

  private static Optional<TagTerm> term(String text) {
    Matcher weighted = POINTS.matcher(text);
    boolean points = weighted.matches();
    int number = points ? Integer.parseInt(weighted.group(2)) : 1;
    if (number < 1 || number > 1_000) {
      return Optional.empty();
    }
    Set<String> all = new TreeSet<>();
    Set<String> none = new TreeSet<>();
    for (String word : JOINED.split(points ? weighted.group(1) : text, -1)) {
      boolean not = NOT.matcher(word.strip()).matches();
      String name = TagGrammar.name(NOT_FIRST.matcher(word.strip()).replaceFirst(""));
      String plain = name.endsWith("*") ? name.substring(0, name.length() - 1) : name;
      if (!Tag.isName(plain)) {
        return Optional.empty();
      }
      (not ? none : all).add(name);
    }
    return Optional.of(new TagTerm(all, none, number));
  }
}
