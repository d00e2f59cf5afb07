package dev.dogleg.plan.late;

import java.util.List;

/**
 * What may be done with the rest of a day.
 *
 * @param choices one to three, the recommended one first, then in the order keep, reorder, move
 * @param rulesGone names of rules that had to hold and cannot any more, whatever is done
 */
public record LateAnswer(List<LateChoice> choices, List<String> rulesGone) {
  /** Copies the lists. */
  public LateAnswer {
    choices = List.copyOf(choices);
    rulesGone = List.copyOf(rulesGone);
  }
}
