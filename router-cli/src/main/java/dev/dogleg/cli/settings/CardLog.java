package dev.dogleg.cli.settings;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Faults;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.util.ArrayList;
import java.util.List;
import org.snakeyaml.engine.v2.nodes.Node;

/** Takes the faults of one card and what is in force, while it is read. */
final class CardLog {
  private final String file;
  private final Faults faults;
  private final List<InForce> inForce = new ArrayList<>();
  private boolean stopped;

  CardLog(String file, Faults faults) {
    this.file = file;
    this.faults = faults;
  }

  Where where(Node node, String path) {
    int row = node.getStartMark().map(mark -> mark.getLine() + 1).orElse(0);
    return new Where(file, row, path);
  }

  void add(Fault fault) {
    stopped |= fault.severity() == Severity.STOP;
    faults.add(fault);
  }

  void stop(String code, Where where, String seen, String expected, String hint) {
    add(new Fault(code, Severity.STOP, where, seen, expected, hint));
  }

  void inForce(String key, String value, Where where) {
    inForce(key, value, where.file() + ":" + where.row());
  }

  void inForce(String key, String value, String source) {
    inForce.add(new InForce(key, value, source));
  }

  List<InForce> inForce() {
    return inForce;
  }

  boolean stopped() {
    return stopped;
  }
}
