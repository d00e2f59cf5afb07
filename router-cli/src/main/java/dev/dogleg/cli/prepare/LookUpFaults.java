package dev.dogleg.cli.prepare;

import dev.dogleg.address.LookUp;
import dev.dogleg.address.Match;
import dev.dogleg.address.Outcome;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Faults of an address that the map does not know, with the line that mends it. */
final class LookUpFaults {
  /** File of a book folder in which addresses are corrected. */
  static final String CORRECTIONS = "places.csv";

  private static final int SHOWN = 3;

  private LookUpFaults() {}

  static Fault notFound(LookUp answer, String typed, DoorSource source, Severity severity) {
    boolean several = answer.outcome() == Outcome.AMBIGUOUS;
    List<Match> nearest = answer.matches().stream().limit(SHOWN).toList();
    StringBuilder hint = new StringBuilder();
    if (!nearest.isEmpty()) {
      hint.append("nearest: ")
          .append(nearest.stream().map(LookUpFaults::shown).collect(Collectors.joining("; ")))
          .append("; if ")
          .append(nearest.size() == 1 ? "that is it" : "the first is it")
          .append(", add to ")
          .append(CORRECTIONS)
          .append(": ")
          .append(line(typed, nearest.get(0)));
    } else {
      hint.append(source.pinAdvice())
          .append(", or add to ")
          .append(CORRECTIONS)
          .append(": ")
          .append(quoted(typed))
          .append(",LAT,LON");
    }
    return new Fault(
        several ? "address-ambiguous" : "address-not-found",
        severity,
        source.address(),
        typed,
        several
            ? "is more than one place: " + answer.reason()
            : "is not on the map: " + answer.reason(),
        hint.toString());
  }

  static Fault onlyStreet(Match match, String typed, Where cell) {
    return new Fault(
        "address-street-only",
        Severity.LOOK,
        cell,
        typed,
        "the street is on the map, the number is not; the door may be up to "
            + match.distanceEstimateMetres()
            + " m away",
        "to be exact add to " + CORRECTIONS + ": " + line(typed, match) + " with the true point");
  }

  static Fault otherSpelling(Match match, String typed, Where cell) {
    return new Fault(
        "address-read-as",
        Severity.LOOK,
        cell,
        typed,
        "was read as " + match.address(),
        "mend the spelling if that is right");
  }

  private static String shown(Match match) {
    return match.address() + " (" + match.point() + ")";
  }

  private static String line(String typed, Match match) {
    return quoted(typed)
        + String.format(Locale.ROOT, ",%.6f,%.6f", match.point().lat(), match.point().lon());
  }

  private static String quoted(String text) {
    return '"' + text.replace("\"", "\"\"") + '"';
  }
}
