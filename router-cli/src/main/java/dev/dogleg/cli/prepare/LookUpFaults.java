package dev.dogleg.cli.prepare;

import dev.dogleg.address.LookUp;
import dev.dogleg.address.Match;
import dev.dogleg.address.Outcome;
import dev.dogleg.cli.export.PlacesLine;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.util.List;
import java.util.stream.Collectors;

/** Faults of an address that the map does not know, with the line that mends it. */
final class LookUpFaults {
  private static final int SHOWN = 3;

  private LookUpFaults() {}

  static Fault notFound(LookUp answer, String typed, DoorSource source, Severity severity) {
    boolean several = answer.outcome() == Outcome.AMBIGUOUS;
    List<Match> nearest = answer.matches().stream().limit(SHOWN).toList();
    StringBuilder hint = new StringBuilder();
    if (!nearest.isEmpty()) {
      hint.append(several ? "candidates: " : "nearest: ")
          .append(nearest.stream().map(LookUpFaults::shown).collect(Collectors.joining("; ")))
          .append("; if ")
          .append(nearest.size() == 1 ? "that is it" : "the first is it")
          .append(", add to ")
          .append(PlacesLine.FILE)
          .append(": ")
          .append(PlacesLine.of(typed, nearest.get(0).point()));
    } else {
      hint.append(source.pinAdvice())
          .append(", or add to ")
          .append(PlacesLine.FILE)
          .append(": ")
          .append(PlacesLine.blank(typed));
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
        "to be exact add to "
            + PlacesLine.FILE
            + ": "
            + PlacesLine.of(typed, match.point())
            + " with the true point");
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
}
