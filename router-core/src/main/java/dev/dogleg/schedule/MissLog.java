package dev.dogleg.schedule;

/** Keeps, of the rules that stopped a try, the one that was missed by the fewest seconds. */
final class MissLog {
  private String rule = "";
  private int shortBySeconds;

  void clear() {
    rule = "";
  }

  void note(String broken, int seconds) {
    if (rule.isEmpty() || seconds < shortBySeconds) {
      rule = broken;
      shortBySeconds = seconds;
    }
  }

  RuleMiss at(String visitId) {
    return new RuleMiss(rule, visitId, shortBySeconds);
  }
}
