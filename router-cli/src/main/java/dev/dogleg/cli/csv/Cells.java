package dev.dogleg.cli.csv;

import dev.dogleg.cli.words.Reading;
import dev.dogleg.cli.words.Remark;
import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The cells of one row while a record is made of it, with the faults found by then. */
final class Cells {
  private final Row row;
  private final List<Fault> faults = new ArrayList<>();

  Cells(Row row) {
    this.row = row;
  }

  Row row() {
    return row;
  }

  Where at(Column column) {
    return row.at(column);
  }

  boolean has(Column column) {
    return row.has(column);
  }

  String text(Column column) {
    return row.cell(column);
  }

  /** A cell read by a grammar; empty where it is blank or wrong. */
  <T> Optional<T> read(Column column, Function<String, Reading<T>> grammar) {
    if (!row.has(column)) {
      return Optional.empty();
    }
    Reading<T> reading = grammar.apply(row.cell(column));
    for (Remark remark : reading.remarks()) {
      faults.add(remark.at(at(column), row.cell(column)));
    }
    return reading.value();
  }

  /** A cell read by a grammar; where it is wrong the row goes on without it, to be looked at. */
  <T> Optional<T> readOrLook(Column column, Function<String, Reading<T>> grammar) {
    int before = faults.size();
    Optional<T> value = read(column, grammar);
    for (int f = before; f < faults.size(); f++) {
      if (faults.get(f).severity() == Severity.ASIDE) {
        faults.set(f, faults.get(f).as(Severity.LOOK));
      }
    }
    return value;
  }

  void add(Fault fault) {
    faults.add(fault);
  }

  void add(String code, Severity severity, Column column, String expected, String hint) {
    faults.add(new Fault(code, severity, at(column), row.cell(column), expected, hint));
  }

  void aside(String code, Column column, String expected, String hint) {
    add(code, Severity.ASIDE, column, expected, hint);
  }

  /** Whether the row cannot be used. */
  boolean bad() {
    return faults.stream()
        .anyMatch(fault -> fault.severity() == Severity.ASIDE || fault.severity() == Severity.STOP);
  }

  List<Fault> faults() {
    return faults;
  }

  /** Turns what sets this row aside into what stops the run. */
  void stopInsteadOfAside() {
    faults.replaceAll(
        fault -> fault.severity() == Severity.ASIDE ? fault.as(Severity.STOP) : fault);
  }
}
