package dev.dogleg.cli.command;

import dev.dogleg.cli.console.ExitCode;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import java.util.List;

/** Chooses the exit code of a run that could go on. */
final class Ending {
  private Ending() {}

  /**
   * Whether faults stop a run.
   *
   * @param faults all faults so far
   * @param strict whether anything that needs a look stops it too
   * @return true where nothing may be written
   */
  static boolean stops(List<Fault> faults, boolean strict) {
    Severity least = strict ? Severity.LOOK : Severity.STOP;
    return faults.stream().anyMatch(fault -> fault.severity().compareTo(least) <= 0);
  }

  /**
   * The exit code of a run that was not stopped.
   *
   * @param faults all its faults
   * @param more whether something else needs a look, such as a booked visit without room
   * @return done, or done with something to look at
   */
  static ExitCode of(List<Fault> faults, boolean more) {
    return more || stops(faults, true) ? ExitCode.LOOK : ExitCode.DONE;
  }
}
