package dev.dogleg.cli.command;

import dev.dogleg.cli.export.Wrap;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import java.util.ArrayList;
import java.util.List;

/** All faults of a run, gravest first, each with its place, value, expectation and hint. */
final class FaultReport {
  private static final int COLUMNS = 80;
  private static final int MOST_SHOWN = 40;

  private FaultReport() {}

  /**
   * The report.
   *
   * @param faults faults in the order found
   * @param notes whether faults that change nothing are told too
   * @return lines, empty where there is nothing to say
   */
  static String of(List<Fault> faults, boolean notes) {
    List<String> lines = new ArrayList<>();
    part(lines, faults, Severity.STOP, "Stops the run:");
    part(lines, faults, Severity.ASIDE, "Set aside:");
    part(lines, faults, Severity.LOOK, "Needs a look:");
    if (notes) {
      part(lines, faults, Severity.NOTE, "Noted:");
    }
    return String.join("\n", lines);
  }

  private static void part(
      List<String> lines, List<Fault> faults, Severity severity, String heading) {
    List<Fault> some =
        faults.stream().filter(fault -> fault.severity() == severity).distinct().toList();
    if (some.isEmpty()) {
      return;
    }
    lines.add(heading);
    for (Fault fault : some.subList(0, Math.min(MOST_SHOWN, some.size()))) {
      List<String> wrapped = Wrap.lines(fault.toString(), COLUMNS - 4);
      lines.add("  " + wrapped.get(0));
      wrapped.stream().skip(1).forEach(line -> lines.add("    " + line));
    }
    if (some.size() > MOST_SHOWN) {
      lines.add("  ... and " + (some.size() - MOST_SHOWN) + " more");
    }
  }
}
