package dev.dogleg.fault;

import java.util.Objects;
import java.util.regex.Pattern;

/**
 * One thing wrong with the input, said so that its owner can mend it.
 *
 * @param code short stable name in lower case with hyphens, for example {@code unknown-breed}
 * @param severity what it does to the run
 * @param where the place
 * @param seen the value that was seen, as it stands in the file; empty where something is missing
 * @param expected what was expected there
 * @param hint what to do, in one sentence; empty where nothing can be advised
 */
public record Fault(
    String code, Severity severity, Where where, String seen, String expected, String hint) {
  private static final Pattern CODE = Pattern.compile("[a-z][a-z0-9]*(-[a-z0-9]+)*");

  /** Checks that nothing is null and that the code has its form. */
  public Fault {
    Objects.requireNonNull(severity, "severity");
    Objects.requireNonNull(where, "where");
    Objects.requireNonNull(seen, "seen");
    Objects.requireNonNull(expected, "expected");
    Objects.requireNonNull(hint, "hint");
    if (!CODE.matcher(code).matches()) {
      throw new IllegalArgumentException("code must be lower case words with hyphens, was " + code);
    }
  }

  /**
   * The same fault with another severity.
   *
   * @param other severity to take
   * @return the fault
   */
  public Fault as(Severity other) {
    return new Fault(code, other, where, seen, expected, hint);
  }

  /** {@return one line: place, value seen, what was expected, hint} */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder();
    String place = where.toString();
    if (!place.isEmpty()) {
      text.append(place).append(": ");
    }
    if (!seen.isEmpty()) {
      text.append('"').append(seen).append("\" ");
    }
    text.append(expected);
    if (!hint.isEmpty()) {
      text.append(" - ").append(hint);
    }
    return text.append(" [").append(code).append(']').toString();
  }
}
