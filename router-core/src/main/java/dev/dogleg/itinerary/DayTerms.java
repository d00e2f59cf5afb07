package dev.dogleg.itinerary;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What binds or prices a van-day besides its shift and its visits: see {@code docs/WEEK.md}.
 *
 * @param rules rules on its visits, in the order in which minutes by place are applied
 * @param water tanks and where they are filled; empty: water is not planned
 * @param balance prices for a day fuller or longer than others; empty: none
 */
public record DayTerms(
    List<DayRule> rules, Optional<WaterTerms> water, Optional<BalanceTerms> balance) {

  /** No rule, no water, no balance. */
  public static final DayTerms NONE = new DayTerms(List.of(), Optional.empty(), Optional.empty());

  /** Copies the list. */
  public DayTerms {
    rules = List.copyOf(rules);
    Objects.requireNonNull(water, "water");
    Objects.requireNonNull(balance, "balance");
  }

  /** {@return whether nothing is said at all} */
  public boolean none() {
    return rules.isEmpty() && water.isEmpty() && balance.isEmpty();
  }

  /**
   * Rules alone.
   *
   * @param rules the rules
   * @return terms without water and balance
   */
  public static DayTerms of(List<DayRule> rules) {
    return new DayTerms(rules, Optional.empty(), Optional.empty());
  }
}
