package dev.dogleg.cli.export;

import dev.dogleg.address.Grade;
import dev.dogleg.address.LookUp;
import dev.dogleg.address.Match;
import dev.dogleg.address.Outcome;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The list of addresses to look at, each with its links and its line for the corrections file:
 * those that are nowhere, then those that may be in several places, then by how far off the door
 * may be.
 */
public final class InexactText {
  private static final int COLUMNS = 80;
  private static final int SHOWN = 3;
  private static final String INDENT = "    ";

  private InexactText() {}

  /**
   * The list.
   *
   * @param found addresses that are not exact, in the book's order
   * @param asked how many addresses were looked up
   * @return lines, worst first; empty where all are exact
   */
  public static List<String> of(List<InexactAddress> found, int asked) {
    List<String> lines = new ArrayList<>();
    if (found.isEmpty()) {
      return lines;
    }
    lines.add("Addresses that are not exact, worst first (" + found.size() + " of " + asked + "):");
    found.stream()
        .sorted(
            Comparator.comparingInt((InexactAddress one) -> kind(one.answer()))
                .thenComparing(one -> -metres(one.answer())))
        .forEach(one -> add(lines, one));
    lines.add("  geo: opens in a map program; u is how far off the door may be, in metres.");
    lines.add("  To mend one, paste its quoted line, with the true point, into " + PlacesLine.FILE);
    return lines;
  }

  private static void add(List<String> lines, InexactAddress one) {
    LookUp answer = one.answer();
    String head = what(answer) + ": " + one.who() + ", \"" + one.typed() + "\"";
    List<String> wrapped = Wrap.lines(head + " (" + one.where() + ")", COLUMNS - INDENT.length());
    lines.add("  " + wrapped.get(0));
    wrapped.stream().skip(1).forEach(line -> lines.add(INDENT + line));
    Wrap.lines(answer.reason(), COLUMNS - INDENT.length())
        .forEach(line -> lines.add(INDENT + line));
    for (Match match : answer.matches().subList(0, Math.min(SHOWN, answer.matches().size()))) {
      lines.add(INDENT + GeoLink.of(match) + "  " + match.address());
    }
    if (answer.matches().size() > SHOWN) {
      lines.add(INDENT + "... and " + (answer.matches().size() - SHOWN) + " more: dogleg find");
    }
    // Not wrapped, so that it can be pasted.
    lines.add(INDENT + line(one));
  }

  private static String line(InexactAddress one) {
    List<Match> matches = one.answer().matches();
    return matches.isEmpty()
        ? PlacesLine.blank(one.typed())
        : PlacesLine.of(one.typed(), matches.get(0).point());
  }

  private static String what(LookUp answer) {
    return switch (answer.outcome()) {
      case NONE -> "not found";
      case AMBIGUOUS -> "several places";
      case FOUND ->
          (answer.grade() == Grade.STREET ? "street only" : "interpolated")
              + ", within about "
              + metres(answer)
              + " m";
    };
  }

  private static int kind(LookUp answer) {
    return answer.outcome() == Outcome.NONE ? 0 : answer.outcome() == Outcome.AMBIGUOUS ? 1 : 2;
  }

  /** How far the door may be: the estimate, or how far apart the places are. */
  private static int metres(LookUp answer) {
    if (answer.outcome() == Outcome.FOUND) {
      return answer.matches().get(0).distanceEstimateMetres();
    }
    double widest = 0;
    for (Match a : answer.matches()) {
      for (Match b : answer.matches()) {
        widest = Math.max(widest, a.point().metresTo(b.point()));
      }
    }
    return (int) Math.round(widest);
  }
}
