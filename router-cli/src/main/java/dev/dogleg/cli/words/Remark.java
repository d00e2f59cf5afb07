package dev.dogleg.cli.words;

import dev.dogleg.fault.Fault;
import dev.dogleg.fault.Severity;
import dev.dogleg.fault.Where;
import java.util.Objects;

/**
 * What is to be said about one cell; whoever knows the row makes a fault of it.
 *
 * @param code fault code
 * @param severity what it does to the run
 * @param expected what was expected, or how the cell was read
 * @param hint what to do, may be empty
 */
public record Remark(String code, Severity severity, String expected, String hint) {

  /** Checks that nothing is null. */
  public Remark {
    Objects.requireNonNull(code, "code");
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(expected, "expected");
    Objects.requireNonNull(hint, "hint");
  }

  /**
   * A remark for which the row is set aside.
   *
   * @param code fault code
   * @param expected what was expected
   * @param hint what to do
   * @return the remark
   */
  public static Remark aside(String code, String expected, String hint) {
    return new Remark(code, Severity.ASIDE, expected, hint);
  }

  /**
   * A remark that a person should look at.
   *
   * @param code fault code
   * @param expected what was expected
   * @param hint what to do
   * @return the remark
   */
  public static Remark look(String code, String expected, String hint) {
    return new Remark(code, Severity.LOOK, expected, hint);
  }

  /**
   * A remark for information: something was guessed.
   *
   * @param readAs how the cell was read
   * @param hint how to write it without a guess
   * @return the remark
   */
  public static Remark guess(String readAs, String hint) {
    return new Remark("guess", Severity.NOTE, "was read as " + readAs, hint);
  }

  /**
   * The fault.
   *
   * @param where the cell
   * @param seen its text
   * @return the fault
   */
  public Fault at(Where where, String seen) {
    return new Fault(code, severity, where, seen, expected, hint);
  }
}
