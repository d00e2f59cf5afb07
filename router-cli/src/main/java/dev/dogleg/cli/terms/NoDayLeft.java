package dev.dogleg.cli.terms;

import dev.dogleg.cli.terms.DraftStop.Removal;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import java.util.List;
import java.util.stream.Collectors;

/** Names stops that rules and zones leave without any day of the run. */
final class NoDayLeft {
  private NoDayLeft() {}

  static void name(List<DraftStop> stops, Faults faults) {
    for (DraftStop stop : stops) {
      List<Removal> removals = stop.removals();
      if (stop.choices().isEmpty() && !removals.isEmpty()) {
        faults.add(
            new Fault(
                "rule-leaves-no-day",
                Severity.LOOK,
                removals.get(0).where(),
                stop.name(),
                "a day and crew of the run was expected that is allowed by "
                    + removals.stream()
                        .map(Removal::by)
                        .distinct()
                        .collect(Collectors.joining(", "))
                    + "; there is none",
                "change the rule or zone, a tag, or who works when"));
      }
    }
  }
}
