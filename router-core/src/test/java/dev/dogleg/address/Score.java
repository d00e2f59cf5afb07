package dev.dogleg.address;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Counts what came of many look-ups of addresses that the map bears. */
final class Score {
  static final double RIGHT_METRES = 25;
  static final double FAR_METRES = 100;

  int asked;
  int exact;
  int ambiguous;
  int needlessly;
  int wrong;
  int exactFar;
  int silent;
  final List<String> failures = new ArrayList<>();

  /**
   * Judges one answer. Right is: found within 25 m of an object that bears the address; or said to
   * be ambiguous, with a candidate within 25 m of the very object asked for.
   */
  void count(OwnAddresses own, OwnAddresses.Own asked, String typed, LookUp answer) {
    this.asked++;
    List<OwnAddresses.Own> bearing = own.bearing(asked);
    boolean apart =
        bearing.stream()
            .anyMatch(a -> bearing.stream().anyMatch(b -> a.metresTo(b) > Doors.APART_METRES + 1));
    boolean alikeApart =
        bearing.stream()
            .filter(asked::alikeInAllTags)
            .anyMatch(
                a ->
                    bearing.stream()
                        .filter(asked::alikeInAllTags)
                        .anyMatch(b -> a.metresTo(b) > Doors.APART_METRES + 1));
    boolean right = false;
    if (answer.outcome() == Outcome.FOUND) {
      Match match = answer.matches().get(0);
      double metres =
          bearing.stream().mapToDouble(o -> o.metresTo(match.point())).min().orElse(1e9);
      right = metres <= RIGHT_METRES;
      exact += right ? 1 : 0;
      if (match.grade() == Grade.EXACT && metres > FAR_METRES) {
        exactFar++;
        failures.add("EXACT " + Math.round(metres) + " m OFF: " + said(asked, typed, answer));
      }
      if (match.grade() == Grade.EXACT && alikeApart) {
        silent++;
        failures.add("SILENT: " + said(asked, typed, answer));
      }
    } else if (answer.outcome() == Outcome.AMBIGUOUS) {
      right = answer.matches().stream().anyMatch(m -> asked.metresTo(m.point()) <= RIGHT_METRES);
      ambiguous += right ? 1 : 0;
      needlessly += right && !apart ? 1 : 0;
    }
    if (!right) {
      wrong++;
      failures.add("WRONG: " + said(asked, typed, answer));
    }
  }

  private static String said(OwnAddresses.Own asked, String typed, LookUp answer) {
    return "\""
        + typed.replace("\n", "\\n")
        + "\" for "
        + asked
        + " -> "
        + answer.outcome()
        + " "
        + answer.matches().stream()
            .limit(3)
            .map(m -> m.grade() + " " + m.address() + " " + m.source() + " " + m.point())
            .toList()
        + " "
        + answer.reason();
  }

  double rightPercent() {
    return 100.0 * (exact + ambiguous) / asked;
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%.1f %% of %d (found %d, said ambiguous %d, of these %d where the tags name one place;"
            + " wrong %d; exact over 100 m off %d; silent picks %d)",
        rightPercent(),
        asked,
        exact,
        ambiguous,
        needlessly,
        wrong,
        exactFar,
        silent);
  }
}
