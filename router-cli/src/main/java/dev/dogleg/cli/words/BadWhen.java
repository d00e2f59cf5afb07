package dev.dogleg.cli.words;

/** Leaves the parser of one {@code when} cell with what is to be said; never leaves the package. */
final class BadWhen extends Exception {
  private static final long serialVersionUID = 1L;

  /** What is to be said. */
  final transient Remark remark;

  BadWhen(String code, String expected, String hint) {
    super(code, null, false, false);
    this.remark = Remark.aside(code, expected, hint);
  }
}
