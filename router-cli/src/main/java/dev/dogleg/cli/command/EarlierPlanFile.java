package dev.dogleg.cli.command;

import dev.dogleg.cli.export.PlanReader;
import dev.dogleg.cli.file.TextFile;
import dev.dogleg.cli.prepare.EarlierPlan;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import java.nio.file.Files;
import java.nio.file.Path;

/** The plan that lies already where a run will write: ties and prices keep to it. */
final class EarlierPlanFile {
  private final Path file;
  private final boolean fresh;
  private final Faults faults;

  EarlierPlanFile(Path folder, boolean fresh, Faults faults) {
    this.file = folder.resolve("plan.csv");
    this.fresh = fresh;
    this.faults = faults;
  }

  /** The earlier plan; none where there is none or it shall be passed over. */
  EarlierPlan read() {
    if (fresh || !Files.isRegularFile(file)) {
      return EarlierPlan.NONE;
    }
    Faults own = new Faults();
    EarlierPlan plan =
        TextFile.read(file, file.toString(), own)
            .map(text -> EarlierPlan.of(PlanReader.read(text.text(), file.toString(), own)))
            .orElse(EarlierPlan.NONE);
    // A plan that cannot be read is no reason not to plan: it is said, and nothing is kept.
    for (Fault fault : own.all()) {
      faults.add(fault.severity().compareTo(Severity.LOOK) < 0 ? fault.as(Severity.LOOK) : fault);
    }
    return plan;
  }
}
