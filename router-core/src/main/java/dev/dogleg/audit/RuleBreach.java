package dev.dogleg.audit;

import dev.dogleg.itinerary.DayRule;

/**
 * What a day does against one rule.
 *
 * @param rule the rule
 * @param number which visit of the day does it, counted from 0; -1 for the day as a whole
 * @param count counted breaches, 1 or more
 * @param measured what the day has
 * @param allowed what the rule allows
 * @param text what is wrong, without the rule's name: the rest of a sentence
 */
record RuleBreach(DayRule rule, int number, long count, long measured, long allowed, String text) {

  /** The stable code of the shape of a rule that must hold and is broken by an order. */
  String code() {
    if (rule instanceof DayRule.PlaceInDay) {
      return "rule-place";
    } else if (rule instanceof DayRule.AllBefore) {
      return "rule-before";
    } else if (rule instanceof DayRule.NotRightAfter) {
      return "rule-right-after";
    } else if (rule instanceof DayRule.AtMost) {
      return "rule-at-most";
    } else if (rule instanceof DayRule.Together) {
      return "rule-together";
    } else if (rule instanceof DayRule.NotTogether) {
      return "rule-not-together";
    }
    throw new IllegalStateException("a rule of this shape is never broken: " + rule.name());
  }

  /** The whole sentence. */
  String sentence() {
    return "Rule \"" + rule.name() + "\": " + text;
  }
}
