package dev.dogleg.groom;

/** Modifiers that a question can call for, by the name of their row. */
enum Modifier {
  TANGLED("coat tangled"),
  MATTED("coat matted"),
  PELTED("coat pelted"),
  NERVOUS("nervous"),
  DIFFICULT("difficult"),
  SENIOR("senior"),
  FIRST_VISIT("first visit");

  private final String rowName;

  Modifier(String rowName) {
    this.rowName = rowName;
  }

  String rowName() {
    return rowName;
  }
}
